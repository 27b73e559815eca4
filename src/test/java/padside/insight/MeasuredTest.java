package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.motor.MotorTable;
import padside.motor.MotorType;
import padside.units.Force;
import padside.units.Length;
import padside.units.TimeSpan;

/** Marks and altitudes against sums done by hand. */
class MeasuredTest {
  /** Burn times chosen for round sums, no motor on sale. */
  private static final MotorTable MOTORS =
      new MotorTable(
          List.of(
              type("C6", Facts.none().with(MotorType.BURN_TIME, new TimeSpan(1.9))),
              type("C5", Facts.none().with(MotorType.BURN_TIME, new TimeSpan(2.1))),
              type(
                  "D9",
                  Facts.none()
                      .with(MotorType.BURN_TIME, new TimeSpan(9))
                      .with(
                          MotorType.CURVE,
                          List.of(
                              new MotorType.CurvePoint(new TimeSpan(0.5), new Force(9)),
                              new MotorType.CurvePoint(new TimeSpan(2.5), new Force(0))))),
              type("E1", Facts.none())));

  private static MotorType type(String designation, Facts facts) {
    return new MotorType(
        new RecordId("test." + designation),
        facts
            .with(MotorType.DESIGNATION, designation)
            .with(MotorType.DELAYS, List.of("0", "3", "5", "7", "P")));
  }

  private static Measured measured(String motor, double ejection_s, double touchdown_s) {
    return Measured.of(
        Facts.none()
            .with(Flight.MOTOR, motor)
            .with(Flight.EJECTION_MARK, new TimeSpan(ejection_s))
            .with(Flight.TOUCHDOWN_MARK, new TimeSpan(touchdown_s))
            .with(Flight.ALTITUDE, Length.ofFeet(850)),
        MOTORS);
  }

  private static double seconds(TimeSpan span) {
    return span.seconds();
  }

  @Test
  void the_delay_runs_from_the_last_burnout_to_the_ejection_marked() {
    assertThat(measured("C6-5", 7.1, 70).delay().map(MeasuredTest::seconds).orElseThrow())
        .as("7.1 - 1.9")
        .isCloseTo(5.2, within(1e-9));
    assertThat(
            measured("2xC5-0 then C6-7", 11, 70).delay().map(MeasuredTest::seconds).orElseThrow())
        .as("11 - 2.1 - 1.9")
        .isCloseTo(7, within(1e-9));
    assertThat(measured("D9-5", 7, 70).delay().map(MeasuredTest::seconds).orElseThrow())
        .as("an entered curve goes before the figure: 7 - 2.5")
        .isCloseTo(4.5, within(1e-9));
    assertThat(measured("C6-5", 7.1, 70).stamped()).contains(new TimeSpan(5));
    assertThat(measured("C6-P", 7.1, 70).stamped()).isEmpty();
  }

  @Test
  void the_descent_is_the_altitude_over_the_time_from_ejection_to_touchdown() {
    Measured flight = measured("C6-5", 7, 70);

    assertThat(flight.descent().orElseThrow().inFeetPerSecond())
        .as("850 / 63")
        .isCloseTo(13.4921, within(1e-4));
    assertThat(flight.aloft()).contains(new TimeSpan(70));
  }

  @Test
  void what_was_not_measured_or_runs_backwards_is_absent() {
    assertThat(Measured.of(Facts.none(), MOTORS).delay()).isEmpty();
    assertThat(measured("E1-5", 7, 70).delay()).as("no burn time").isEmpty();
    assertThat(measured("Z9-5", 7, 70).burnout()).as("no such motor").isEmpty();
    assertThat(measured("C6-5", 1.5, 70).delay()).as("before burnout").isEmpty();
    assertThat(measured("C6-5", 70, 7).descent()).isEmpty();
    assertThat(measured("C6-5", 7, 7).descent()).isEmpty();
  }
}
