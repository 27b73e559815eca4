package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Attempt;
import padside.flight.Flight;
import padside.flight.FlightLog.Moments;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.motor.MotorTable;
import padside.units.TimeSpan;

class DelaysTest {
  private final MemoryFlightLog log = new MemoryFlightLog();
  private final RecordId heron = new RecordId("heron");
  private final RecordId lot = log.has(Kind.LOT, Facts.none().with(Lot.MOTOR, "C6-5"));

  private void flown(String motor, double delay, double best, String ejection) {
    log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.ROCKET, heron)
            .with(Flight.LOT, lot)
            .with(Flight.MOTOR, motor)
            .with(Flight.MEASURED_DELAY, new TimeSpan(delay))
            .with(Flight.PREDICTED_BEST_DELAY, new TimeSpan(best))
            .with(Flight.EJECTION, ejection));
  }

  private Logbook book() throws Fault, IOException {
    try (Reader csv = Files.newBufferedReader(Path.of("data/motors.csv"))) {
      return Logbook.read(log, new MotorTable(MotorTable.read(csv, "motors.csv").types()));
    }
  }

  private String suits(String motor) throws Fault, IOException {
    Logbook book = book();
    return Delays.ofRocket(heron, book)
        .suits(heron, book.motors().chooseAll(motor).value().orElseThrow())
        .map(Delays.Suits::words)
        .orElse("nothing");
  }

  /**
   * Mean 5.6, deviations of 0, 0.3 and 0.5 both ways: variance 0.68 / 4, error of the mean
   * 0.184391; t of 4 degrees of freedom 2.776 (any table of Student's t, from memory): 5.09 to
   * 6.11.
   */
  @Test
  void delays_as_flown_beside_their_label() throws Fault, IOException {
    for (double delay : new double[] {5.1, 5.3, 5.6, 5.9, 6.1}) {
      flown("C6-5", delay, 5, "at_apogee");
    }
    Delays.AsFlown flown = Delays.of(book()).byMotor().get(0);

    assertThat(flown.words()).isEqualTo("C6-5: 5 flown, 5.6 s (5.1 to 6.1), label 5");
    double half = 2.776445 * Math.sqrt(0.68 / 4 / 5);
    assertThat(flown.mean().orElseThrow().low()).isCloseTo(5.6 - half, within(1e-5));
    assertThat(flown.mean().orElseThrow().high()).isCloseTo(5.6 + half, within(1e-5));
    assertThat(Delays.of(book()).of(book().lot(lot).orElseThrow())).contains(flown);
  }

  /** Against quantiles of another library, for any number of delays. */
  @Test
  void the_interval_is_students() {
    Random random = new Random(8);
    for (int n = 2; n < 40; n++) {
      Moments moments = Moments.NONE;
      double[] values = random.doubles(n, 3, 7).toArray();
      double sum = 0;
      for (double value : values) {
        moments = moments.and(Moments.of(value));
        sum += value;
      }
      double squares = 0;
      for (double value : values) {
        squares += (value - sum / n) * (value - sum / n);
      }
      double half =
          new TDistribution(n - 1).inverseCumulativeProbability(0.975)
              * Math.sqrt(squares / (n - 1) / n);
      Interval mean = new Delays.AsFlown("C6-5", 5, moments).mean().orElseThrow();
      assertThat(mean.low()).as("seed 8, %d", n).isCloseTo(sum / n - half, within(1e-6));
      assertThat(mean.high()).as("seed 8, %d", n).isCloseTo(sum / n + half, within(1e-6));
    }
  }

  @Test
  void one_delay_has_no_interval() throws Fault, IOException {
    flown("C6-5", 5.6, 5, "at_apogee");

    assertThat(Delays.of(book()).byMotor().get(0).words())
        .isEqualTo("C6-5: 1 flown, 5.6 s, label 5");
  }

  /** NFPA 1125 as remembered: a fifth or 1.5 s, whichever is more, and 3 s at most. */
  @Test
  void a_label_may_be_so_far_off() {
    assertThat(new Delays.AsFlown("C6-3", 3, Moments.of(4.4)).isBeyond()).isFalse();
    assertThat(new Delays.AsFlown("C6-3", 3, Moments.of(4.6)).isBeyond()).isTrue();
    assertThat(new Delays.AsFlown("F15-8", 8, Moments.of(0)).tolerance())
        .isCloseTo(1.6, within(1e-12));
    assertThat(new Delays.AsFlown("H-20", 20, Moments.of(0)).tolerance()).isEqualTo(3);
    assertThat(new Delays.AsFlown("C6-3", 3, Moments.of(5)).words())
        .endsWith("label 3; more than 1.5 s off, beyond certification");
  }

  @Test
  void flights_say_which_delay_suits() throws Fault, IOException {
    assertThat(suits("C6-5")).isEqualTo("nothing");
    flown("C6-5", 5.2, 5.0, "at_apogee");
    flown("C6-5", 5.4, 5.0, "at_apogee");
    flown("C6-3", 3.1, 5.0, "early");
    flown("C6-7", 7.0, 5.0, "late");
    flown("C6-5", 5.0, 5.0, "late");

    assertThat(suits("C6-7"))
        .isEqualTo(
            "4 of 5 own flights on C6 say delay 5; best delay was predicted 0.3 s too short (2"
                + " flights)");
    assertThat(suits("D12-5")).isEqualTo("nothing");
  }

  @Test
  void misfires_by_kind_of_igniter() throws Fault, IOException {
    flown("C6-5", 5.2, 5.0, "at_apogee");
    misfire("own copper", "igniter_dead");
    misfire("Own copper ", "clips");
    log.has(Kind.ATTEMPT, Facts.none());
    Igniters igniters = Igniters.of(book());

    assertThat(igniters.tries()).isEqualTo(new Failures(3, 4));
    assertThat(igniters.kinds())
        .extracting(Igniters.Kind::words)
        .isEqualTo(
            List.of(
                "kind not told: 1 misfire, none by the igniter itself",
                "own copper: 2 misfires, 1 by the igniter itself"));
  }

  private void misfire(String igniter, String cause) {
    log.has(Kind.ATTEMPT, Facts.none().with(Attempt.IGNITER, igniter).with(Attempt.CAUSE, cause));
  }
}
