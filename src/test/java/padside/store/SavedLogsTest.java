package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import padside.fact.Fault;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Rocket;

/**
 * Logs that earlier versions wrote, opened by this one. What each has to show is what the program
 * of its time put into its own database, read there by plain SQL.
 */
class SavedLogsTest {
  private static final Path SAVED = Path.of("src/test/resources/saved-logs");

  /** The one whose tables are those of this version. */
  private static final String OWN = "3";

  @TempDir Path place;

  static List<String> versions() throws IOException {
    try (Stream<Path> saved = Files.list(SAVED)) {
      return saved
          .filter(Files::isDirectory)
          .map(at -> at.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void every_version_of_the_tables_has_its_log() throws Exception {
    List<String> saved = new ArrayList<>();
    for (String version : versions()) {
      saved.addAll(LogState.rows(copy(version), "PRAGMA user_version"));
    }
    for (int version = 1; version <= Schema.VERSION; version++) {
      assertThat(saved).contains(String.valueOf(version));
    }
  }

  @ParameterizedTest
  @MethodSource("versions")
  void a_saved_log_shows_what_its_own_program_showed(String version) throws Exception {
    Path log = copy(version);
    List<String> before = LogState.of(log);
    assertThat(before).hasSizeGreaterThan(60);

    List<String> notices = opened(log);
    assertThat(LogState.of(log)).isEqualTo(before);
    assertThat(opened(log)).isEmpty();
    if (version.equals(OWN)) {
      assertThat(notices).isEmpty();
      return;
    }
    Path aside = log.resolve("aside/1");
    assertThat(notices)
        .contains(
            "The database was set aside in "
                + aside
                + ": it is of an older version; the journals as they were are kept with it.");
    assertThat(LogState.of(aside)).as("the old log, as it was").isEqualTo(before);
    for (Path journal : JournalFiles.in(SAVED.resolve(version).resolve("journal"))) {
      assertThat(aside.resolve("journal").resolve(journal.getFileName()))
          .hasSameBinaryContentAs(journal);
      assertThat(log.resolve("journal").resolve(journal.getFileName()))
          .hasSameBinaryContentAs(journal);
    }
  }

  @ParameterizedTest
  @MethodSource("versions")
  void it_comes_from_its_database_alone(String version) throws Exception {
    Path log = copy(version);
    List<String> before = LogState.of(log);
    FolderCopy.delete(log.resolve("journal"));

    opened(log);
    if (version.equals(OWN)) {
      Doctor.look(log, new PretendMachine(7), new Doctor.Visit(List.of(), false), said -> {});
    }
    assertThat(LogState.of(log)).isEqualTo(before);
    Files.delete(log.resolve("padside.sqlite"));
    opened(log);
    assertThat(LogState.of(log)).as("from the journals written then").isEqualTo(before);
  }

  @ParameterizedTest
  @MethodSource("versions")
  void it_comes_from_its_journals_alone(String version) throws Exception {
    Path log = copy(version);
    List<String> before = LogState.of(log);
    Files.delete(log.resolve("padside.sqlite"));

    opened(log);
    assertThat(LogState.of(log)).isEqualTo(before);
  }

  @ParameterizedTest
  @MethodSource("versions")
  void the_doctor_brings_it_up_and_a_backup_holds_all_of_it(String version) throws Exception {
    Path log = copy(version);
    List<String> before = LogState.of(log);
    Backup.Target target = new Backup.Target(place.resolve("backup"), true);

    Backup.Kept kept = Backup.of(log, new PretendMachine(8), List.of(target)).places().get(0);
    assertThat(kept.fault()).isEmpty();
    assertThat(kept.whole()).isTrue();
    assertThat(
            Doctor.look(log, new PretendMachine(7), new Doctor.Visit(List.of(), false), said -> {}))
        .isTrue();
    assertThat(LogState.of(log)).isEqualTo(before);
    Path restored = place.resolve("restored");
    Restore.into(
        restored,
        new PretendMachine(9),
        new Restore.Wanted(target.folder(), false, false),
        said -> {});
    assertThat(LogState.of(restored)).isEqualTo(before);
  }

  @Test
  void a_medium_too_full_for_the_copy_leaves_the_older_log_as_it_is() throws Exception {
    Path log = copy("1");
    List<String> before = LogState.of(log);
    FailingMedium medium = new FailingMedium();
    medium.fail(FailingMedium.Failure.WRITE, 2);

    assertThatThrownBy(() -> LogFolder.open(log, new PretendMachine(7), medium))
        .hasMessageContaining("No space left on device");
    assertThat(log.resolve("aside/1")).doesNotExist();
    assertThat(LogState.of(log)).isEqualTo(before);
    assertThat(LogState.rows(log, "PRAGMA user_version")).containsExactly("1");
    opened(log);
    assertThat(LogState.of(log)).isEqualTo(before);
  }

  /** As typed in {@link SavedLog}. */
  @ParameterizedTest
  @MethodSource("versions")
  void its_values_are_those_that_were_typed(String version) throws Exception {
    try (FlightLog log = LogFolder.open(copy(version), new PretendMachine(7))) {
      FlightLog.Stored rocket = log.list(Kind.ROCKET).get(0);
      assertThat(log.list(Kind.ROCKET)).hasSize(1);
      assertThat(rocket.facts().typed(Rocket.MASS)).contains("1.3oz");
      assertThat(rocket.facts().get(Rocket.NOTE)).contains("fins re-glued – twice; \"loud\" µ");
      assertThat(log.removed(Kind.ROCKET))
          .extracting(removed -> removed.facts().get(Rocket.NAME).orElseThrow())
          .containsExactly("Typed twice");
      List<FlightLog.Stored> flights = log.list(Kind.FLIGHT);
      assertThat(flights)
          .extracting(flight -> flight.facts().get(Flight.MOTOR).orElseThrow())
          .containsExactly("A8-3", "C6-0, C6-7", "B6-4");
      assertThat(flights.get(0).facts().typed(Flight.ALTITUDE)).contains("312 ft");
      assertThat(flights.get(1).facts().typed(Flight.MASS)).contains("about 2");
      assertThat(flights.get(1).facts().get(Flight.MASS)).isEmpty();
      assertThat(flights.get(2).facts().get(Flight.STATUS)).contains(Flight.Status.CARD);
      assertThat(log.history(Kind.FLIGHT, flights.get(2).id())).hasSize(3);
    }
  }

  private Path copy(String version) throws IOException {
    Path log = Files.createDirectories(Files.createTempDirectory(place, "v").resolve("log"));
    return FolderCopy.of(SAVED.resolve(version), log);
  }

  private static List<String> opened(Path log) throws Fault {
    try (LogFolder open = LogFolder.open(log, new PretendMachine(7))) {
      return open.notices();
    }
  }
}
