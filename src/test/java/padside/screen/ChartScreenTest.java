package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Field;
import padside.flight.Kind;
import padside.insight.Confidence;
import padside.preflight.Outlook;
import padside.units.Bearing;
import padside.units.Length;

/** The landing chart and the height over time. */
class ChartScreenTest {
  private static final List<Size> SIZES =
      List.of(new Size(60, 20), new Size(80, 24), new Size(120, 40));

  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(24));

  private static Field.Edge edge(double bearing, double feet, String name, String beyond) {
    return new Field.Edge(new Bearing(bearing), Length.ofFeet(feet), name, beyond);
  }

  private Desk desk() {
    Facts paced =
        Facts.none()
            .with(
                Field.EDGES,
                List.of(
                    edge(0, 310, "hedge", "crops"),
                    edge(45, 380, "lane", "road"),
                    edge(90, 330, "wood", "trees"),
                    edge(180, 250, "ditch", "water"),
                    edge(225, 400, "corner by the old barn", ""),
                    edge(270, 290, "", "")))
            .with(Field.HAZARDS, List.of(hazard(65, 270, 35, "pond"), hazard(250, 200, 5, "mast")));
    meadow.log.save(Action.change("pace", Kind.FIELD, meadow.field, paced));
    return meadow.desk();
  }

  private static Field.Hazard hazard(double bearing, double feet, double radius, String name) {
    return new Field.Hazard(new Bearing(bearing), Length.ofFeet(feet), Length.ofFeet(radius), name);
  }

  private static void holds(String name, Desk desk) {
    for (Size size : SIZES) {
      Golden.holds(name + "-" + size.columns() + "x" + size.rows(), desk.frame(size));
    }
  }

  @Test
  void the_landing_chart() {
    holds("chart", desk().press("nher<enter>8g14 sw<f4>"));
    holds("chart-ascii", desk().withoutBraille().press("nher<enter>8g14 sw<f4>"));
  }

  @Test
  void the_height_over_time() {
    holds("height", desk().press("nher<enter>8g14 sw<f4><tab>"));
    holds("height-ascii", desk().withoutBraille().press("nher<enter>8g14 sw<f4><tab>"));
  }

  @Test
  void one_key_leads_there_and_back() {
    Desk desk = desk().press("nher<enter>8g14 sw");
    int before = desk.keys();

    assertThat(desk.press("<f4>").top()).isInstanceOf(ChartScreen.class);
    assertThat(desk.keys() - before).isEqualTo(1);
    assertThat(desk.press("<f4>").top()).isInstanceOf(CardScreen.class);
    assertThat(desk.press("<f3><f4>").top()).isInstanceOf(ChartScreen.class);
    assertThat(desk.press("<f3>").top()).isInstanceOf(CheckScreen.class);
    assertThat(desk.press("<f4><esc>").top()).as("none waits below").isInstanceOf(CardScreen.class);
  }

  @Test
  void the_chart_follows_the_check() {
    Desk desk = desk().press("nher<enter>").holdChecks().press("8g14 sw<f4>");
    assertThat(desk.frame()).contains("checking…");

    assertThat(desk.answerChecks().frame())
        .contains("NO-GO")
        .contains("drawn for 8 gusting 14 mph");
  }

  @Test
  void without_a_field_the_landings_are_drawn_and_the_lack_is_told() {
    Desk desk = meadow.desk().press("nher<enter>8g14 sw<f4>");

    assertThat(desk.frame()).contains("no edge of the field is").contains(LandingChart.NOMINAL);
  }

  @Test
  void the_legend_tells_what_the_outline_was_set_to_hold() {
    Desk desk = desk();
    Outlook careful = FixedFlight.toldWith(new Confidence(95));
    desk.checking(card -> FixedFlight.in(Fixed.check(card), careful));

    assertThat(desk.press("nher<enter>8g14 sw<f4>").frame(new Size(60, 20)))
        .contains("half land here", "95 in 100 land here");
  }

  @Test
  void without_a_direction_the_landing_is_a_ring_round_the_pad_and_no_ellipse() {
    Desk desk = desk();
    desk.checking(card -> FixedFlight.in(Fixed.check(card), FixedFlight.withoutDirection()));
    String frame = desk.press("nher<enter>8g14<f4>").frame();

    assertThat(frame).contains("where is").contains("unknown").contains("lands somewhere on it");
    assertThat(frame).doesNotContain("wind ").doesNotContain("half land here");
  }

  @Test
  void without_a_flight_the_field_is_drawn_and_the_reason_told() {
    desk();
    Desk desk = Desk.over(meadow.log).press("n<f4>");

    assertThat(desk.frame())
        .contains("UNKNOWN")
        .contains("ditch 250 ft")
        .contains(LandingChart.PAD);
    assertThat(desk.press("<tab>").frame()).contains("There is no flight to draw");
  }

  @Test
  void any_field_can_be_drawn() {
    long seed = 20260502;
    Random random = new Random(seed);
    for (int i = 0; i < 100; i++) {
      List<Field.Edge> edges = new ArrayList<>();
      for (int e = random.nextInt(12); e >= 0; e--) {
        edges.add(edge(random.nextInt(360), random.nextInt(3000), "edge number " + e, ""));
      }
      Facts facts = Facts.none().with(Field.EDGES, edges);
      meadow.log.save(Action.change("pace", Kind.FIELD, meadow.field, facts));
      Desk desk = meadow.desk().press("nher<enter>8g14 sw<f4>");
      for (Size size : SIZES) {
        assertThat(desk.frame(size)).as("seed %d, field %d", seed, i).contains(LandingChart.PAD);
      }
    }
  }
}
