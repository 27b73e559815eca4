package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Attempt;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.Rocket;
import padside.insight.Failures;
import padside.units.TimeSpan;

class LessonsScreenTest {
  private final MemoryFlightLog log = new MemoryFlightLog();
  private final RecordId heron = log.has(Kind.ROCKET, Facts.none().with(Rocket.NAME, "Heron"));
  private final RecordId k7 = lot("C6-5", "K7");
  private final RecordId k8 = lot("C6-3", "K8");
  private final RecordId d1 = lot("D12-5", "D1");

  private RecordId lot(String motor, String code) {
    return log.has(Kind.LOT, Facts.none().with(Lot.MOTOR, motor).with(Lot.CODE, code));
  }

  private void flown(int times, RecordId lot, String motor, String burn) {
    for (int i = 0; i < times; i++) {
      Facts facts =
          Facts.none()
              .with(Flight.STATUS, Flight.Status.FLOWN)
              .with(Flight.ROCKET, heron)
              .with(Flight.MOTOR, motor)
              .with(Flight.LOT, lot)
              .with(Flight.BURN, burn);
      log.has(
          Kind.FLIGHT,
          burn.equals("nominal")
              ? facts
                  .with(Flight.EJECTION, "at_apogee")
                  .with(Flight.MEASURED_DELAY, new TimeSpan(5 + i / 10.0))
                  .with(Flight.PREDICTED_BEST_DELAY, new TimeSpan(5))
              : facts);
    }
  }

  private Desk lessons() {
    flown(24, d1, "D12-5", "nominal");
    flown(5, k8, "C6-3", "nominal");
    flown(1, k8, "C6-3", "weak");
    flown(5, k7, "C6-5", "nominal");
    flown(1, k7, "C6-5", "cato_nozzle");
    log.has(
        Kind.ATTEMPT,
        Facts.none().with(Attempt.IGNITER, "own copper").with(Attempt.CAUSE, "igniter_dead"));
    return Desk.over(log).opening(RangeBoxScreen::open).press("l");
  }

  @Test
  void what_the_log_teaches() {
    Desk desk = lessons();

    Golden.holds("lessons", desk.frame());
    Golden.holds("lessons-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("lessons-120x40", desk.frame(new Size(120, 40)));
    Golden.holds("lessons-below", desk.press("<pagedown><pagedown><pagedown>").frame());
    assertThat(desk.press("<home><up>").frame()).contains("Lots, suspect first");
    assertThat(desk.press("<esc>").frame()).contains("[Motors]");
  }

  @Test
  void suspects_come_first_and_are_marked_in_words_and_signs() {
    String frame = lessons().frame(new Size(120, 40));

    assertThat(frame.indexOf("C6-5 lot K7")).isBetween(0, frame.indexOf("C6-3 lot K8"));
    assertThat(frame.indexOf("C6-3 lot K8")).isLessThan(frame.indexOf("D12-5 lot D1"));
    assertThat(frame)
        .contains("! C6-5 lot K7")
        .contains("1 of 6 burst (1 in 238 to 2 in 3)")
        .contains("none of 24 failed (at most 1 in 7)")
        .contains("key pressed in vain");
  }

  @Test
  void the_box_tells_a_lots_record() {
    lessons();
    Desk box = Desk.over(log).opening(RangeBoxScreen::open);

    assertThat(box.frame()).contains("1 of 6 burst (1 in 238 to 2 in 3)");
  }

  @Test
  void an_empty_log_teaches_nothing() {
    Desk empty = Desk.over(new MemoryFlightLog()).opening(RangeBoxScreen::open).press("l");

    assertThat(empty.frame()).contains("No motor of a lot was fired yet.");
  }

  /**
   * The interval of 1 of 6 is 0.00421 to 0.6412: thirteen of twenty parts, the share in the 4th.
   */
  @Test
  void a_bar_has_the_interval_and_the_share() {
    assertThat(LessonsText.bar(new Failures(1, 6))).isEqualTo("---o---------.......");
    assertThat(LessonsText.bar(new Failures(0, 24))).isEqualTo("o--.................");
    assertThat(LessonsText.bar(new Failures(10, 10))).isEqualTo(".............------o");
  }
}
