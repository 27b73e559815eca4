package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padside.fact.Facts;
import padside.fact.Facts.Cell;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;

/** What the log does when a file is missing, torn, damaged, older or newer than it expects. */
class DamageTest {
  @TempDir Path folder;

  private Path database;
  private List<String> whole;

  @BeforeEach
  void a_log_of_two_runs() throws Fault, SQLException {
    database = folder.resolve("padside.sqlite");
    save(1, "Heron", "Egret");
    save(2, "Stork");
    whole = LogState.of(folder);
  }

  @Test
  void a_deleted_database_is_built_again_the_same() throws Exception {
    Files.delete(database);

    assertThat(openedNotices())
        .containsExactly("The database was built from 8 lines of 2 journals.");
    assertThat(LogState.of(folder)).isEqualTo(whole);
    assertThat(openedNotices()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 400, 5000, 100_000})
  void garbage_in_its_place_is_set_aside_and_the_database_built_again(int size) throws Exception {
    byte[] garbage = new byte[size];
    new Random(size).nextBytes(garbage);
    Files.write(database, garbage);

    assertThat(openedNotices())
        .first()
        .asString()
        .contains("set aside in " + folder.resolve("aside").resolve("1"));
    assertThat(folder.resolve("aside/1/padside.sqlite")).hasBinaryContent(garbage);
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void a_database_damaged_inside_is_set_aside_and_built_again() throws Exception {
    byte[] bytes = Files.readAllBytes(database);
    new Random(3).ints(2000, 4096, bytes.length).forEach(at -> bytes[at] ^= 0x55);
    Files.write(database, bytes);

    assertThat(openedNotices()).first().asString().contains("damaged", "aside");
    assertThat(folder.resolve("aside/1/padside.sqlite")).hasBinaryContent(bytes);
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "PRAGMA user_version = 17",
        "PRAGMA application_id = 7",
        "DROP INDEX record_order",
        "DROP TABLE meta",
        "UPDATE meta SET value = 'x'"
      })
  void a_log_with_a_damaged_header_or_table_is_built_again(String damage) throws Exception {
    LogState.tamper(folder, damage);

    assertThat(openedNotices()).first().asString().contains("set aside");
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void lines_only_the_database_holds_are_recovered_from_the_one_set_aside() throws Exception {
    Files.delete(journals().get(0));
    LogState.tamper(folder, "DROP TABLE cell");

    List<String> notices = openedNotices();

    assertThat(notices.get(0)).contains("aside");
    assertThat(notices)
        .last()
        .asString()
        .matches("Recovered .*: [35] lines no journal held; they stand in a journal again\\.");
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void tables_of_an_older_version_are_built_again_from_their_lines() throws Exception {
    for (Path journal : journals()) {
      Files.delete(journal);
    }
    LogState.tamper(
        folder,
        "PRAGMA user_version = 0",
        "UPDATE meta SET value = '0' WHERE key = 'version'",
        "DROP TABLE cell");

    assertThat(openedNotices()).first().asString().contains("older version");
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void a_log_of_a_newer_version_is_refused_and_left_alone() throws Exception {
    LogState.tamper(
        folder, "PRAGMA user_version = 99", "UPDATE meta SET value = '99' WHERE key = 'version'");
    byte[] before = Files.readAllBytes(database);

    assertThatThrownBy(this::openedNotices)
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("log-newer", fault, folder));
    assertThat(database).hasBinaryContent(before);
  }

  @Test
  void a_database_of_another_program_is_refused_and_left_alone() throws Exception {
    Files.delete(database);
    LogState.tamper(folder, "PRAGMA application_id = 7", "CREATE TABLE letters (text)");
    byte[] before = Files.readAllBytes(database);

    assertThatThrownBy(this::openedNotices)
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("log-foreign", fault, folder));
    assertThat(database).hasBinaryContent(before);
  }

  @Test
  void a_file_that_is_no_database_without_a_journal_beside_it_is_refused() throws Exception {
    for (Path journal : journals()) {
      Files.delete(journal);
    }
    Files.writeString(database, "A letter to aunt Emma. ".repeat(100));

    assertThatThrownBy(this::openedNotices)
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("log-not-a-log", fault, folder));
    assertThat(database).hasContent("A letter to aunt Emma. ".repeat(100));
  }

  @Test
  void a_torn_last_line_is_said_once_and_never_comes_back() throws Exception {
    Files.writeString(journals().get(0), "{\"v\":1,\"run\":\"0123", StandardOpenOption.APPEND);

    assertThat(openedNotices()).singleElement().asString().contains("cut off before its end");
    assertThat(openedNotices()).isEmpty();
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void a_line_torn_at_any_byte_is_either_whole_or_absent() throws Exception {
    Path journal = journals().get(1);
    byte[] bytes = Files.readAllBytes(journal);
    for (int size = bytes.length - 60; size < bytes.length; size += 3) {
      Files.write(journal, java.util.Arrays.copyOf(bytes, size));
      Files.deleteIfExists(database);
      assertThat(openedNotices()).as("%d bytes", size).anyMatch(said -> said.contains("cut off"));
      assertThat(whole).as("%d bytes", size).containsAll(ops());
    }
  }

  @Test
  void a_line_with_a_flipped_bit_is_skipped_and_named_and_the_others_stand() throws Exception {
    Path journal = journals().get(0);
    List<String> lines = Files.readAllLines(journal);
    byte[] bytes = Files.readAllBytes(journal);
    int at = lines.get(0).length() + 1;
    bytes[at + 40] ^= 1;
    Files.write(journal, bytes);
    Files.delete(database);

    assertThat(openedNotices())
        .contains(
            "Skipped a line of journal "
                + journal.getFileName()
                + " at byte "
                + at
                + ": its checksum does not fit.");
    assertThat(ops()).hasSize(7).isSubsetOf(whole);
    assertThat(journal).as("never written to again").hasBinaryContent(bytes);
    assertThat(LogState.rows(folder, "SELECT file, at FROM bad_line"))
        .containsExactly(journal.getFileName() + "|" + at);
  }

  @Test
  void a_line_that_grew_beyond_every_bound_is_skipped() throws Exception {
    String text = Files.readString(journals().get(0)) + "x".repeat(3_000_000) + "\n";
    Files.writeString(journals().get(0), text);
    Files.delete(database);

    assertThat(openedNotices()).anyMatch(said -> said.contains("longer than 262144 bytes"));
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void lines_an_older_database_lacks_are_taken_in() throws Exception {
    byte[] older = Files.readAllBytes(database);
    save(3, "Crane");
    List<String> all = LogState.of(folder);
    Files.write(database, older);

    assertThat(openedNotices())
        .containsExactly("Taken in from the journals: 3 lines the database lacked.");
    assertThat(LogState.of(folder)).isEqualTo(all);
  }

  @Test
  void journals_that_appear_in_the_folder_are_taken_in(@TempDir Path other) throws Exception {
    try (LogFolder log = LogFolder.open(other, new PretendMachine(9))) {
      log.save(Action.create("", Kind.ROCKET, Facts.none().with(Rocket.NAME, "Ibis")));
    }
    Path journal = JournalFiles.in(other.resolve("journal")).get(0);
    Files.copy(journal, folder.resolve("journal").resolve(journal.getFileName()));

    try (LogFolder log = open(10)) {
      assertThat(log.notices()).hasSize(1);
      assertThat(log.list(Kind.ROCKET)).hasSize(4);
    }
  }

  @Test
  void a_link_among_the_journals_is_not_followed() throws Exception {
    Path elsewhere = Files.writeString(folder.resolve("elsewhere"), "not ours\n");
    Files.createSymbolicLink(folder.resolve("journal/x.jsonl"), elsewhere);

    assertThat(openedNotices()).isEmpty();
  }

  @Test
  void what_this_version_does_not_know_is_kept() throws Exception {
    String run = "ffffffffffffffffffff";
    String newer = LineFormTest.summed("{\"v\":2,\"run\":\"" + run + "\",\"n\":1,\"t\":70");
    String field =
        LineFormTest.summed(
            "{\"v\":1,\"run\":\"%s\",\"n\":2,\"t\":71,\"new\":0,\"ch\":[".formatted(run)
                + "{\"k\":\"balloon\",\"e\":\"x.1\",\"f\":\"gas\",\"v\":\"He\"},"
                + "{\"k\":\"rocket\",\"e\":\"x.2\",\"f\":\"tint\",\"v\":[1],\"y\":\"red\"}]");
    Files.writeString(folder.resolve("journal/new.jsonl"), newer + "\n" + field + "\n");

    try (LogFolder log = open(3)) {
      assertThat(log.notices())
          .contains(
              "Kept but not shown: 1 journal lines of a newer version; update Padside to see"
                  + " them.");
      assertThat(log.find(Kind.ROCKET, new RecordId("x.2")).orElseThrow().facts().cells())
          .containsEntry("tint", Cell.of(List.of(1L), "red"));
    }
    assertThat(LogState.rows(folder, "SELECT raw FROM op")).contains(newer, field);
    assertThat(LogState.rows(folder, "SELECT kind FROM head WHERE id = 'x.1'"))
        .containsExactly("balloon");
  }

  @Test
  void a_count_far_ahead_is_kept_and_never_counted_on_from() throws Exception {
    String line =
        LineFormTest.summed(
            "{\"v\":1,\"run\":\"ffffffffffffffffffff\",\"n\":1,\"t\":9223372036854775807,"
                + "\"ch\":[{\"k\":\"rocket\",\"e\":\"x.2\",\"f\":\"name\",\"v\":\"far\"}]");
    Files.write(folder.resolve("journal/far.jsonl"), List.of(line), StandardCharsets.UTF_8);
    save(3, "Crane");

    assertThat(LogState.rows(folder, "SELECT max(t) FROM op WHERE raw LIKE '%Crane%'"))
        .containsExactly("7");
    assertThat(LogState.rows(folder, "SELECT name FROM rocket")).contains("far", "Crane");
  }

  private void save(long seed, String... names) throws Fault {
    try (LogFolder log = open(seed)) {
      for (String name : names) {
        RecordId rocket =
            log.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name)))
                .get(0);
        Facts mass = Facts.none().with("mass_kg", Cell.unread("35 gramms"));
        log.save(Action.change("weigh", Kind.ROCKET, rocket, mass));
      }
    }
  }

  private LogFolder open(long seed) throws Fault {
    return LogFolder.open(folder, new PretendMachine(seed));
  }

  private List<String> openedNotices() throws Fault {
    try (LogFolder log = open(5)) {
      return log.notices();
    }
  }

  private List<Path> journals() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("journal"))) {
      return files.sorted().toList();
    }
  }

  private List<String> ops() throws SQLException {
    return LogState.rows(
        folder, "SELECT run.name, n, t, raw, state FROM op JOIN run ON run.id = op.run");
  }
}
