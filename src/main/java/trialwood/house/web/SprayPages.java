package trialwood.house.web;

import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.house.House;
import trialwood.house.HouseSpray;
import trialwood.house.HouseSprays;
import trialwood.house.NewSpray;
import trialwood.web.Entry;
import trialwood.web.Instead;
import trialwood.web.Questions;

/** Writing down a spray, or correcting what was written. */
@Controller
@RequestMapping("/houses/{name}/spray")
class SprayPages extends LogPages<SprayPages.SprayForm> {

  private final HouseDesk desk;
  private final HouseSprays sprays;

  SprayPages(HouseDesk desk, HouseSprays sprays) {
    super(desk, "house/spray");
    this.desk = desk;
    this.sprays = sprays;
  }

  record SprayForm(
      @Nullable UUID formKey,
      @Nullable String product,
      @Nullable String rate,
      @Nullable String area,
      @Nullable String against,
      @Nullable String on,
      @Nullable String endedAt,
      @Nullable String reEntryHours,
      @Nullable String licence,
      @Nullable String by,
      @Nullable UUID corrects,
      @Nullable String supersedeReason,
      @Nullable String asked,
      @Nullable String checked)
      implements LogForm {

    static SprayForm fresh(HouseDesk desk) {
      return new SprayForm(
          UUID.randomUUID(),
          "",
          "",
          "",
          "",
          desk.todayTyped(),
          desk.nowTyped(),
          "",
          "",
          null,
          null,
          null,
          null,
          null);
    }

    static SprayForm correcting(HouseSpray spray, HouseDesk desk) {
      return new SprayForm(
          UUID.randomUUID(),
          spray.product(),
          spray.rate(),
          spray.area(),
          spray.reason(),
          desk.dayTyped(spray.endedAt()),
          desk.hourTyped(spray.endedAt()),
          String.valueOf(spray.reEntryHours()),
          spray.licence(),
          Objects.toString(spray.recorded().personId(), null),
          spray.id(),
          "",
          null,
          null);
    }

    @Override
    public void record(House house, HouseDesk desk) {
      Entry entry = new Entry();
      NewSpray said =
          new NewSpray(
              desk.moment(entry, "on", on, "endedAt", endedAt),
              entry.count("reEntryHours", reEntryHours),
              entry.words("product", product, "Write the product as on its label."),
              Entry.wordsIfAny(rate),
              entry.words("area", area, "Write what was treated: the whole house, bench 2."),
              Entry.wordsIfAny(against),
              Entry.wordsIfAny(licence));
      UUID person = entry.person("by", by);
      Instead instead = Instead.read(entry, corrects, supersedeReason);
      entry.orRefuse();
      Questions questions = new Questions(asked, checked);
      questions.ask(HouseSpray.questions(said));
      desk.log().spray(house, said, questions.orAsk(), instead, person);
    }
  }

  @Override
  SprayForm fresh() {
    return SprayForm.fresh(desk);
  }

  @Override
  Optional<SprayForm> correcting(UUID entry, House house) {
    return sprays
        .findById(entry)
        .filter(it -> it.houseId().equals(house.id()))
        .map(it -> SprayForm.correcting(it, desk));
  }
}
