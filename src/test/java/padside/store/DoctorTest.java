package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;

/** What the doctor finds, mends and says. */
class DoctorTest {
  private static final String WELL = "Nothing that was kept is missing; the log is well.";

  @TempDir Path place;

  private Path folder;
  private Path database;
  private List<String> whole;
  private Path first;

  @BeforeEach
  void a_flight_of_lamplighter_in_one_run_and_a_rocket_in_another() throws Exception {
    folder = place.resolve("log");
    database = folder.resolve("padside.sqlite");
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(1))) {
      Facts date = Facts.none().with(Day.DATE, LocalDate.of(2026, 10, 17));
      RecordId day = log.save(Action.create("open day", Kind.DAY, date)).get(0);
      RecordId rocket = rocket(log, "Lamplighter");
      Facts card = Facts.none().with(Flight.ROCKET, rocket).with(Flight.DAY, day);
      RecordId flight = log.save(Action.create("begin", Kind.FLIGHT, card)).get(0);
      Facts motor = Facts.none().with(Flight.MOTOR, "D12-5");
      log.save(Action.change("edit", Kind.FLIGHT, flight, motor));
    }
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(2))) {
      rocket(log, "Stork");
    }
    whole = LogState.of(folder);
    first = folder.resolve("journal").resolve(run(1) + ".jsonl");
  }

  @Test
  void a_log_that_is_well_is_said_to_be_and_left_as_it_is() throws Exception {
    Map<Path, Long> before = sums();

    assertThat(told(true))
        .containsExactly(
            "The log in " + folder + " is open in no other program.",
            "Journals: 2 with 7 lines of 2 runs; every checksum fits.",
            "Database: SQLite finds no fault; its tables are as they were made and every row"
                + " belongs to something.",
            "Held against its lines: all 4 records show what they say.",
            WELL);
    assertThat(sums()).isEqualTo(before);
    assertThat(told(false)).last().isEqualTo(WELL);
    before.remove(folder.resolve("lock"));
    assertThat(sums()).containsAllEntriesOf(before);
  }

  @Test
  void a_deleted_journal_is_written_again_from_the_database() throws Exception {
    Files.delete(first);

    assertThat(told(true))
        .contains(
            "Found in the database: 5 lines that no journal holds.",
            "To be mended: 5 lines would be written to new journals.");
    assertThat(first.resolveSibling(run(1) + "-1.jsonl")).doesNotExist();
    assertThat(told(false))
        .contains(
            "Mended: 5 lines stand in journals again: " + run(1) + "-1.jsonl.",
            "Looked at again: the database shows what all lines say.",
            WELL);
    assertRebuilt();
  }

  @Test
  void a_journal_cut_short_is_mended_and_told_no_more() throws Exception {
    byte[] bytes = Files.readAllBytes(first);
    byte[] half = Arrays.copyOf(bytes, bytes.length / 2);
    Files.write(first, half);
    assertThat(opened()).singleElement().asString().contains("is shorter", "padside doctor");

    assertThat(told(false)).contains(WELL).anyMatch(said -> said.startsWith("Mended: "));
    assertThat(first).as("never changed").hasBinaryContent(half);
    assertThat(opened()).isEmpty();
    assertRebuilt();
  }

  @Test
  void a_flipped_bit_in_a_journal_is_healed_from_the_database() throws Exception {
    flip(first, 3);

    assertThat(told(false))
        .contains(
            "  journal "
                + first.getFileName()
                + ", byte "
                + start(3)
                + ": its checksum does not"
                + " fit.",
            "Of the lines that cannot be read 1 are whole elsewhere.",
            WELL);
    assertRebuilt();
  }

  @Test
  void what_is_lost_is_named_by_its_record() throws Exception {
    flip(first, 4);
    Files.delete(database);

    assertThat(told(false))
        .contains(
            "Lost: a line about flight card of Lamplighter, 17 Oct 2026 in journal "
                + first.getFileName()
                + ", byte "
                + start(4)
                + ".")
        .last()
        .asString()
        .startsWith("Not all is well.");
    assertThat(LogState.rows(folder, "SELECT file, at FROM bad_line"))
        .containsExactly(first.getFileName() + "|" + start(4));
  }

  @Test
  void operations_that_others_speak_of_are_missed() throws Exception {
    List<String> lines = new ArrayList<>(Files.readAllLines(first));
    lines.remove(3);
    Files.writeString(first, String.join("\n", lines) + "\n");
    Files.delete(database);

    assertThat(told(false))
        .contains(
            "Lost: operation "
                + run(1)
                + ".3 (flight card of a rocket without a name), which other"
                + " lines speak of.")
        .anyMatch(said -> said.startsWith("Run " + run(1) + " counts to 4 and has 4 lines"));
  }

  @Test
  void a_whole_run_that_another_came_after_is_missed() throws Exception {
    Files.delete(first);
    Files.delete(database);

    assertThat(told(false))
        .contains("Lost: every line of run " + run(1) + ", which came before another.");
  }

  @Test
  void an_unfinished_line_is_told_and_nothing_is_said_to_be_lost() throws Exception {
    Files.writeString(first, "{\"v\":1,\"run\":\"0123", StandardOpenOption.APPEND);
    opened();

    assertThat(told(false))
        .anyMatch(said -> said.startsWith("Unfinished: a line in journal " + first.getFileName()))
        .last()
        .isEqualTo(WELL);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE record SET doc = replace(doc, 'D12-5', 'D12-7')",
        "UPDATE record SET removed = 1 WHERE kind = 'rocket'",
        "UPDATE record SET t = 77 WHERE kind = 'day'",
        "UPDATE record SET doc = replace(doc, 'Stork', 'Storck') WHERE whole = 1",
        "UPDATE record SET whole = 0 WHERE kind = 'rocket'",
        "UPDATE record SET whole = 1 WHERE kind = 'flight'",
        "UPDATE cell SET value = '\"D12-7\"' WHERE field = 'motor'",
        "UPDATE cell SET head = 0 WHERE field = 'motor'",
        "DELETE FROM cell WHERE field = 'motor'",
        "UPDATE op SET raw = replace(raw, 'Stork', 'Starling')",
        "UPDATE op SET t = 3 WHERE n = 1",
        "DELETE FROM op WHERE n = 4",
        "DROP VIEW rocket",
        "CREATE TABLE scribble (a)",
      })
  void a_database_that_shows_what_its_lines_do_not_say_is_built_anew(String silently)
      throws Exception {
    LogState.tamper(folder, silently);
    Map<Path, Long> before = sums();

    assertThat(told(true)).last().asString().startsWith("Not all is well; nothing was changed.");
    assertThat(sums()).isEqualTo(before);
    assertThat(told(false))
        .anyMatch(said -> said.contains("the database was built anew") && said.contains("aside"))
        .last()
        .isEqualTo(WELL);
    assertThat(LogState.of(folder)).isEqualTo(whole);
    assertThat(folder.resolve("aside/1/padside.sqlite")).exists();
    assertThat(told(false)).contains("Held against its lines: all 4 records show what they say.");
  }

  @Test
  void a_copy_elsewhere_gives_back_what_journal_and_database_lost() throws Exception {
    Path stick = Files.createDirectories(place.resolve("stick/journal"));
    Files.copy(first, stick.resolve(first.getFileName()));
    flip(first, 2);
    flip(first, 4);
    Files.delete(database);

    assertThat(told(false, place.resolve("stick")))
        .contains("Found in " + place.resolve("stick") + ": 2 lines that no journal holds.", WELL);
    assertRebuilt();
  }

  @Test
  void another_database_gives_back_what_is_lost_and_is_left_alone() throws Exception {
    Path stick = Files.createDirectories(place.resolve("stick"));
    Files.copy(database, stick.resolve("old copy.sqlite"));
    byte[] before = Files.readAllBytes(stick.resolve("old copy.sqlite"));
    Files.delete(first);
    Files.delete(database);

    assertThat(told(false, stick)).contains(WELL);
    assertThat(stick.resolve("old copy.sqlite")).hasBinaryContent(before);
    assertThat(stick.toFile().list()).containsExactly("old copy.sqlite");
    assertRebuilt();
  }

  @Test
  void lines_of_a_log_that_has_nothing_to_do_with_this_one_are_left_where_they_are()
      throws Exception {
    Path other = place.resolve("other");
    try (LogFolder log = LogFolder.open(other, new PretendMachine(9))) {
      rocket(log, "Ibis");
    }

    assertThat(told(false, other))
        .contains(
            "Left in "
                + other
                + ": 2 lines of runs this log knows nothing of; padside restore"
                + " --add brings them in.",
            WELL);
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void a_place_with_nothing_to_read_is_refused() {
    assertThatThrownBy(() -> told(false, place.resolve("nowhere")))
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("no-source", fault, place));
  }

  @Test
  void a_log_that_is_open_is_refused_by_the_look_alone_too() throws Exception {
    try (SavingProgram other = SavingProgram.start(folder)) {
      other.acknowledged(1);
      for (boolean dry : List.of(true, false)) {
        assertThatThrownBy(() -> told(dry))
            .isInstanceOfSatisfying(
                Fault.class, fault -> FaultSentence.holds("log-in-use", fault, folder));
      }
      assertThat(other.acknowledged(3)).as("it goes on").hasSizeGreaterThanOrEqualTo(3);
    }
    assertThat(told(true)).first().asString().contains("the last one, process", "did not close it");
    told(false);
    assertThat(told(true)).first().asString().endsWith("is open in no other program.");
  }

  @Test
  void a_newer_log_is_refused_and_left_alone() throws Exception {
    LogState.tamper(
        folder, "PRAGMA user_version = 99", "UPDATE meta SET value = '99' WHERE key = 'version'");
    Map<Path, Long> before = sums();

    assertThatThrownBy(() -> told(true)).hasMessageContaining("newer Padside");
    assertThat(sums()).isEqualTo(before);
  }

  @Test
  void a_medium_that_refuses_leaves_everything_as_it_was() throws Exception {
    Files.delete(first);
    FailingMedium medium = new FailingMedium();
    medium.fail(FailingMedium.Failure.FORCE, 1);
    Doctor.Visit visit = new Doctor.Visit(List.of(), false);
    Doctor doctor = new Doctor(folder, new PretendMachine(3), medium, visit, said -> {});

    assertThatThrownBy(doctor::look).hasMessageContaining("No space left on device");
    assertThat(LogState.of(folder)).isEqualTo(whole);
    assertThat(told(false)).last().isEqualTo(WELL);
    assertRebuilt();
  }

  private void assertRebuilt() throws Exception {
    assertThat(LogState.of(folder)).isEqualTo(whole);
    Files.delete(database);
    opened();
    assertThat(LogState.of(folder)).as("from the journals alone").isEqualTo(whole);
    assertThat(told(false)).last().isEqualTo(WELL);
  }

  private List<String> told(boolean dry, Path... from) throws Fault {
    List<String> told = new ArrayList<>();
    boolean well =
        Doctor.look(folder, new PretendMachine(8), new Doctor.Visit(List.of(from), dry), told::add);
    assertThat(well).as("%s", told).isEqualTo(told.get(told.size() - 1).equals(WELL));
    return told;
  }

  private List<String> opened() throws Fault {
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(7))) {
      return log.notices();
    }
  }

  /** Every file with a sum of what is in it. */
  private Map<Path, Long> sums() throws IOException {
    Map<Path, Long> sums = new HashMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.toList()) {
        sums.put(
            file,
            Files.isDirectory(file)
                ? 0L
                : Files.getLastModifiedTime(file).toMillis()
                    + Arrays.hashCode(Files.readAllBytes(file)));
      }
    }
    return sums;
  }

  private static String run(long seed) {
    return new PretendMachine(seed).freshRun();
  }

  private long start(int line) throws IOException {
    String text = Files.readString(first, StandardCharsets.ISO_8859_1);
    int at = 0;
    for (int i = 0; i < line; i++) {
      at = text.indexOf('\n', at) + 1;
    }
    return at;
  }

  private void flip(Path journal, int line) throws IOException {
    byte[] bytes = Files.readAllBytes(journal);
    bytes[(int) start(line) + 70] ^= 1;
    Files.write(journal, bytes);
  }

  private static RecordId rocket(LogFolder log, String name) throws Fault {
    return log.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name))).get(0);
  }
}
