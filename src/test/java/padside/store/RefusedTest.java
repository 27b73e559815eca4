package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.store.FailingMedium.Failure;

/** A medium that refuses what is kept: it waits in memory, is shown, and is written in the end. */
class RefusedTest {
  private static final int ALWAYS = 1_000_000;

  @TempDir Path folder;
  @TempDir Path temporary;
  @TempDir Path other;

  private long runs;
  private final FailingMedium medium = new FailingMedium();

  @Test
  void what_is_refused_waits_and_is_written_once_there_is_room() throws Exception {
    try (LogFolder log = open()) {
      assertThat(keep(log, "before").onMedium()).isTrue();
      medium.fail(Failure.WRITE, ALWAYS);
      LogFolder.Kept waiting = keep(log, "waiting");
      assertThat(waiting.onMedium()).isFalse();
      rename(log, waiting.records().get(0), "waiting, renamed");
      assertThat(names(log)).containsExactly("before", "waiting, renamed");
      LogFolder.Refusal refusal = log.refusal().orElseThrow();
      assertThat(refusal.changes()).isEqualTo(2);
      assertThat(refusal.fault().sentence()).contains("NOT SAVED", "No space left on device");
      assertThat(onMedium()).as("nothing of it in any journal").doesNotContain("waiting");

      log.tryAgain();
      assertThat(log.refusal()).as("still full").isPresent();
      medium.fail(Failure.WRITE, 0);
      log.tryAgain();
      assertThat(log.refusal()).isEmpty();
      assertThat(onMedium()).contains("waiting, renamed");
      assertThat(keep(log, "after").onMedium()).isTrue();
    }
    assertRebuilt("before", "waiting, renamed", "after");
  }

  @Test
  void the_next_that_can_be_written_takes_along_what_waits() throws Exception {
    try (LogFolder log = open()) {
      medium.fail(Failure.FORCE, ALWAYS);
      keep(log, "first");
      keep(log, "second");
      medium.fail(Failure.FORCE, 0);
      assertThat(keep(log, "third").onMedium()).isTrue();
      assertThat(log.refusal()).isEmpty();
    }
    assertRebuilt("first", "second", "third");
  }

  @Test
  void what_waits_outlives_a_database_that_fails_meanwhile() throws Exception {
    try (LogFolder log = open()) {
      keep(log, "before");
      medium.fail(Failure.WRITE, ALWAYS);
      keep(log, "waiting");
      JournalFailureTest.sever(log);
      keep(log, "also waiting");
      assertThat(names(log)).containsExactly("before", "waiting", "also waiting");
      medium.fail(Failure.WRITE, 0);
      log.tryAgain();
    }
    assertRebuilt("before", "waiting", "also waiting");
  }

  @Test
  void another_folder_keeps_what_waits_and_what_is_to_come() throws Exception {
    try (LogFolder log = open()) {
      keep(log, "before");
      medium.fail(Failure.WRITE, ALWAYS);
      keep(log, "waiting");
      medium.fail(Failure.WRITE, 0);
      log.keepIn(other);
      medium.fail(Failure.WRITE, OwnJournal.TRIES); // the log's own medium refuses again
      assertThat(keep(log, "to come").onMedium()).isTrue();
      assertThat(log.refusal().orElseThrow().elsewhere()).contains(other);
    }
    assertThat(text(other)).as("in journals of its own").contains("waiting", "to come");
    assertThat(onMedium()).doesNotContain("waiting");
  }

  @Test
  void closing_writes_nothing_half_and_says_what_is_lost() throws Exception {
    LogFolder log = open();
    keep(log, "before");
    medium.fail(Failure.WRITE, ALWAYS);
    keep(log, "lost");
    assertThatThrownBy(log::close).isInstanceOf(Fault.class).hasMessageContaining("NOT SAVED");
    medium.fail(Failure.WRITE, 0);
    assertRebuilt("before");
  }

  @Test
  void with_little_room_left_the_journal_goes_on_without_the_database() throws Exception {
    try (LogFolder log = open()) {
      keep(log, "before");
      medium.leaveRoom(100_000);
      assertThat(keep(log, "tight").onMedium()).isTrue();
      assertThat(keep(log, "tighter").onMedium()).isTrue();
      assertThat(names(log)).containsExactly("before", "tight", "tighter");
      assertThat(onMedium()).contains("tight", "tighter");
    }
    medium.leaveRoom(Long.MAX_VALUE);
    try (LogFolder log = open()) {
      assertThat(names(log)).containsExactly("before", "tight", "tighter");
    }
  }

  @Test
  void the_ballast_is_given_up_for_the_journal_and_said() throws Exception {
    try (LogFolder log = open()) {
      log.layBallast();
      assertThat(folder.resolve("ballast")).hasSize(Ballast.BYTES);
      medium.fail(Failure.WRITE, OwnJournal.TRIES);
      assertThat(keep(log, "kept").onMedium()).isTrue();
      assertThat(folder.resolve("ballast")).doesNotExist();
      assertThat(log.notices()).anyMatch(line -> line.contains("is full"));
    }
    assertRebuilt("kept");
  }

  @Test
  void what_is_told_later_stands_behind_what_was_told_before() throws Exception {
    try (LogFolder log = open()) {
      keep(log, "kept");
    }
    Files.delete(folder.resolve("padside.sqlite"));
    try (LogFolder log = open()) {
      log.layBallast();
      List<String> before = log.notices();
      assertThat(before).anyMatch(line -> line.contains("was built from"));
      medium.fail(Failure.WRITE, OwnJournal.TRIES);
      keep(log, "also kept");
      assertThat(log.notices()).startsWith(before.toArray(String[]::new));
      assertThat(log.notices().subList(before.size(), log.notices().size()))
          .singleElement()
          .satisfies(line -> assertThat(line).contains("is full"));
    }
  }

  @Test
  void a_log_another_program_writes_is_read_and_taken_over_once_it_is_free() throws Exception {
    List<String> acknowledged;
    try (SavingProgram writer = SavingProgram.start(folder)) {
      int before = writer.acknowledged(25).size();
      LogFolder reader = open();
      assertThat(reader.refusal().orElseThrow().reading()).isTrue();
      assertThat(reader.refusal().orElseThrow().fault().code()).isEqualTo("log-in-use");
      assertThat(reader.list(Kind.DAY)).hasSizeGreaterThanOrEqualTo(before / 10);
      assertThat(keep(reader, "typed meanwhile").onMedium()).isFalse();
      reader.tryAgain();
      assertThat(reader.refusal().orElseThrow().changes()).as("still held").isEqualTo(1);

      acknowledged = writer.kill();
      reader.tryAgain();
      assertThat(reader.refusal()).isEmpty();
      assertThat(names(reader)).containsExactly("typed meanwhile");
      assertHolds(reader, acknowledged);
      reader.close();
    }
    assertThat(temporary).as("no copy stays behind").isEmptyDirectory();
    try (LogFolder log = open()) {
      assertThat(names(log)).containsExactly("typed meanwhile");
      assertHolds(log, acknowledged);
    }
  }

  @Test
  void a_log_that_cannot_be_written_is_read() throws Exception {
    try (LogFolder log = open()) {
      keep(log, "kept");
    }
    Files.delete(folder.resolve("lock"));
    Files.createDirectory(folder.resolve("lock")); // stands for a medium that refuses the lock file
    try (LogFolder log = open()) {
      assertThat(log.refusal().orElseThrow().fault().code()).isEqualTo("log-folder");
      assertThat(names(log)).containsExactly("kept");
    }
    assertThat(temporary).isEmptyDirectory();
  }

  private static void assertHolds(LogFolder log, List<String> acknowledged) throws Fault {
    Map<RecordId, Long> counts = new HashMap<>();
    for (FlightLog.Stored day : log.list(Kind.DAY)) {
      counts.put(day.id(), (Long) day.facts().cells().get("note").value().orElseThrow());
    }
    for (String line : acknowledged) {
      String[] said = line.split(" ", 2);
      assertThat(counts.get(new RecordId(said[0]))).isGreaterThanOrEqualTo(Long.parseLong(said[1]));
    }
  }

  private LogFolder open() throws Fault {
    return LogFolder.openOrRead(folder, new PretendMachine(++runs), medium, temporary);
  }

  private static LogFolder.Kept keep(LogFolder log, String name) throws Fault {
    return log.keep(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name)));
  }

  private static void rename(LogFolder log, RecordId rocket, String name) throws Fault {
    log.keep(Action.change("rename", Kind.ROCKET, rocket, Facts.none().with(Rocket.NAME, name)));
  }

  private static List<String> names(LogFolder log) throws Fault {
    return log.list(Kind.ROCKET).stream()
        .map(rocket -> rocket.facts().get(Rocket.NAME).orElseThrow())
        .toList();
  }

  /** The text of all journals. */
  private String onMedium() throws Exception {
    return text(folder.resolve("journal"));
  }

  private static String text(Path journals) throws Exception {
    StringBuilder text = new StringBuilder();
    for (Path journal : JournalFiles.in(journals)) {
      text.append(Files.readString(journal));
    }
    return text.toString();
  }

  private void assertRebuilt(String... names) throws Exception {
    Files.delete(folder.resolve("padside.sqlite"));
    try (LogFolder log = open()) {
      assertThat(names(log)).containsExactly(names);
    }
  }
}
