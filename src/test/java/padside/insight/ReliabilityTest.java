package padside.insight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.OutcomeTable;
import padside.motor.MotorTable;

class ReliabilityTest {
  private static final long SEED = 20261127;

  private final MemoryFlightLog log = new MemoryFlightLog();
  private final RecordId k7 = lot("C6-5", "K7", "04 12 24");
  private final RecordId k8 = lot("C6-3", "K8", "04 12 24");
  private final RecordId boosters = lot("C6-0", "B1", "");

  private RecordId lot(String motor, String code, String date) {
    return log.has(
        Kind.LOT,
        Facts.none().with(Lot.MOTOR, motor).with(Lot.CODE, code).with(Lot.DATE_CODE, date));
  }

  private void flown(String motor, RecordId lot, String burn) {
    flown(motor, lot, Optional.empty(), burn);
  }

  private void flown(String motor, RecordId lot, Optional<RecordId> booster, String burn) {
    Facts one =
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.MOTOR, motor)
            .with(Flight.LOT, lot);
    Facts facts = booster.map(id -> one.with(Flight.BOOSTER_LOT, id)).orElse(one);
    log.has(Kind.FLIGHT, burn.isEmpty() ? facts : facts.with(Flight.BURN, burn));
  }

  private void flown(int times, String motor, RecordId lot, String burn) {
    for (int i = 0; i < times; i++) {
      flown(motor, lot, burn);
    }
  }

  private Reliability reliability() throws Fault, IOException {
    Logbook book = book();
    return new Reliability(book, outcomes());
  }

  private Logbook book() throws Fault, IOException {
    return Logbook.read(log, table());
  }

  private static MotorTable table() throws IOException {
    try (Reader csv = Files.newBufferedReader(Path.of("data/motors.csv"))) {
      return new MotorTable(MotorTable.read(csv, "motors.csv").types());
    }
  }

  private static OutcomeTable outcomes() throws IOException {
    try (Reader csv = Files.newBufferedReader(Path.of("data/outcomes.csv"))) {
      return OutcomeTable.read(csv);
    }
  }

  private Burns of(RecordId lot) throws Fault, IOException {
    return reliability().of(book().lot(lot).orElseThrow());
  }

  @Test
  void a_burst_is_kept_apart_from_other_failures() throws Fault, IOException {
    flown(5, "C6-5", k7, "nominal");
    flown("C6-5", k7, "cato_nozzle");
    flown("C6-3", k8, "weak");
    flown("C6-3", k8, "cato_case");
    flown(2, "C6-3", k8, "nominal");

    assertThat(of(k7).words()).isEqualTo("1 of 6 burst (1 in 238 to 2 in 3)");
    assertThat(of(k8).words()).isEqualTo("2 of 4 failed (1 in 15 to 14 in 15), 1 of them burst");
  }

  @Test
  void what_was_not_told_yet_counts_for_neither() throws Fault, IOException {
    flown(2, "C6-5", k7, "");
    assertThat(of(k7).words()).isEqualTo("2 fired, none told of yet");
    flown("C6-5", k7, "nominal");
    assertThat(of(k7)).isEqualTo(new Burns(1, 2, 0, 0));
    assertThat(of(k8).words()).isEqualTo("none fired");
  }

  @Test
  void one_motor_of_a_cluster_fails() throws Fault, IOException {
    flown("3xC6-5", k7, "nominal");
    flown("3xC6-5", k7, "cato_case");

    assertThat(of(k7)).isEqualTo(new Burns(6, 0, 1, 1));
  }

  @Test
  void each_lot_of_a_stack_counts_its_failure() throws Fault, IOException {
    log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.MOTOR, "C6-0 then C6-5")
            .with(Flight.LOT, k7)
            .with(Flight.BOOSTER_LOT, boosters)
            .with(Flight.BURN, "chuffed"));

    assertThat(of(k7)).isEqualTo(new Burns(1, 0, 1, 0));
    assertThat(of(boosters)).isEqualTo(new Burns(1, 0, 1, 0));
  }

  @Test
  void types_and_date_codes_hold_several_lots() throws Fault, IOException {
    flown(4, "C6-5", k7, "nominal");
    flown("C6-3", k8, "cato_case");
    flown("D12-5", boosters, "nominal");

    assertThat(reliability().byType())
        .isEqualTo(Map.of("C6", new Burns(5, 0, 1, 1), "D12", new Burns(1, 0, 0, 0)));
    assertThat(reliability().byDateCode())
        .isEqualTo(Map.of("C6 of 04 12 24", new Burns(5, 0, 1, 1)));
  }

  /** Two of two against none of twenty: one table of 231, by hand. */
  @Test
  void a_lot_is_held_against_the_rest_of_its_type() throws Fault, IOException {
    flown(2, "C6-5", k7, "cato_case");
    flown(20, "C6-3", k8, "nominal");
    Reliability reliability = reliability();
    Reliability.Contrast contrast =
        reliability.contrast(book().lot(k7).orElseThrow()).orElseThrow();

    assertThat(contrast.chance()).isCloseTo(1 / 231.0, within(1e-12));
    assertThat(contrast.words())
        .isEqualTo(
            "The rest of C6: none of 20 failed (at most 1 in 5). By chance alone they differ so"
                + " much less than once in 100.");
    assertThat(reliability.contrast(book().lot(k8).orElseThrow())).isEmpty();
  }

  /** A log without the flights that name the lot counts the same rest. */
  @Test
  void the_rest_of_a_type_is_what_a_log_without_the_lot_counts() throws Fault, IOException {
    Random random = new Random(SEED);
    List<RecordId> lots = List.of(k7, k8, boosters);
    List<String> motors = List.of("C6-5", "3xC6-5", "C6-0 then C6-7", "B6-0 then C6-3", "D12-5");
    List<String> burns = List.of("nominal", "weak", "cato_nozzle", "");
    ReliabilityTest without = new ReliabilityTest();
    for (int i = 0; i < 300; i++) {
      String motor = motors.get(random.nextInt(motors.size()));
      RecordId top = lots.get(random.nextInt(2));
      Optional<RecordId> low =
          motor.contains("then") ? Optional.of(lots.get(random.nextInt(3))) : Optional.empty();
      String burn = burns.get(random.nextInt(burns.size()));
      flown(motor, top, low, burn);
      if (!top.equals(k7) && !low.equals(Optional.of(k7))) {
        without.flown(motor, without.k8, low, burn);
      }
    }
    assertThat(reliability().contrast(book().lot(k7).orElseThrow()).orElseThrow().rest())
        .as("seed %d", SEED)
        .isEqualTo(without.reliability().byType().get("C6"));
  }

  @Test
  void more_of_a_part_than_of_the_whole_is_refused() {
    assertThatThrownBy(() -> new Burns(1, 0, 2, 0)).hasMessageStartingWith("0 burst, 2 failed");
  }
}
