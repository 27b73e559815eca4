package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;

/** Lines of several machines come together to one log, whatever the order they arrive in. */
class MergeTest {
  @TempDir Path pad;
  @TempDir Path desktop;

  private long rockets;

  @Test
  void whatever_the_order_the_same_log_comes_of_the_same_lines(@TempDir Path mixed)
      throws Exception {
    for (long seed = 1; seed <= 8; seed++) {
      Random random = new Random(seed);
      Path a = Files.createDirectory(mixed.resolve("a" + seed));
      Path b = Files.createDirectory(mixed.resolve("b" + seed));
      List<String> lines = edits(a, b, random);
      List<String> expected = List.of();
      for (int order = 0; order < 4; order++) {
        Path folder = mixed.resolve(seed + "-" + order);
        Collections.shuffle(lines, random);
        List<String> state = logOf(folder, lines, random);
        expected = order == 0 ? state : expected;
        assertThat(state).as("seed %d, order %d", seed, order).isEqualTo(expected);
        assertThat(LogState.rows(folder, "SELECT count(*) FROM op"))
            .containsExactly(String.valueOf(lines.stream().distinct().count()));
      }
    }
  }

  @Test
  void of_two_edits_that_had_not_seen_each_other_one_shows_and_both_stay() throws Exception {
    RecordId rocket = rocket();
    carry(pad, desktop);
    save(pad, 2, rename(rocket, "pad's name"));
    save(desktop, 3, rename(rocket, "desktop's name"));
    carry(pad, desktop);
    carry(desktop, pad);

    String heads = "SELECT value FROM head WHERE field = 'name' ORDER BY value";
    for (Path folder : List.of(pad, desktop)) {
      open(folder, 4).close();
      assertThat(LogState.rows(folder, heads))
          .containsExactly("\"desktop's name\"", "\"pad's name\"");
    }
    String runOfPad = new PretendMachine(2).freshRun();
    String runOfDesktop = new PretendMachine(3).freshRun();
    String shown = runOfPad.compareTo(runOfDesktop) > 0 ? "pad's name" : "desktop's name";
    assertThat(LogState.rows(pad, "SELECT name FROM rocket")).containsExactly(shown);
    assertThat(LogState.of(pad)).isEqualTo(LogState.of(desktop));
  }

  @Test
  void a_later_edit_that_has_seen_both_ends_the_conflict() throws Exception {
    RecordId rocket = rocket();
    carry(pad, desktop);
    save(pad, 2, rename(rocket, "one"));
    save(desktop, 3, rename(rocket, "other"));
    carry(desktop, pad);
    save(pad, 4, rename(rocket, "settled"));

    assertThat(LogState.rows(pad, "SELECT value FROM head WHERE field = 'name'"))
        .containsExactly("\"settled\"");
  }

  @Test
  void a_removal_does_not_hide_an_edit_it_had_not_seen() throws Exception {
    RecordId rocket = rocket();
    RecordId other = rocket();
    carry(pad, desktop);
    save(pad, 2, Action.remove("remove", Kind.ROCKET, rocket));
    save(pad, 5, Action.remove("remove", Kind.ROCKET, other));
    save(desktop, 3, rename(rocket, "mended"));
    carry(pad, desktop);
    carry(desktop, pad);

    for (Path folder : List.of(pad, desktop)) {
      open(folder, 4).close();
      assertThat(LogState.rows(folder, "SELECT id, name FROM rocket"))
          .containsExactly(rocket + "|mended");
      assertThat(LogState.rows(folder, "SELECT id FROM head WHERE field = 'removed'"))
          .as("both marks are kept")
          .hasSize(2);
    }
  }

  /** Random edits on two machines that now and then hear of each other; their journals' lines. */
  private static List<String> edits(Path a, Path b, Random random) throws Exception {
    List<RecordId> rockets = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Path folder = random.nextBoolean() ? a : b;
      try (LogFolder log = open(folder, random.nextLong())) {
        for (int j = 0; j < 6; j++) {
          rockets.addAll(log.save(edit(rockets, random)));
        }
      }
      if (random.nextInt(3) == 0) {
        carry(folder, folder == a ? b : a);
      }
    }
    List<String> lines = new ArrayList<>();
    for (Path folder : List.of(a, b)) {
      for (Path journal : JournalFiles.in(Files.createDirectories(folder.resolve("journal")))) {
        lines.addAll(Files.readAllLines(journal));
      }
    }
    return lines;
  }

  private static Action edit(List<RecordId> rockets, Random random) {
    if (rockets.isEmpty() || random.nextInt(3) == 0) {
      return Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, "new"));
    }
    RecordId rocket = rockets.get(random.nextInt(rockets.size()));
    return switch (random.nextInt(4)) {
      case 0 -> Action.remove("remove", Kind.ROCKET, rocket);
      case 1 -> Action.change("", Kind.ROCKET, rocket, Facts.none().with(Kind.REMOVED, false));
      default -> rename(rocket, "name " + random.nextInt(100));
    };
  }

  /** A log into which the lines came in that order, in several sittings. */
  private static List<String> logOf(Path folder, List<String> lines, Random random)
      throws Exception {
    Path journals = Files.createDirectories(folder.resolve("journal"));
    int at = 0;
    for (int sitting = 0; at < lines.size(); sitting++) {
      int end = Math.min(lines.size(), at + 1 + random.nextInt(lines.size()));
      Files.write(journals.resolve("part" + sitting + ".jsonl"), lines.subList(at, end));
      open(folder, sitting).close();
      at = end;
    }
    return LogState.of(folder);
  }

  private RecordId rocket() throws Fault {
    try (LogFolder log = open(pad, ++rockets * 100)) {
      return log.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, "x")))
          .get(0);
    }
  }

  private static Action rename(RecordId rocket, String name) {
    return Action.change("rename", Kind.ROCKET, rocket, Facts.none().with(Rocket.NAME, name));
  }

  private static void save(Path folder, long seed, Action action) throws Fault {
    try (LogFolder log = open(folder, seed)) {
      log.save(action);
    }
  }

  private static LogFolder open(Path folder, long seed) throws Fault {
    return LogFolder.open(folder, new PretendMachine(seed));
  }

  /** Copies the journals one folder has and the other lacks. */
  private static void carry(Path from, Path to) throws IOException, SQLException {
    Path journals = Files.createDirectories(to.resolve("journal"));
    for (Path journal : JournalFiles.in(from.resolve("journal"))) {
      Path there = journals.resolve(journal.getFileName());
      if (!Files.exists(there)) {
        Files.copy(journal, there);
      }
    }
  }
}
