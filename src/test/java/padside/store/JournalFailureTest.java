package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.store.FailingMedium.Failure;

/** A medium that fails while the journal is written. */
class JournalFailureTest {
  @TempDir Path folder;

  private final FailingMedium medium = new FailingMedium();

  @ParameterizedTest
  @EnumSource
  void a_failure_that_passes_costs_nothing(Failure failure) throws Exception {
    try (LogFolder log = open(1)) {
      save(log, "before");
      medium.fail(failure, 1);
      save(log, "during");
      save(log, "after");
      assertThat(names(log)).containsExactly("before", "during", "after");
    }
    assertThat(journals()).as("the file that failed is not written to again").hasSize(2);
    assertRebuilt("before", "during", "after");
  }

  @Test
  void a_log_that_is_filled_first_is_forced_once_when_it_is_closed() throws Exception {
    LogFolder log =
        LogFolder.open(folder, new PretendMachine(1), medium, OwnJournal.Forced.AT_THE_END);
    medium.fail(Failure.FORCE, 1);
    save(log, "first");
    save(log, "second");
    assertThat(names(log)).as("nothing is forced yet").containsExactly("first", "second");

    assertThatThrownBy(log::close)
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("log-not-kept", fault, folder));
    assertThat(journals()).hasSize(1);
    assertRebuilt("first", "second");
  }

  @ParameterizedTest
  @EnumSource
  void a_failure_that_stays_is_said_and_what_was_refused_is_not_shown(Failure failure)
      throws Exception {
    try (LogFolder log = open(1)) {
      save(log, "before");
      medium.fail(failure, 100);
      assertThatThrownBy(() -> save(log, "lost"))
          .isInstanceOfSatisfying(
              Fault.class, fault -> FaultSentence.holds("log-not-kept", fault, folder));
      assertThat(names(log)).containsExactly("before");
      medium.fail(failure, 0);
      save(log, "again");
      assertThat(names(log)).containsExactly("before", "again");
    }
    assertRebuilt("before", "again");
  }

  @ParameterizedTest
  @EnumSource
  void even_the_first_line_may_fail(Failure failure) throws Exception {
    try (LogFolder log = open(1)) {
      medium.fail(failure, 2);
      save(log, "first");
    }
    assertRebuilt("first");
    assertThat(LogState.rows(folder, "SELECT count(*) FROM op WHERE n = 0")).containsExactly("1");
  }

  @Test
  void a_line_that_stands_in_two_files_counts_once() throws Exception {
    medium.keepWhatFailed();
    try (LogFolder log = open(1)) {
      save(log, "before");
      medium.fail(Failure.FORCE, 1);
      save(log, "during");
    }
    assertThat(journals().stream().filter(text -> text.contains("during"))).hasSize(2);
    assertRebuilt("before", "during");
  }

  @Test
  void an_interrupted_thread_still_saves_and_stays_interrupted() throws Exception {
    try (LogFolder log = open(1)) {
      save(log, "before");
      Thread.currentThread().interrupt();
      save(log, "during");
      assertThat(Thread.interrupted()).isTrue();
      save(log, "after");
      assertThat(names(log)).containsExactly("before", "during", "after");
    }
    assertThat(journals()).hasSize(1);
  }

  @Test
  void a_database_lost_in_mid_session_is_built_again_unnoticed() throws Exception {
    try (LogFolder log = open(1)) {
      save(log, "before");
      sever(log);
      save(log, "after");
      sever(log);
      assertThat(names(log)).containsExactly("before", "after");
    }
  }

  @Test
  void a_text_too_long_for_the_log_is_refused_with_a_sentence() throws Exception {
    try (LogFolder log = open(1)) {
      assertThatThrownBy(() -> save(log, "x".repeat(20_001)))
          .isInstanceOfSatisfying(
              Fault.class, fault -> FaultSentence.holds("log-line", fault, folder));
      assertThat(names(log)).isEmpty();
    }
  }

  /** Closes the database under the log, as if SQLite had given up. */
  static void sever(LogFolder log) throws Exception {
    Field database = LogFolder.class.getDeclaredField("database");
    database.setAccessible(true);
    Field open = LogDatabase.class.getDeclaredField("open");
    open.setAccessible(true);
    Optional<?> opened = (Optional<?>) open.get(database.get(log));
    ((Opening.Opened) opened.orElseThrow()).database().close();
  }

  private LogFolder open(long seed) throws Fault {
    return LogFolder.open(folder, new PretendMachine(seed), medium);
  }

  private static void save(LogFolder log, String name) throws Fault {
    log.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name)));
  }

  private static List<String> names(LogFolder log) throws Fault {
    return log.list(Kind.ROCKET).stream()
        .map(rocket -> rocket.facts().get(Rocket.NAME).orElseThrow())
        .toList();
  }

  private List<String> journals() throws IOException {
    List<String> texts = new ArrayList<>();
    for (Path journal : JournalFiles.in(folder.resolve("journal"))) {
      texts.add(Files.readString(journal));
    }
    return texts;
  }

  private void assertRebuilt(String... names) throws Exception {
    List<String> before = LogState.of(folder);
    Files.delete(folder.resolve("padside.sqlite"));
    try (LogFolder log = open(2)) {
      assertThat(names(log)).containsExactly(names);
    }
    assertThat(LogState.of(folder)).isEqualTo(before);
  }
}
