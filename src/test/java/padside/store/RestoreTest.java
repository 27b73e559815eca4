package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;

/** What a backup brings back, and what it refuses. */
class RestoreTest {
  @TempDir Path place;

  private Path folder;
  private Path backup;
  private List<String> whole;

  @BeforeEach
  void a_backed_up_log_of_two_rockets() throws Exception {
    folder = place.resolve("log");
    backup = place.resolve("backups");
    save(1, "Lamplighter");
    save(2, "Stork");
    whole = LogState.of(folder);
    backUp();
  }

  @Test
  void a_deleted_log_comes_back_line_by_line() throws Exception {
    Map<String, String> before = journals();
    FolderCopy.delete(folder);

    assertThat(restore())
        .containsExactly(
            "The backup holds 4 lines, 0 flights.",
            "The log in " + folder + " is empty.",
            "Bringing 4 lines, 0 flights more.",
            "Read back: the log holds 4 lines, 0 flights.");
    assertThat(LogState.of(folder)).isEqualTo(whole);
    assertThat(journals()).as("byte for byte, under their own names").isEqualTo(before);
  }

  @Test
  void the_backups_folder_itself_and_one_snapshot_bring_everything_too() throws Exception {
    Path itself = backup.resolve("padside-backup");
    for (Path from : List.of(itself, itself.resolve("padside-2026-11-25-1.sqlite"))) {
      FolderCopy.delete(folder);
      restore(from, false, false);
      assertThat(LogState.of(folder)).isEqualTo(whole);
    }
  }

  @Test
  void a_dry_run_writes_nothing() throws Exception {
    FolderCopy.delete(folder);

    assertThat(restore(backup, true, false))
        .contains("To be brought: 4 lines, 0 flights more.")
        .noneMatch(said -> said.startsWith("Bringing"));
    assertThat(folder).doesNotExist();
  }

  @Test
  void a_log_that_has_all_of_it_is_left_as_it_is() throws Exception {
    Map<String, String> before = journals();

    assertThat(restore()).contains("The log holds every line of the backup.");
    assertThat(journals()).isEqualTo(before);
  }

  @Test
  void a_newer_log_is_not_overwritten() throws Exception {
    Files.delete(folder.resolve("journal").resolve(run(1) + ".jsonl"));
    Files.delete(folder.resolve("padside.sqlite"));
    save(3, "Heron");
    List<String> newer = LogState.of(folder);

    assertThatThrownBy(this::restore)
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("restore-newer", fault, folder));
    assertThat(LogState.of(folder)).isEqualTo(newer);
    assertThat(restore(backup, true, false))
        .anyMatch(said -> said.contains("holds 2 lines the backup lacks"))
        .contains("To be brought: 2 lines, 0 flights more.");
    assertThat(LogState.of(folder)).isEqualTo(newer);
  }

  @Test
  void what_the_log_lacks_is_added_to_a_newer_one() throws Exception {
    save(3, "Heron");
    List<String> all = LogState.of(folder);
    Files.delete(folder.resolve("journal").resolve(run(1) + ".jsonl"));
    Files.delete(folder.resolve("padside.sqlite"));
    Map<String, String> before = journals();

    assertThat(restore(backup, false, true)).contains("Bringing 2 lines, 0 flights more.");
    assertThat(LogState.of(folder)).isEqualTo(all);
    assertThat(journals()).containsAllEntriesOf(before);
  }

  @Test
  void the_log_of_another_machine_is_added() throws Exception {
    FolderCopy.delete(folder);
    save(9, "Ibis");

    assertThatThrownBy(this::restore).hasMessageContaining("2 lines the backup lacks");
    restore(backup, false, true);
    assertThat(LogState.rows(folder, "SELECT name FROM rocket ORDER BY name"))
        .containsExactly("Ibis", "Lamplighter", "Stork");
  }

  @Test
  void of_a_damaged_backup_what_is_whole_is_brought_and_the_rest_named() throws Exception {
    Path copies = backup.resolve("padside-backup");
    Files.delete(copies.resolve("padside-2026-11-25-1.sqlite"));
    Path journal = copies.resolve("journal").resolve(run(2) + ".jsonl");
    byte[] bytes = Files.readAllBytes(journal);
    bytes[bytes.length - 30] ^= 1;
    Files.write(journal, bytes);
    FolderCopy.delete(folder);

    List<String> told = new ArrayList<>();
    assertThat(Restore.into(folder, new PretendMachine(8), wanted(backup, false, false), told::add))
        .isFalse();
    assertThat(told)
        .contains("Bringing 3 lines, 0 flights more.")
        .last()
        .asString()
        .startsWith("Lost: a line about rocket " + run(2) + ".1 in journal " + run(2) + ".jsonl");
    assertThat(LogState.rows(folder, "SELECT name FROM rocket")).containsExactly("Lamplighter");
  }

  @Test
  void a_journal_damaged_in_the_backup_comes_from_its_snapshot() throws Exception {
    Path journal = backup.resolve("padside-backup/journal").resolve(run(2) + ".jsonl");
    byte[] bytes = Files.readAllBytes(journal);
    bytes[bytes.length - 30] ^= 1;
    Files.write(journal, bytes);
    FolderCopy.delete(folder);

    restore();
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  @Test
  void a_medium_that_refuses_takes_nothing_away() throws Exception {
    Files.delete(folder.resolve("journal").resolve(run(1) + ".jsonl"));
    Files.delete(folder.resolve("padside.sqlite"));
    Map<String, String> before = journals();
    FailingMedium medium = new FailingMedium();
    medium.fail(FailingMedium.Failure.SHORT_WRITE, 1);

    assertThatThrownBy(
            () ->
                new Restore(
                        folder,
                        new PretendMachine(8),
                        medium,
                        wanted(backup, false, false),
                        s -> {})
                    .run())
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("restore-failed", fault, folder));
    assertThat(journals()).isEqualTo(before);
    restore();
    assertThat(LogState.of(folder)).isEqualTo(whole);
  }

  /** Whatever becomes of the log, the backup brings back what it held, to the last cell. */
  @Test
  void any_log_comes_back_from_its_backup() throws Exception {
    int trials = Trials.of("restores", 12, 200);
    for (int trial = 1; trial <= trials; trial++) {
      Random random = Trials.random(trial);
      FolderCopy.delete(folder);
      FolderCopy.delete(backup);
      for (int run = 0; run < 1 + random.nextInt(4); run++) {
        randomRun(random);
      }
      List<String> before = LogState.of(folder);
      backUp();
      String harm = harm(random);

      List<String> told = restore();
      assertThat(LogState.of(folder)).as("trial %d: %s; %s", trial, harm, told).isEqualTo(before);
      Files.delete(folder.resolve("padside.sqlite"));
      LogFolder.open(folder, new PretendMachine(6)).close();
      assertThat(LogState.of(folder)).as("from the journals alone").isEqualTo(before);
    }
    Trials.say(trials + " logs harmed and brought back");
  }

  private String harm(Random random) throws IOException {
    if (random.nextInt(3) == 0) {
      FolderCopy.delete(folder);
      return "deleted";
    }
    if (random.nextBoolean()) {
      Files.delete(folder.resolve("padside.sqlite"));
    }
    List<String> harm = new ArrayList<>();
    for (int i = 0; i < 3 && Files.exists(folder.resolve("padside.sqlite")); i++) {
      harm.addAll(Damage.to(folder, random));
    }
    for (Path journal : JournalFiles.in(folder.resolve("journal"))) {
      if (random.nextInt(3) == 0) {
        Files.delete(journal);
        harm.add("no " + journal.getFileName());
      }
    }
    return String.join(", ", harm);
  }

  private void randomRun(Random random) throws Fault {
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(random.nextLong()))) {
      List<RecordId> rockets = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(8); i++) {
        Facts named = Facts.none().with(Rocket.NAME, "Rocket " + random.nextInt(99));
        if (rockets.isEmpty() || random.nextBoolean()) {
          rockets.addAll(log.save(Action.create("add", Kind.ROCKET, named)));
        } else {
          RecordId rocket = rockets.get(random.nextInt(rockets.size()));
          log.save(Action.change("edit", Kind.ROCKET, rocket, named));
        }
      }
    }
  }

  private Restore.Wanted wanted(Path from, boolean dry, boolean add) {
    return new Restore.Wanted(from, dry, add);
  }

  private List<String> restore() throws Fault {
    return restore(backup, false, false);
  }

  private List<String> restore(Path from, boolean dry, boolean add) throws Fault {
    List<String> told = new ArrayList<>();
    assertThat(Restore.into(folder, new PretendMachine(8), wanted(from, dry, add), told::add))
        .as("%s", told)
        .isTrue();
    return told;
  }

  private void backUp() throws Fault {
    Backup.of(
        folder, new PretendMachine(8), List.of(new Backup.Target(Backup.beside(folder), true)));
  }

  private Map<String, String> journals() throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder.resolve("journal"))) {
      for (Path file : files.toList()) {
        texts.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return texts;
  }

  private static String run(long seed) {
    return new PretendMachine(seed).freshRun();
  }

  private void save(long seed, String name) throws Fault {
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(seed))) {
      log.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name)));
    }
  }
}
