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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;

/** What a backup holds, when it is written anew, and what becomes of it when something is wrong. */
class BackupTest {
  @TempDir Path place;

  private Path folder;
  private Path backup;

  @BeforeEach
  void two_rockets_in_two_runs() throws Exception {
    folder = place.resolve("log");
    backup = place.resolve("backups/padside-backup");
    save(1, "Lamplighter");
    save(2, "Stork");
  }

  @Test
  void journals_and_a_snapshot_of_the_same_rows_are_there_afterwards() throws Exception {
    Backup.Kept kept = own();

    assertThat(kept)
        .isEqualTo(
            new Backup.Kept(backup, kept.snapshot(), 4, true, true, List.of(), Optional.empty()));
    assertThat(kept.snapshot()).contains("padside-2026-11-25-1.sqlite");
    assertThat(journals(backup)).isEqualTo(journals(folder));
    assertThat(asLog(kept)).isEqualTo(LogState.of(folder));
  }

  @Test
  void an_unchanged_log_is_not_backed_up_again() throws Exception {
    own();
    Map<String, Integer> before = files();

    assertThat(quick().changed()).isFalse();
    assertThat(own().changed()).isFalse();
    assertThat(files()).isEqualTo(before);
    save(3, "Heron");
    assertThat(quick()).matches(kept -> kept.changed() && kept.lines() == 6);
    assertThat(files()).containsAllEntriesOf(before).hasSize(before.size() + 2);
  }

  @Test
  void a_journal_that_went_on_is_written_in_place_of_its_beginning() throws Exception {
    Path journal = folder.resolve("journal").resolve(run(2) + ".jsonl");
    byte[] whole = Files.readAllBytes(journal);
    Files.write(journal, Arrays.copyOf(whole, firstLine(whole)));
    own();
    Files.write(journal, whole);

    own();
    assertThat(journals(backup)).isEqualTo(journals(folder));
  }

  @Test
  void a_journal_that_differs_is_kept_and_the_logs_put_beside_it() throws Exception {
    own();
    Path copy = backup.resolve("journal").resolve(run(1) + ".jsonl");
    flip(copy, 80);
    byte[] damaged = Files.readAllBytes(copy);

    Backup.Kept kept = own();
    assertThat(kept.fault()).isEmpty();
    assertThat(kept.told())
        .containsExactly(
            "Journal "
                + run(1)
                + ".jsonl in "
                + copy.getParent()
                + " is not the log's; it was left as it is, and the log's is beside it as "
                + run(1)
                + "-differs-1.jsonl.");
    assertThat(copy).hasBinaryContent(damaged);
    assertThat(own()).matches(again -> !again.changed() && again.told().isEmpty());
  }

  @Test
  void a_journal_cut_short_in_the_log_stays_long_in_the_backup() throws Exception {
    own();
    Map<String, Integer> before = journals(backup);
    Path journal = folder.resolve("journal").resolve(run(2) + ".jsonl");
    byte[] bytes = Files.readAllBytes(journal);
    Files.write(journal, Arrays.copyOf(bytes, firstLine(bytes)));

    Backup.Result result = backUp(false);
    assertThat(result.remark()).hasValueSatisfying(said -> assertThat(said).contains("doctor"));
    assertThat(result.places().get(0).whole()).as("the database has the line").isTrue();
    assertThat(journals(backup)).isEqualTo(before);
  }

  @Test
  void a_log_that_lost_something_takes_the_place_of_no_whole_snapshot() throws Exception {
    for (int i = 0; i < 9; i++) {
      save(10 + i, "Heron " + i);
      own();
    }
    List<String> whole = snapshots();
    assertThat(whole).hasSize(7);
    Files.delete(folder.resolve("padside.sqlite"));
    flip(folder.resolve("journal").resolve(run(2) + ".jsonl"), -20);

    Backup.Result result = backUp(false);
    assertThat(result.remark()).isPresent();
    Backup.Kept kept = result.places().get(0);
    assertThat(kept.snapshot()).contains("padside-2026-11-25-10-partial.sqlite");
    assertThat(kept.told())
        .anyMatch(said -> said.contains("holds 1 lines the log lacks, and keeps them"));
    assertThat(snapshots()).containsAll(whole).hasSize(8);
  }

  @Test
  void the_backup_of_another_log_is_left_alone() throws Exception {
    own();
    Map<String, Integer> before = files();
    FolderCopy.delete(folder);
    save(9, "Ibis");

    assertFault("backup-of-another", own());
    assertThat(files()).isEqualTo(before);
  }

  @Test
  void a_snapshot_that_rotted_is_written_anew() throws Exception {
    Path rotten = backup.resolve(own().snapshot().orElseThrow());
    byte[] bytes = Files.readAllBytes(rotten);
    Arrays.fill(bytes, 8192, 12288, (byte) 7);
    Files.write(rotten, bytes);

    Backup.Kept kept = own();
    assertThat(kept.snapshot()).contains("padside-2026-11-25-2.sqlite");
    assertThat(kept.fault()).isEmpty();
    assertThat(asLog(kept)).isEqualTo(LogState.of(folder));
  }

  @Test
  void a_second_medium_that_is_missing_is_told_and_the_first_stands() throws Exception {
    Path missing = place.resolve("stick");
    List<Backup.Kept> kept =
        Backup.of(
                folder,
                new PretendMachine(8),
                List.of(ownTarget(), new Backup.Target(missing, false)))
            .places();

    assertThat(kept.get(0).fault()).isEmpty();
    assertFault("backup-missing", kept.get(1));
    assertThat(missing).doesNotExist();
  }

  @Test
  void a_medium_that_fails_keeps_what_was_there_and_nothing_half() throws Exception {
    own();
    Map<String, Integer> before = files();
    save(3, "Heron");
    for (FailingMedium.Failure failure : FailingMedium.Failure.values()) {
      FailingMedium medium = new FailingMedium();
      medium.fail(failure, 1);

      Backup.Kept kept =
          new Backup(folder, new PretendMachine(8), medium)
              .keep(List.of(ownTarget()), false)
              .places()
              .get(0);
      assertFault("backup-failed", kept);
      assertThat(files()).as("%s", failure).isEqualTo(before);
    }
    assertThat(own().fault()).isEmpty();
  }

  @Test
  @EnabledIf("padside.store.SmallMedium#canBeMounted")
  void a_full_second_medium_is_told_and_keeps_what_it_has() throws Exception {
    Path stick = Files.createDirectories(place.resolve("stick"));
    try (SmallMedium medium = SmallMedium.inMemory(stick)) {
      backup = stick.resolve("padside-backup");
      Backup.Target target = new Backup.Target(stick, false);
      assertThat(to(target).fault()).isEmpty();
      medium.fill();
      Map<String, Integer> before = files();
      save(3, "Heron");

      assertFault("backup-failed", to(target));
      assertThat(files()).isEqualTo(before);
    }
  }

  @Test
  @EnabledIf("padside.store.SmallMedium#canBeMounted")
  void a_second_medium_that_cannot_be_written_is_told() throws Exception {
    Path stick = Files.createDirectories(place.resolve("stick"));
    try (SmallMedium medium = SmallMedium.ext4(place.resolve("image"), stick)) {
      medium.abort();

      Backup.Kept kept = to(new Backup.Target(stick, false));
      assertThat(kept.fault())
          .hasValueSatisfying(fault -> assertThat(fault.code()).isEqualTo("backup-failed"));
      assertThat(kept.fault().orElseThrow().sentence()).contains("ead-only file system");
    }
  }

  @Test
  void a_log_that_is_open_is_not_backed_up() throws Exception {
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(5))) {
      assertThat(log.list(Kind.ROCKET)).hasSize(2);
      assertThatThrownBy(this::own).hasMessageContaining("in use");
    }
    assertThat(backup).doesNotExist();
  }

  @Test
  void an_empty_log_is_not_backed_up() throws Exception {
    FolderCopy.delete(folder);
    LogFolder.open(folder, new PretendMachine(1)).close();

    assertThatThrownBy(this::own)
        .isInstanceOfSatisfying(
            Fault.class, fault -> FaultSentence.holds("backup-empty", fault, folder));
  }

  @Test
  void the_newest_seven_and_the_newest_of_twelve_months_stay() {
    List<Snapshot> all =
        Stream.iterate(LocalDate.of(2024, 1, 15), date -> date.plusDays(10))
            .limit(80)
            .map(date -> "padside-" + date + "-" + (date.toEpochDay() - 19_700) + ".sqlite")
            .map(name -> Snapshot.of(Path.of(name)).orElseThrow())
            .sorted((a, b) -> Long.compare(b.number(), a.number()))
            .toList();
    List<Snapshot> left = new ArrayList<>(all);
    left.removeAll(Snapshot.superfluous(all));

    // 15 Jan 2024 and 79 times ten days is 15 Mar 2026; the rest counted on a calendar by hand.
    assertThat(left)
        .extracting(each -> each.name().substring(8, 18))
        .containsExactly(
            "2026-03-15",
            "2026-03-05",
            "2026-02-23",
            "2026-02-13",
            "2026-02-03",
            "2026-01-24",
            "2026-01-14",
            "2025-12-25",
            "2025-11-25",
            "2025-10-26",
            "2025-09-26",
            "2025-08-27",
            "2025-07-28",
            "2025-06-28",
            "2025-05-29",
            "2025-04-29");
    assertThat(Snapshot.superfluous(left)).isEmpty();
  }

  @Test
  void a_clock_that_went_back_does_not_make_the_newest_old() throws Exception {
    Files.createDirectories(backup);
    Files.createFile(backup.resolve("padside-2099-01-01-41.sqlite"));

    assertThat(own().snapshot()).contains("padside-2026-11-25-42.sqlite");
  }

  @Test
  void backups_lie_beside_the_log() {
    assertThat(Backup.beside(Path.of("/data/padside/log"))).hasToString("/data/padside/backups");
    assertThat(Backup.beside(Path.of("/data/club"))).hasToString("/data/club-backups");
  }

  private void assertFault(String code, Backup.Kept kept) {
    assertThat(kept.fault()).as("%s", kept).isPresent();
    FaultSentence.holds(code, kept.fault().orElseThrow(), kept.place().getParent());
  }

  private Backup.Target ownTarget() {
    return new Backup.Target(Backup.beside(folder), true);
  }

  private Backup.Kept own() throws Fault {
    return backUp(false).places().get(0);
  }

  private Backup.Kept quick() throws Fault {
    return Backup.ofWhatChanged(folder, new PretendMachine(8), List.of(ownTarget()))
        .places()
        .get(0);
  }

  private Backup.Kept to(Backup.Target target) throws Fault {
    return Backup.of(folder, new PretendMachine(8), List.of(target)).places().get(0);
  }

  private Backup.Result backUp(boolean quick) throws Fault {
    return new Backup(folder, new PretendMachine(8), new Medium())
        .keep(List.of(ownTarget()), quick);
  }

  /** What the snapshot shows as the database of a log without journals. */
  private List<String> asLog(Backup.Kept kept) throws Exception {
    Path other = Files.createDirectories(Files.createTempDirectory(place, "other"));
    Files.copy(backup.resolve(kept.snapshot().orElseThrow()), other.resolve("padside.sqlite"));
    return LogState.of(other);
  }

  private List<String> snapshots() throws IOException {
    return Snapshot.in(backup).stream().map(Snapshot::name).toList();
  }

  /** Every file in the backup with a sum over its bytes. */
  private Map<String, Integer> files() throws IOException {
    return sums(backup);
  }

  private static Map<String, Integer> journals(Path of) throws IOException {
    return sums(of.resolve("journal"));
  }

  private static Map<String, Integer> sums(Path of) throws IOException {
    Map<String, Integer> sums = new TreeMap<>();
    try (Stream<Path> files = Files.walk(of)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        sums.put(of.relativize(file).toString(), Arrays.hashCode(Files.readAllBytes(file)));
      }
    }
    return sums;
  }

  private static void flip(Path file, int at) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[at < 0 ? bytes.length + at : at] ^= 1;
    Files.write(file, bytes, StandardOpenOption.TRUNCATE_EXISTING);
  }

  private static int firstLine(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1).indexOf('\n') + 1;
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
