package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Ruling.Verdict;
import padside.preflight.Preflight;
import padside.preflight.Settings;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;

/** The card screen with the check itself behind it. */
class CardAndPreflightTest {
  private final Meadow meadow = new Meadow();
  private final Desk desk =
      Desk.over(meadow.log).checking(new Preflight(Settings.standard())::answer);

  /**
   * The US model code lets nothing go above 20 mph (Model Rocket Safety Code, National Association
   * of Rocketry, effective August 2012: seen), whatever the rocket.
   */
  @Test
  void a_light_rocket_that_may_go_in_a_light_wind_is_held_back_above_twenty_mph() {
    meadow.log.save(
        Action.change(
            "weigh", Kind.ROCKET, meadow.heron, Facts.none().with(Rocket.MASS, Mass.ofOunces(2))));
    meadow.log.save(
        Action.change(
            "measure",
            Kind.DEVICE,
            meadow.flat,
            Facts.none().with(RecoveryDevice.DRAG_COEFFICIENT, 0.75)));
    List<Field.Edge> edges =
        Stream.of(0, 90, 180, 270)
            .map(bearing -> new Field.Edge(new Bearing(bearing), Length.ofFeet(600), "hedge", ""))
            .toList();
    meadow.log.save(
        Action.change("pace", Kind.FIELD, meadow.field, Facts.none().with(Field.EDGES, edges)));
    desk.restart().press("nher<enter>c6-5<enter>").press("<end>");
    while (!desk.frame().contains("> Wind")) {
      desk.press("<tab>");
    }

    assertThat(desk.press("2").frame()).containsPattern("│  (GO|MARGINAL)\n").contains("Apogee");
    assertThat(desk.press("1").frame()).contains("│  NO-GO").contains("21 mph");

    desk.press("<f2>");
    assertThat(meadow.flight(1).verdict()).contains(Verdict.NO_GO);
    assertThat(meadow.flight(1).facts().get(Flight.LIMIT).orElseThrow().inMph())
        .isLessThanOrEqualTo(20);
    assertThat(meadow.flight(1).facts().get(Flight.PREDICTED_APOGEE)).isPresent();
  }

  @Test
  void a_log_without_a_rocket_says_what_to_do() {
    MemoryFlightLog empty = new MemoryFlightLog();
    empty.has(Kind.DAY, Facts.none().with(Day.DATE, LocalDate.of(2026, 5, 2)));
    Desk nothing = Desk.over(empty);

    nothing.press("n");
    assertThat(nothing.frame()).contains("No rocket yet");
    assertThat(nothing.press("<f2><esc>").book().flights()).isEmpty();
  }
}
