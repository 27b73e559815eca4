package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;

/** Lines that only a database still holds get back into a journal. */
class MendingTest {
  @TempDir Path folder;

  private List<String> whole;
  private Path first;

  @BeforeEach
  void a_log_of_two_runs() throws Exception {
    save(1, "Heron", "Egret");
    save(2, "Stork");
    whole = LogState.of(folder);
    String run = new PretendMachine(1).freshRun();
    first = folder.resolve("journal").resolve(run + ".jsonl");
  }

  @Test
  void lines_salvaged_stand_in_a_journal_again_and_outlive_every_database() throws Exception {
    String lost = Files.readString(first);
    Files.delete(first);
    LogState.tamper(folder, "DROP TABLE cell");

    assertThat(opened())
        .last()
        .isEqualTo(
            "Recovered from the database set aside: 3 lines no journal held; they stand in a"
                + " journal again.");
    assertThat(journals()).hasSize(2);
    assertThat(mended()).hasContent(lost);
    assertThat(opened()).isEmpty();
    assertRebuilt();
  }

  @Test
  void a_line_with_a_flipped_bit_is_healed_and_not_told_as_lost() throws Exception {
    byte[] bytes = Files.readAllBytes(first);
    bytes[Files.readAllLines(first).get(0).length() + 100] ^= 1;
    Files.write(first, bytes);
    LogState.tamper(folder, "DROP TABLE cell");

    assertThat(opened()).hasSize(3).noneMatch(said -> said.contains("Skipped"));
    assertThat(first).as("never changed").hasBinaryContent(bytes);
    assertThat(LogState.rows(folder, "SELECT * FROM bad_line")).isEmpty();
    assertRebuilt();
  }

  @Test
  void a_line_whose_name_is_gone_is_known_by_its_neighbours() throws Exception {
    byte[] bytes = Files.readAllBytes(first);
    int at = Files.readAllLines(first).get(0).length() + 1;
    Arrays.fill(bytes, at, at + 120, (byte) 0);
    Files.write(first, bytes);
    LogState.tamper(folder, "DROP TABLE cell");

    assertThat(opened()).noneMatch(said -> said.contains("Skipped"));
    assertRebuilt();
  }

  @Test
  void a_line_that_took_the_name_of_another_is_still_told_as_lost() throws Exception {
    List<String> lines = Files.readAllLines(first);
    String stranger = "{\"v\":1,\"run\":\"" + new PretendMachine(1).freshRun() + "\",\"n\":1,";
    Files.writeString(first, String.join("\n", lines) + "\n" + stranger + "X".repeat(300) + "\n");
    Files.delete(folder.resolve("padside.sqlite"));

    assertThat(opened()).anyMatch(said -> said.startsWith("Skipped a line"));
  }

  @Test
  void a_journal_cut_short_is_mended_beside_it() throws Exception {
    byte[] bytes = Files.readAllBytes(first);
    Files.write(first, Arrays.copyOf(bytes, bytes.length - 100));
    LogState.tamper(folder, "DROP TABLE cell");

    assertThat(opened()).noneMatch(said -> said.contains("Skipped"));
    assertThat(mended())
        .hasContent(new String(bytes, StandardCharsets.UTF_8).lines().toList().get(2) + "\n");
    assertRebuilt();
  }

  @Test
  void lines_before_and_behind_a_damaged_page_are_both_salvaged() throws Exception {
    for (int i = 0; i < 40; i++) {
      save(10 + i, "Plover " + i);
    }
    whole = LogState.of(folder);
    for (Path journal : journals()) {
      Files.delete(journal);
    }
    LogState.tamper(folder, "PRAGMA journal_mode = DELETE");
    long page = Long.parseLong(LogState.rows(folder, middlePageOfLines()).get(0));
    Path database = folder.resolve("padside.sqlite");
    byte[] bytes = Files.readAllBytes(database);
    Arrays.fill(bytes, (int) (page - 1) * 4096, (int) page * 4096, (byte) 0x5a);
    Files.write(database, bytes);

    assertThat(opened()).anyMatch(said -> said.contains("can be read in part only"));
    List<String> lines = LogState.rows(folder, "SELECT raw FROM op");
    assertThat(lines).hasSizeBetween(60, 84).contains(firstAndLast());
    assertThat(LogState.of(folder)).isNotEmpty();
  }

  private String middlePageOfLines() {
    return "SELECT pageno FROM dbstat WHERE name = 'op' AND pagetype = 'leaf' ORDER BY pageno"
        + " LIMIT 1 OFFSET (SELECT count(*) / 2 FROM dbstat WHERE name = 'op'"
        + " AND pagetype = 'leaf')";
  }

  private String[] firstAndLast() {
    return whole.stream()
        .filter(row -> row.contains("|applied"))
        .map(row -> row.substring(row.indexOf('{'), row.lastIndexOf('|')))
        .filter(raw -> raw.contains("\"Heron\"") || raw.contains("\"Plover 39\""))
        .toArray(String[]::new);
  }

  @Test
  void a_medium_that_refuses_is_told_and_nothing_half_written_stays() throws Exception {
    Files.delete(first);
    LogState.tamper(folder, "DROP TABLE cell");
    FailingMedium medium = new FailingMedium();
    medium.fail(FailingMedium.Failure.SHORT_WRITE, 9);

    try (LogFolder log = LogFolder.open(folder, new PretendMachine(5), medium)) {
      assertThat(log.notices())
          .last()
          .asString()
          .contains("3 lines", "could not be written", "No space left on device");
      assertThat(log.list(Kind.ROCKET)).hasSize(3);
    }
    assertThat(folder.resolve("journal").toFile().list()).hasSize(1);
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void a_filling_that_was_cut_off_is_done_again() throws Exception {
    LogState.tamper(
        folder,
        "DELETE FROM cell",
        "DELETE FROM replaced",
        "DELETE FROM record",
        "DELETE FROM op",
        "INSERT INTO meta VALUES ('unfilled', '1')");

    assertThat(opened()).containsExactly("The database was built from 5 lines of 2 journals.");
    assertRebuilt();
  }

  private void assertRebuilt() throws Exception {
    assertThat(LogState.of(folder)).isEqualTo(whole);
    Files.delete(folder.resolve("padside.sqlite"));
    for (SetAside aside : SetAside.in(folder)) {
      Files.delete(aside.place().resolve("padside.sqlite"));
    }
    opened();
    assertThat(LogState.of(folder)).as("from the journals alone").isEqualTo(whole);
  }

  private Path mended() throws IOException {
    return first.resolveSibling(first.getFileName().toString().replace(".jsonl", "-1.jsonl"));
  }

  private List<Path> journals() throws IOException {
    return JournalFiles.in(folder.resolve("journal"));
  }

  private List<String> opened() throws Fault {
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(7))) {
      return log.notices();
    }
  }

  private void save(long seed, String... names) throws Fault {
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(seed))) {
      for (String name : names) {
        log.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name)));
      }
    }
  }
}
