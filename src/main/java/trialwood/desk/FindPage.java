package trialwood.desk;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriUtils;
import trialwood.record.CodeKey;
import trialwood.unit.ShortCode;
import trialwood.web.ForStaff;

/** One box: a code, a tag, a tray label, a name, part of any; or the code scanned from a label. */
@Controller
class FindPage {

  private static final int MOST = 40;

  private final JdbcClient jdbc;
  private final Signpost signpost;

  FindPage(JdbcClient jdbc, Signpost signpost) {
    this.jdbc = jdbc;
    this.signpost = signpost;
  }

  /**
   * Something that was found.
   *
   * @param place whose page shows it, up to the code
   * @param code of the page that shows it
   */
  record Hit(String kind, String text, @Nullable String name, String place, String code) {

    /** The address of its page, encoded. */
    public String href() {
      return place + UriUtils.encodePathSegment(code, StandardCharsets.UTF_8);
    }
  }

  @GetMapping("/find")
  @ForStaff
  String find(@RequestParam(defaultValue = "") String q, Model model) {
    String key = CodeKey.of(q);
    List<Hit> hits = q.isBlank() ? List.of() : hits(q, key);
    List<Hit> exact = hits.stream().filter(hit -> CodeKey.of(hit.text()).equals(key)).toList();
    if (exact.size() == 1) {
      return "redirect:" + exact.get(0).href();
    }
    Optional<String> labelled = ShortCode.readIfAny(q).flatMap(signpost::to);
    if (exact.isEmpty() && labelled.isPresent()) {
      return "redirect:" + labelled.get();
    }
    model.addAttribute("q", q);
    model.addAttribute("hits", hits);
    model.addAttribute("most", MOST);
    return "desk/find";
  }

  private List<Hit> hits(String q, String key) {
    return jdbc.sql(
            """
            select kind, text, name, place, code from (
              select 'accession' as kind, a.code as text, a.talk_name as name,
                     '/accessions/' as place, a.code as code, 1 as turn
              from accession a
              where a.code_key like :key or lower(a.talk_name) like :text
                 or a.id in (select accession_id from accession_alias where alias_key like :key)
              union all
              select lower(u.kind), u.label, null,
                     case u.kind when 'TRAY' then '/bench/trays/'
                                 when 'LOT' then '/containers/'
                                 when 'STOCK' then '/stock/'
                                 else '/accessions/' end,
                     case when u.kind in ('TRAY', 'LOT', 'STOCK') then u.label else a.code end, 2
              from unit u
              join holding h on h.unit_id = u.id and h.until_date = date '9999-12-31'
              join accession a on a.id = h.accession_id
              where u.label_key like :key
              union all
              select 'run', r.code, null, '/bench/runs/', r.code, 3
              from sticking_run r where upper(r.code) like :key
            ) found
            order by turn, text
            limit :most
            """)
        .param("key", key.isEmpty() ? "-" : "%" + key + "%")
        .param("text", "%" + q.strip().toLowerCase(Locale.ROOT) + "%")
        .param("most", MOST)
        .query(Hit.class)
        .list();
  }
}
