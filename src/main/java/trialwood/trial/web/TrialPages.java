package trialwood.trial.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.trial.Direction;
import trialwood.trial.SeasonMeans;
import trialwood.trial.TraitSeasons;
import trialwood.web.ForSignedIn;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;
import trialwood.web.Place;
import trialwood.web.RecordsUsed;

/** The trials: what stands where, what is fit to decide by, and what the means say. */
@Controller
class TrialPages {

  private final TrialBook book;
  private final SeasonMeans means;
  private final Traits traits;
  private final Clock clock;

  TrialPages(TrialBook book, SeasonMeans means, Traits traits, Clock clock) {
    this.book = book;
    this.means = means;
    this.traits = traits;
    this.clock = clock;
  }

  /** All trials; for a cooperator the plantings on his own land, and no more. */
  @GetMapping("/trials")
  @Place(key = "trials", label = "Trials", order = 50)
  @ForSignedIn
  String list(@AuthenticationPrincipal SignedIn account, Model page) {
    if (account.role() == Role.COOPERATOR) {
      page.addAttribute(
          "plantings",
          book.plantings().stream().filter(site -> account.mayEnter(site.siteId())).toList());
      return "trial/own";
    }
    page.addAttribute("trials", book.trials());
    return "trial/list";
  }

  @GetMapping("/trials/{code}")
  @ForStaff
  String trial(@PathVariable String code, Model page) {
    TrialBook.TrialRow trial = book.trial(code).orElseThrow(NotFound.of("trial " + code));
    page.addAttribute("trial", trial);
    page.addAttribute("entries", book.entries(trial.id()));
    page.addAttribute("sites", book.sites(trial.id()));
    page.addAttribute("traits", book.traits(trial.id()));
    page.addAttribute("events", book.events(trial.id()));
    return "trial/trial";
  }

  @GetMapping("/trials/{code}/traits/{traitCode}")
  @ForStaff
  String trait(
      @PathVariable String code,
      @PathVariable String traitCode,
      @RequestParam Optional<String> check,
      Model page) {
    TrialBook.TrialRow trial = book.trial(code).orElseThrow(NotFound.of("trial " + code));
    Trait trait =
        traits
            .findByCropIdAndCode(trial.cropId(), traitCode)
            .orElseThrow(NotFound.of("trait " + traitCode));
    List<TrialBook.EntryRow> entries = book.entries(trial.id());
    String against =
        check
            .filter(asked -> entries.stream().anyMatch(entry -> entry.code().equals(asked)))
            .orElseGet(() -> firstCheck(entries));
    LocalDate today = LocalDate.now(clock);
    TraitSeasons seasons = means.of(trait.id(), Set.of(trial.id()), today);
    AcrossSites across =
        AcrossSites.of(
            means.plots(trait.id(), trial.id(), today),
            seasons.cells(),
            Direction.of(trait),
            against);
    page.addAttribute("trial", trial);
    page.addAttribute("trait", trait);
    page.addAttribute("entries", entries);
    page.addAttribute("against", against);
    page.addAttribute("seasons", seasons);
    page.addAttribute("across", across);
    page.addAttribute(
        "records",
        RecordsUsed.of(
            seasons.cells(),
            cell -> "/trials/%s/sites/%s".formatted(code, cell.at().site()),
            cell -> "plots at " + cell.at().site()));
    page.addAttribute(
        "steadiness",
        Direction.of(trait).map(way -> Steadiness.of(seasons.cells(), way)).orElse(List.of()));
    page.addAttribute("table", TraitTable.of(trait, seasons, across, entries, against));
    return "trial/trait";
  }

  private static String firstCheck(List<TrialBook.EntryRow> entries) {
    return entries.stream()
        .filter(entry -> entry.role().isCheck())
        .findFirst()
        .map(TrialBook.EntryRow::code)
        .orElse("");
  }

  /** The field as it was laid out, to be looked at or printed. */
  @GetMapping("/trials/{code}/sites/{site}")
  @ForSignedIn
  String site(
      @PathVariable String code,
      @PathVariable String site,
      @AuthenticationPrincipal SignedIn account,
      Model page) {
    TrialBook.SiteRow planted =
        book.site(code, site)
            .filter(at -> account.mayEnter(at.siteId()))
            .orElseThrow(NotFound.of("trial %s at %s".formatted(code, site)));
    page.addAttribute("site", planted);
    page.addAttribute(
        "events",
        book.events(book.trial(code).orElseThrow().id()).stream()
            .filter(event -> event.site().equals(planted.name()))
            .toList());
    page.addAttribute("coded", account.role() == Role.COOPERATOR);
    page.addAttribute("plots", book.plots(planted.id(), LocalDate.now(clock)));
    return "trial/site";
  }
}
