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
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.store.Exchange.Device;
import padside.store.Holdings.Span;

/** What a log gives to other machines and takes from them. */
class LogExchangeTest {
  private static final long WALL = 1_795_601_335_000L;

  @TempDir Path pad;
  @TempDir Path desktop;
  private long seed;

  @Test
  void all_lines_of_one_log_make_the_same_log_of_another() throws Exception {
    RecordId heron = add(pad, "Heron");
    rename(pad, heron, "Grey Heron");
    add(desktop, "Wren");

    assertThat(give(pad, desktop)).isEqualTo(new Exchange.Taken(4, 0, 0, List.of()));
    assertThat(give(desktop, pad).fresh()).isEqualTo(2);
    assertThat(LogState.of(pad)).isEqualTo(LogState.of(desktop));
    assertThat(LogState.rows(desktop, "SELECT name FROM rocket ORDER BY name"))
        .containsExactly("Grey Heron", "Wren");
  }

  @Test
  void what_is_known_is_taken_no_second_time() throws Exception {
    add(pad, "Heron");
    give(pad, desktop);
    byte[] journal = Files.readAllBytes(received(desktop).get(0));
    assertThat(give(pad, desktop)).isEqualTo(new Exchange.Taken(0, 2, 0, List.of()));
    assertThat(received(desktop)).hasSize(1);
    assertThat(received(desktop).get(0)).hasBinaryContent(journal);
  }

  @Test
  void what_came_is_there_again_when_the_database_is_deleted() throws Exception {
    add(pad, "Heron");
    add(desktop, "Wren");
    give(pad, desktop);
    List<String> before = LogState.of(desktop);
    deleteDatabase(desktop);
    open(desktop).close();
    assertThat(LogState.of(desktop)).isEqualTo(before);
  }

  @Test
  void a_machine_keeps_its_name_when_the_database_is_built_from_lines_of_others() throws Exception {
    add(pad, "Heron");
    add(desktop, "Wren");
    Device self = self(desktop);
    give(pad, desktop);
    deleteDatabase(desktop);
    assertThat(self(desktop)).isEqualTo(self);
    assertThat(self(desktop).id()).isNotEqualTo(self(pad).id());
    add(desktop, "Rook");
    assertThat(devices(desktop)).isEqualTo(2);
  }

  @Test
  void an_empty_log_that_only_takes_has_a_name_of_its_own() throws Exception {
    add(pad, "Heron");
    give(pad, desktop);
    deleteDatabase(desktop);
    add(desktop, "Wren");
    assertThat(self(desktop).id()).isNotEqualTo(self(pad).id());
    assertThat(devices(desktop)).isEqualTo(2);
  }

  @Test
  void without_its_file_the_journals_tell_a_name_only_where_one_machine_wrote_them()
      throws Exception {
    add(pad, "Heron");
    Device self = self(pad);
    forget(pad);
    assertThat(self(pad)).isEqualTo(self);
    add(desktop, "Wren");
    give(desktop, pad);
    forget(pad);
    assertThat(self(pad).id()).isNotIn(self.id(), self(desktop).id());
  }

  @Test
  void lines_that_are_none_are_refused_and_the_rest_is_taken() throws Exception {
    add(pad, "Heron");
    List<String> lines = new ArrayList<>(lines(pad));
    lines.add(1, lines.get(1).replace("Heron", "Raven"));
    lines.add("{}");
    lines.add(lines.get(0).replaceFirst(",", ",\n"));
    lines.add("x".repeat(LineForm.MAX_BYTES + 1));
    try (LogFolder log = open(desktop)) {
      Exchange.Taken taken = log.exchange().take(lines);
      assertThat(taken.fresh()).isEqualTo(2);
      assertThat(taken.refused())
          .containsExactly(
              "A line that is no line of a journal: its checksum does not fit.",
              "A line that is no line of a journal: no checksum at its end.",
              "A line that is no line of a journal: a line end within it.",
              "A line that is no line of a journal: longer than 262144 bytes.");
    }
    assertThat(LogState.rows(desktop, "SELECT name FROM rocket")).containsExactly("Heron");
    assertThat(Files.readAllLines(received(desktop).get(0))).hasSize(2);
  }

  @Test
  void of_two_lines_of_one_name_ours_stays_and_the_other_is_put_aside() throws Exception {
    add(pad, "Heron");
    String ours = lines(pad).get(1);
    String body = ours.substring(0, ours.indexOf(",\"crc\"")).replace("Heron", "Raven");
    String other = body + ",\"crc\":\"" + Summed.sum(body) + "\"}";
    String name;
    try (LogFolder log = open(pad)) {
      Exchange.Taken taken = log.exchange().take(List.of(ours, other, other));
      name = LineForm.read(ours).value().orElseThrow().op().toString();
      assertThat(taken.known()).isEqualTo(1);
      assertThat(taken.fresh()).isZero();
      assertThat(taken.refused())
          .hasSize(2)
          .allMatch(said -> said.startsWith("Line " + name + " says otherwise than the log's own"));
    }
    assertThat(LogState.rows(pad, "SELECT name FROM rocket")).containsExactly("Heron");
    try (Stream<Path> aside = Files.list(pad.resolve("aside"))) {
      assertThat(aside.toList())
          .hasSize(1)
          .allSatisfy(f -> assertThat(f).hasContent(other + "\n" + other + "\n"));
    }
  }

  @Test
  void nobody_else_writes_the_lines_this_program_has_yet_to_write() throws Exception {
    add(pad, "Heron");
    try (LogFolder log = LogFolder.open(desktop, new PretendMachine(1, "pad", "b", WALL))) {
      Exchange.Taken taken = log.exchange().take(lines(pad)); // the pad's own run had that seed
      assertThat(taken.fresh()).isZero();
      assertThat(taken.refused()).hasSize(2).allMatch(said -> said.contains("has yet to write"));
      assertThat(log.save(named("Wren"))).hasSize(1);
    }
    assertThat(LogState.rows(desktop, "SELECT name FROM rocket")).containsExactly("Wren");
  }

  @Test
  void lines_of_a_newer_version_are_kept_and_passed_on() throws Exception {
    String body =
        "{\"v\":9,\"run\":\"00000000000000000009\",\"n\":1,\"t\":5,\"wings\":[{\"span\":{}}]";
    String line = body + ",\"crc\":\"" + Summed.sum(body) + "\"}";
    try (LogFolder log = open(pad)) {
      assertThat(log.exchange().take(List.of(line)))
          .isEqualTo(new Exchange.Taken(1, 0, 1, List.of()));
    }
    give(pad, desktop);
    assertThat(lines(desktop)).containsExactly(line);
  }

  @Test
  void a_copied_card_is_noticed_and_gets_a_name_of_its_own() throws Exception {
    add(pad, "Heron");
    FolderCopy.of(pad, desktop);
    Device one = self(pad);
    assertThat(self(desktop)).isEqualTo(one);
    add(pad, "Rook");
    add(desktop, "Wren");
    give(pad, desktop);
    give(desktop, pad);
    for (Path card : List.of(pad, desktop)) {
      try (LogFolder log = open(card)) {
        assertThat(log.exchange().settle())
            .singleElement()
            .asString()
            .startsWith("This log was gone on with on two machines that were one before");
        assertThat(log.exchange().settle()).isEmpty();
      }
    }
    assertThat(self(pad).id()).isNotIn(one.id(), self(desktop).id());
    assertThat(self(desktop).id()).isNotEqualTo(one.id());
    add(pad, "Crow");
    give(pad, desktop);
    for (Path card : List.of(pad, desktop)) {
      deleteDatabase(card);
      try (LogFolder log = open(card)) {
        assertThat(log.exchange().settle()).isEmpty();
      }
    }
    assertThat(devices(desktop)).isEqualTo(2);
  }

  @Test
  void a_start_whose_last_header_only_the_journal_held_is_no_second_machine() throws Exception {
    add(pad, "Heron");
    FolderCopy.of(pad, desktop); // the database as it was before the next run
    add(pad, "Rook");
    for (Path file : Database.files(pad.resolve(Opening.DATABASE))) {
      Files.delete(file);
    }
    Files.copy(desktop.resolve(Opening.DATABASE), pad.resolve(Opening.DATABASE));
    add(pad, "Wren");
    try (LogFolder log = open(pad)) {
      assertThat(log.exchange().settle()).isEmpty();
    }
  }

  @Test
  void a_medium_that_refuses_takes_nothing_and_loses_nothing() throws Exception {
    add(pad, "Heron");
    FailingMedium medium = new FailingMedium();
    try (LogFolder log = LogFolder.open(desktop, machine(), medium)) {
      Exchange exchange = log.exchange();
      medium.fail(FailingMedium.Failure.WRITE, OwnJournal.TRIES);
      assertThatThrownBy(() -> exchange.take(lines(pad)))
          .isInstanceOfSatisfying(
              Fault.class, fault -> FaultSentence.holds("log-not-taken", fault, desktop));
      assertThat(exchange.holdings()).isEqualTo(Holdings.none());
      assertThat(exchange.take(lines(pad)).fresh()).isEqualTo(2);
    }
    give(desktop, pad);
    assertThat(LogState.of(pad)).isEqualTo(LogState.of(desktop));
  }

  @Test
  void while_what_was_typed_waits_in_memory_nothing_is_taken() throws Exception {
    add(pad, "Heron");
    FailingMedium medium = new FailingMedium();
    try (LogFolder log = LogFolder.open(desktop, machine(), medium)) {
      Exchange exchange = log.exchange();
      medium.fail(FailingMedium.Failure.WRITE, 2 * OwnJournal.TRIES);
      log.keep(named("Wren"));
      assertThatThrownBy(() -> exchange.take(lines(pad))).isInstanceOf(Fault.class);
      assertThatThrownBy(log::exchange).isInstanceOf(Fault.class);
      assertThat(log.exchange().take(lines(pad)).fresh()).isEqualTo(2);
    }
    give(pad, desktop);
    assertThat(LogState.rows(desktop, "SELECT name FROM rocket ORDER BY name"))
        .containsExactly("Heron", "Wren");
  }

  @Test
  void a_log_another_program_holds_takes_nothing(@TempDir Path temporary) throws Exception {
    add(pad, "Heron");
    try (LogFolder held = open(pad);
        LogFolder read = LogFolder.openOrRead(pad, machine(), temporary)) {
      assertThat(held.exchange().holdings().count()).isEqualTo(2);
      assertThatThrownBy(read::exchange)
          .isInstanceOfSatisfying(
              Fault.class, fault -> assertThat(fault.code()).isEqualTo("log-in-use"));
    }
  }

  private PretendMachine machine() {
    seed++;
    return new PretendMachine(seed, "machine", "boot-" + seed, WALL);
  }

  private LogFolder open(Path folder) throws Fault {
    return LogFolder.open(folder, machine());
  }

  private static Action named(String name) {
    return Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name));
  }

  private RecordId add(Path folder, String name) throws Fault {
    try (LogFolder log = open(folder)) {
      return log.save(named(name)).get(0);
    }
  }

  private void rename(Path folder, RecordId rocket, String name) throws Fault {
    try (LogFolder log = open(folder)) {
      log.save(Action.change("rename", Kind.ROCKET, rocket, Facts.none().with(Rocket.NAME, name)));
    }
  }

  private Device self(Path folder) throws Fault {
    try (LogFolder log = open(folder)) {
      return log.exchange().self();
    }
  }

  private int devices(Path folder) throws Fault {
    try (LogFolder log = open(folder)) {
      return log.exchange().devices().size();
    }
  }

  private List<String> lines(Path folder) throws Fault {
    try (LogFolder log = open(folder)) {
      List<String> lines = new ArrayList<>();
      for (var run : log.exchange().holdings().runs().entrySet()) {
        for (Span span : run.getValue()) {
          lines.addAll(log.exchange().lines(run.getKey(), span));
        }
      }
      return lines;
    }
  }

  private Exchange.Taken give(Path from, Path to) throws Fault {
    List<String> lines = lines(from);
    try (LogFolder log = open(to)) {
      return log.exchange().take(lines);
    }
  }

  private static List<Path> received(Path folder) throws IOException {
    return JournalFiles.in(folder.resolve(Opening.JOURNALS)).stream()
        .filter(file -> file.toString().contains(LogExchange.RECEIVED))
        .toList();
  }

  private static void deleteDatabase(Path folder) throws IOException {
    for (Path file : SetAside.files(folder)) {
      Files.delete(file);
    }
  }

  private static void forget(Path folder) throws IOException {
    deleteDatabase(folder);
    Files.delete(folder.resolve(DeviceFile.NAME));
  }
}
