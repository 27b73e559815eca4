package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Kind;

/** Who may use the folder, and what is made in it. */
class LockTest {
  @TempDir Path folder;

  @Test
  void a_second_opening_in_this_program_is_refused_and_the_first_goes_on() throws Fault {
    try (LogFolder log = open(1)) {
      assertThatThrownBy(() -> open(2))
          .isInstanceOfSatisfying(
              Fault.class, fault -> FaultSentence.holds("log-in-use-here", fault, folder));
      log.save(Action.create("", Kind.DAY, Facts.none()));
      assertThat(log.list(Kind.DAY)).hasSize(1);
    }
    open(2).close();
  }

  @Test
  void a_second_program_is_refused_and_told_who_holds_the_log() throws Exception {
    try (SavingProgram other = SavingProgram.start(folder)) {
      other.acknowledged(1);

      assertThatThrownBy(() -> open(2))
          .isInstanceOfSatisfying(
              Fault.class, fault -> FaultSentence.holds("log-in-use", fault, folder));
      assertThat(other.acknowledged(5)).as("it goes on").hasSizeGreaterThanOrEqualTo(5);
    }
    open(2).close();
  }

  @Test
  void a_folder_that_cannot_be_made_is_refused() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "in the way");

    assertThatThrownBy(() -> LogFolder.open(file.resolve("log"), new PretendMachine(1)))
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("log-folder", fault, folder));
  }

  @Test
  void nobody_but_the_owner_can_read_what_is_kept() throws Exception {
    Path log = folder.resolve("a/b");
    try (LogFolder open = LogFolder.open(log, new PretendMachine(1))) {
      open.save(Action.create("", Kind.DAY, Facts.none()));
      try (Stream<Path> made = Files.walk(folder.resolve("a"))) {
        assertThat(made.toList())
            .hasSizeGreaterThanOrEqualTo(6)
            .allSatisfy(
                path ->
                    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path)))
                        .as("%s", path)
                        .isEqualTo(Files.isDirectory(path) ? "rwx------" : "rw-------"));
      }
    }
  }

  @Test
  void reading_alone_leaves_no_journal() throws Exception {
    open(1).close();

    assertThat(JournalFiles.in(folder.resolve("journal"))).isEmpty();
  }

  @Test
  void a_folder_with_odd_letters_is_a_folder_like_others() throws Exception {
    Path odd = folder.resolve("what? 100% #1 ä");
    for (int seed = 1; seed < 3; seed++) {
      try (LogFolder log = LogFolder.open(odd, new PretendMachine(seed))) {
        log.save(Action.create("", Kind.DAY, Facts.none()));
        assertThat(log.list(Kind.DAY)).hasSize(seed);
      }
    }
    assertThat(odd.resolve("padside.sqlite")).exists();
  }

  private LogFolder open(long seed) throws Fault {
    return LogFolder.open(folder, new PretendMachine(seed));
  }
}
