package trialwood.desk;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriUtils;
import trialwood.unit.ShortCode;
import trialwood.unit.UnitKind;

/** Leads from the code on a label to the page of what bears it. */
@Component
class Signpost {

  private final JdbcClient jdbc;

  Signpost(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** What bears a code, with the codes that the address of its page is made of. */
  record Borne(
      UnitKind kind,
      String label,
      @Nullable String accession,
      @Nullable String lot,
      @Nullable String trial,
      @Nullable String site) {

    Optional<String> href() {
      if (kind == UnitKind.TRAY) {
        return Optional.of(path("bench", "trays", label));
      }
      if (kind == UnitKind.LOT) {
        return Optional.of(path("containers", label));
      }
      if (kind == UnitKind.STOCK) {
        return Optional.of(path("stock", label));
      }
      if (kind == UnitKind.PLANT && lot != null) {
        return Optional.of(path("containers", lot, "plants", label));
      }
      if (kind == UnitKind.PLOT && trial != null && site != null) {
        return Optional.of(path("trials", trial, "sites", site));
      }
      return Optional.ofNullable(accession).map(code -> path("accessions", code));
    }

    private static String path(String... parts) {
      return Stream.of(parts)
          .map(part -> UriUtils.encodePathSegment(part, StandardCharsets.UTF_8))
          .collect(Collectors.joining("/", "/", ""));
    }
  }

  /** The address of the page, encoded; nothing where no label bears the code. */
  Optional<String> to(ShortCode code) {
    return jdbc.sql(
            """
            select u.kind, u.label, a.code as accession, lu.label as lot, t.code as trial,
                   s.code as site
            from short_code c
            join unit u on u.label_key = c.label_key
            left join holding h on h.unit_id = u.id and h.until_date = date '9999-12-31'
            left join accession a on a.id = h.accession_id
            left join plant_place p on p.plant_id = u.id
              and not exists (select 1 from plant_place later
                              where later.plant_id = p.plant_id and later.from_date > p.from_date)
            left join unit lu on lu.id = p.lot_id
            left join plot on plot.unit_id = u.id
            left join trial_site ts on ts.id = plot.trial_site_id
            left join trial t on t.id = ts.trial_id
            left join site s on s.id = ts.site_id
            where c.code = ?
            """)
        .param(code.text())
        .query(Borne.class)
        .optional()
        .flatMap(Borne::href);
  }
}
