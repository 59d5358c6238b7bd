package trialwood.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Accessions;
import trialwood.lineage.Parentage;
import trialwood.lineage.Pollination;
import trialwood.record.CodeKey;

/** Everything with a code but candidates, which come by field tags. */
@Component
class AccessionSheet extends Sheet {

  private static final Column<String> ACCESSION =
      Column.text("accession", 30, "its code, as on labels").key();
  private static final Column<String> CROP = Column.code("crop", Known.CROP, "its crop").required();
  private static final Column<AccessionKind> KIND =
      Column.choice("kind", AccessionKind.class, "what it is; candidates come by field tags")
          .required();
  private static final Column<String> TALK_NAME =
      Column.text("talk_name", 60, "what people call it; never a denomination");
  private static final Column<String> SEED_PARENT =
      Column.code("seed_parent", Known.ACCESSION, "the plant that bore the seed, on record before");
  private static final Column<String> POLLEN_PARENT =
      Column.code("pollen_parent", Known.ACCESSION, "the plant that gave the pollen");
  private static final Column<Pollination> POLLINATION =
      Column.choice("pollination", Pollination.class, "how the seed came about");
  private static final Column<String> ORIGIN = Column.text("origin", 300, "where it comes from");
  private static final Column<String> DESCRIPTION =
      Column.text("description", 300, "what it looks like");
  private static final Column<Boolean> USED_AS_PARENT =
      Column.yesNo("used_as_parent", "whether crosses are made with it");
  private static final Column<List<String>> ALIASES =
      Column.list("aliases", "other codes under which it is found");

  private record Alias(String typed, UUID accessionId) {}

  private final Accessions accessions;
  private final JdbcTemplate jdbc;

  AccessionSheet(Accessions accessions, JdbcTemplate jdbc) {
    super(
        7,
        "accessions",
        ACCESSION,
        CROP,
        KIND,
        TALK_NAME,
        SEED_PARENT,
        POLLEN_PARENT,
        POLLINATION,
        ORIGIN,
        DESCRIPTION,
        USED_AS_PARENT,
        ALIASES);
    this.accessions = accessions;
    this.jdbc = jdbc;
  }

  @Override
  protected void apply(Rows rows) {
    List<Alias> aliases = new ArrayList<>();
    rows.each(
        row -> {
          List<String> others = row.orElse(ALIASES, List.of());
          refuseWhatIsTaken(rows, row, others);
          UUID id = Objects.requireNonNull(accessions.save(accession(row)).id());
          rows.learn(Known.ACCESSION, row.the(ACCESSION), id);
          for (String other : others) {
            rows.learn(Known.ACCESSION, other, id);
            aliases.add(new Alias(other, id));
          }
        });
    jdbc.batchUpdate(
        "insert into accession_alias (alias_key, alias, accession_id) values (?, ?, ?)",
        aliases.stream()
            .map(a -> new Object[] {CodeKey.of(a.typed()), a.typed(), a.accessionId()})
            .toList());
  }

  private static void refuseWhatIsTaken(Rows rows, Row row, List<String> aliases) {
    if (row.the(KIND) == AccessionKind.CANDIDATE) {
      throw row.refused(KIND, "Candidates come by field tags. Put it on the sheet field-tags.");
    }
    if (rows.knows(Known.ACCESSION, row.the(ACCESSION))) {
      throw row.refused(ACCESSION, "This code is taken.");
    }
    for (String alias : aliases) {
      if (alias.length() > 30 || rows.knows(Known.ACCESSION, alias)) {
        throw row.refused(ALIASES, "%s is taken, or longer than 30 letters.".formatted(alias));
      }
    }
  }

  private static Accession accession(Row row) {
    Parentage parentage =
        new Parentage(row.maybeId(SEED_PARENT), row.maybeId(POLLEN_PARENT), row.maybe(POLLINATION));
    Accession accession =
        new Accession(
            row.id(CROP), row.the(ACCESSION), row.the(KIND), parentage, row.maybe(ORIGIN));
    accession.describe(row.maybe(TALK_NAME), row.maybe(DESCRIPTION));
    accession.useAsParent(row.orElse(USED_AS_PARENT, false));
    return accession;
  }

  @Override
  protected String query() {
    return """
        select a.code, c.code, a.kind, a.talk_name, s.code, p.code, a.pollination, a.origin,
               a.description, a.used_as_parent,
               (select string_agg(o.alias, ' ' order by o.alias)
                from accession_alias o where o.accession_id = a.id)
        from accession a
          join crop c on c.id = a.crop_id
          left join accession s on s.id = a.seed_parent_id
          left join accession p on p.id = a.pollen_parent_id
        where a.kind <> 'CANDIDATE'
        order by a.id
        """;
  }
}
