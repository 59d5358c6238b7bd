package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import trialwood.web.IntervalPicture.Scale;

class IntervalPictureTest {

  private final IntervalPicture rooting =
      IntervalPicture.on(Scale.percent())
          .reaching(80)
          .hopeEndingAt(65)
          .between(83, 96.1)
          .showing(91.7);

  @Test
  void the_axis_runs_from_edge_to_edge() {
    assertThat(rooting.axis()).startsWith("M7 29H173").contains("M7 26v6").endsWith("M173 26v6");
  }

  @Test
  void a_value_stands_where_its_share_of_the_scale_is() {
    IntervalPicture half = IntervalPicture.on(new Scale(-10, 10, 0, "")).reaching(0);
    assertThat(half.lineMark()).startsWith("M90 ");
    assertThat(half.labelAnchor()).isEqualTo("middle");
  }

  @Test
  void the_bar_covers_the_interval() {
    double from = Double.parseDouble(rooting.barX());
    double to = from + Double.parseDouble(rooting.barWidth());
    assertThat(from).isEqualTo(144.8);
    assertThat(to).isEqualTo(166.5, org.assertj.core.data.Offset.offset(0.11));
  }

  @Test
  void a_very_sure_answer_is_still_seen() {
    assertThat(rooting.between(91.69, 91.71).barWidth()).isEqualTo("6");
  }

  @Test
  void the_label_says_which_way_is_good() {
    assertThat(rooting.label()).isEqualTo("≥\u00a080");
    assertThat(rooting.stayingUnder(0.85).label()).isEqualTo("≤\u00a00.85");
  }

  @Test
  void a_label_at_the_edge_stays_inside_the_picture() {
    assertThat(rooting.reaching(100).labelAnchor()).isEqualTo("end");
    assertThat(rooting.reaching(100).labelX()).isEqualTo("180");
    assertThat(rooting.reaching(0).labelAnchor()).isEqualTo("start");
    assertThat(rooting.reaching(0).labelX()).isEqualTo("0");
  }

  @Test
  void an_estimate_beyond_the_scale_becomes_an_arrow_at_its_edge() {
    IntervalPicture weeks = IntervalPicture.on(new Scale(0, 4, 1, "weeks"));
    assertThat(weeks.showing(9).dot()).startsWith("M180 29l-9");
    assertThat(weeks.showing(-1).dot()).startsWith("M0 29l9");
    assertThat(weeks.showing(4).dot()).contains("a5.5");
  }

  @Test
  void the_sentence_says_all_that_is_drawn() {
    assertThat(rooting.sentence().replace('\u00a0', ' '))
        .isEqualTo(
            "91.7 %, likely between 83.0 and 96.1 %; the line is at least 80; hope ends at 65.");
  }

  @Test
  void no_record_is_said_and_nothing_is_drawn_for_it() {
    IntervalPicture none = IntervalPicture.on(Scale.percent()).reaching(80);
    assertThat(none.sentence()).startsWith("No record; the line is at least 80");
    assertThat(none.dot()).isEmpty();
    assertThat(none.hasInterval()).isFalse();
  }

  @Test
  void the_ends_of_the_axis_are_named_for_the_head_of_a_column() {
    assertThat(IntervalPicture.on(new Scale(0, 0.5, 2, "")).endTicks())
        .extracting(IntervalPicture.Tick::label)
        .containsExactly("0.0", "0.5");
    assertThat(rooting.endTicks().get(1).label()).isEqualTo("100\u00a0%");
  }

  @Test
  void a_scale_runs_upwards() {
    assertThatThrownBy(() -> new Scale(4, 4, 0, "")).hasMessageContaining("upwards");
  }
}
