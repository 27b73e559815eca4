package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Operation;
import padside.flight.Rocket;

/** What the log tells of a record's past, and that any of it can be taken back. */
class HistoryTest {
  @TempDir Path folder;
  @TempDir Path other;

  private static LogFolder open(Path folder, long seed) throws Fault {
    return LogFolder.open(folder, new PretendMachine(seed));
  }

  private static Facts note(String text) {
    return Facts.none().with(Flight.NOTE, text, text);
  }

  private static Action change(RecordId flight, Facts facts) {
    return Action.change("change", Kind.FLIGHT, flight, facts);
  }

  private static Facts facts(LogFolder log, Kind kind, RecordId id) throws Fault {
    return filled(log.find(kind, id).orElseThrow().facts());
  }

  /** An emptied cell says what an absent one says. */
  private static Facts filled(Facts facts) {
    Map<String, Facts.Cell> cells = new LinkedHashMap<>(facts.cells());
    cells.values().removeIf(Facts.Cell.emptied()::equals);
    return new Facts(cells);
  }

  private static Operation newest(LogFolder log, Kind kind, RecordId id) throws Fault {
    List<Operation> history = log.history(kind, id);
    return history.get(history.size() - 1);
  }

  @Test
  void an_operation_says_what_when_where_and_every_cell_before_and_after() throws Exception {
    try (LogFolder log = open(folder, 1)) {
      RecordId flight = log.save(Action.create("draft card", Kind.FLIGHT, note("one"))).get(0);
      log.save(change(flight, note("two")));
      List<Operation> history = log.history(Kind.FLIGHT, flight);

      assertThat(history).extracting(Operation::label).containsExactly("draft card", "change");
      assertThat(history).extracting(Operation::machine).containsOnly("bench");
      assertThat(history.get(0).when()).isBefore(history.get(1).when());
      assertThat(history.get(1).when()).isAfter(Instant.ofEpochMilli(1_795_601_335_000L));
      Operation.Changed cell = history.get(1).changes().get(0);
      assertThat(cell.before()).isEqualTo(Facts.Cell.of("one", "one"));
      assertThat(cell.after()).isEqualTo(Facts.Cell.of("two", "two"));
      assertThat(cell.now()).isEqualTo(cell.after());
      assertThat(history.get(0).made(flight)).isTrue();
      assertThat(history.get(1).made(flight)).isFalse();
    }
  }

  @Test
  void what_was_done_to_several_records_is_taken_back_whole() throws Exception {
    try (LogFolder log = open(folder, 1)) {
      RecordId flight = log.save(Action.create("keep card", Kind.FLIGHT, note("x"))).get(0);
      Facts flown = Facts.none().with(Flight.STATUS, Flight.Status.FLOWN);
      List<RecordId> ids =
          log.save(
              Action.change("keep debrief", Kind.FLIGHT, flight, flown)
                  .and(Action.create("", Kind.FIX, Facts.none().with(Fix.TEXT, "reglue"))));

      log.save(newest(log, Kind.FLIGHT, flight).undoing().action());
      assertThat(facts(log, Kind.FLIGHT, flight)).isEqualTo(note("x"));
      assertThat(log.list(Kind.FIX)).isEmpty();
      assertThat(log.removed(Kind.FIX)).extracting(each -> each.id()).containsExactly(ids.get(1));

      Operation undo = newest(log, Kind.FIX, ids.get(1));
      assertThat(undo.label()).isEqualTo("undo: keep debrief");
      log.save(undo.undoing().action());
      assertThat(newest(log, Kind.FLIGHT, flight).label()).isEqualTo("redo: keep debrief");
      assertThat(facts(log, Kind.FLIGHT, flight)).isEqualTo(note("x").with(flown));
      assertThat(log.list(Kind.FIX)).hasSize(1);
    }
  }

  @Test
  void a_record_made_is_removed_by_undo_and_one_removed_comes_back() throws Exception {
    try (LogFolder log = open(folder, 1)) {
      Action add = Action.create("add rocket", Kind.ROCKET, Facts.none());
      RecordId rocket = log.save(add).get(0);
      log.save(newest(log, Kind.ROCKET, rocket).undoing().action());
      assertThat(log.list(Kind.ROCKET)).isEmpty();
      log.save(newest(log, Kind.ROCKET, rocket).undoing().action());
      assertThat(log.list(Kind.ROCKET)).hasSize(1);

      log.save(Action.remove("remove rocket", Kind.ROCKET, rocket));
      assertThat(log.removed(Kind.ROCKET)).hasSize(1);
      log.save(newest(log, Kind.ROCKET, rocket).undoing().action());
      assertThat(log.list(Kind.ROCKET)).hasSize(1);
      assertThat(log.removed(Kind.ROCKET)).isEmpty();
    }
  }

  // Property: over random edits, undoing any operation and then undoing the undo leaves every fact
  // as it was; undoing an older one moves no cell that was written after it.
  @Test
  void undo_then_redo_gives_identical_facts_and_older_undo_leaves_newer_cells_alone()
      throws Exception {
    for (long seed = 1; seed <= 12; seed++) {
      Random random = new Random(seed);
      Path here = Files.createDirectory(folder.resolve("p" + seed));
      try (LogFolder log = open(here, seed)) {
        RecordId rocket = log.save(Action.create("add", Kind.ROCKET, random(random))).get(0);
        for (int i = 0; i < 12; i++) {
          log.save(Action.change("edit", Kind.ROCKET, rocket, random(random)));
        }
        for (int i = 0; i < 20; i++) {
          undoneAndRedone(log, rocket, random, "seed " + seed + ", step " + i);
        }
      }
    }
  }

  private static Facts random(Random random) {
    Facts facts = Facts.none();
    for (String field : List.of("name", "note", "flier", "of_tomorrow")) {
      if (random.nextInt(3) == 0) {
        facts = facts.with(field, Facts.Cell.of("v" + random.nextInt(4), "t"));
      }
    }
    return facts.isEmpty() ? facts.with(Rocket.NAME, "only") : facts;
  }

  private static void undoneAndRedone(LogFolder log, RecordId rocket, Random random, String when)
      throws Fault {
    List<Operation> history = log.history(Kind.ROCKET, rocket);
    Operation old = history.get(random.nextInt(history.size()));
    Facts before = facts(log, Kind.ROCKET, rocket);
    Operation.Undoing undoing = old.undoing();
    if (undoing.doesNothing()) {
      return;
    }
    log.save(undoing.action());
    Facts undone = facts(log, Kind.ROCKET, rocket);
    for (Operation.Changed left : undoing.left()) {
      assertThat(undone.cells().get(left.field()))
          .as(when)
          .isEqualTo(before.cells().get(left.field()));
    }
    Operation undo = newest(log, Kind.ROCKET, rocket);
    assertThat(Operation.takenBack(log.history(Kind.ROCKET, rocket)).get(old.id()))
        .as(when)
        .isNotNull();
    log.save(undo.undoing().action());
    assertThat(facts(log, Kind.ROCKET, rocket)).as(when).isEqualTo(before);
  }

  @Test
  void what_another_machine_wrote_not_knowing_of_it_comes_forth_when_it_is_undone()
      throws Exception {
    RecordId rocket;
    try (LogFolder log = open(folder, 1)) {
      rocket =
          log.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, "first")))
              .get(0);
    }
    carry(folder, other);
    renamed(folder, 2, rocket, "here");
    renamed(other, 3, rocket, "there");
    carry(other, folder);

    try (LogFolder log = open(folder, 4)) {
      String shown = (String) facts(log, Kind.ROCKET, rocket).cells().get("name").value().get();
      String hidden = shown.equals("here") ? "there" : "here";
      List<Operation> history = log.history(Kind.ROCKET, rocket);
      assertThat(history).hasSize(3);
      Operation winner = wrote(history, shown);
      Operation loser = wrote(history, hidden);

      assertThat(loser.changes().get(0).before()).isEqualTo(Facts.Cell.of("first"));
      assertThat(loser.undoing().doesNothing()).as("something else shows").isTrue();
      assertThat(loser.undoing().left()).hasSize(1);

      log.save(winner.undoing().action());
      assertThat(facts(log, Kind.ROCKET, rocket).get(Rocket.NAME)).contains(hidden);
      log.save(newest(log, Kind.ROCKET, rocket).undoing().action());
      assertThat(facts(log, Kind.ROCKET, rocket).get(Rocket.NAME)).contains(shown);
    }
  }

  private static Operation wrote(List<Operation> history, String name) {
    return history.stream()
        .filter(
            done ->
                done.changes().stream().anyMatch(c -> c.after().value().equals(Optional.of(name))))
        .findFirst()
        .orElseThrow();
  }

  private static void renamed(Path folder, long seed, RecordId rocket, String name) throws Fault {
    try (LogFolder log = open(folder, seed)) {
      log.save(Action.change("rename", Kind.ROCKET, rocket, Facts.none().with(Rocket.NAME, name)));
    }
  }

  private static void carry(Path from, Path to) throws Exception {
    Path journals = Files.createDirectories(to.resolve("journal"));
    for (Path journal : JournalFiles.in(from.resolve("journal"))) {
      Path there = journals.resolve(journal.getFileName());
      if (!Files.exists(there)) {
        Files.copy(journal, there);
      }
    }
  }

  @Test
  void history_is_the_same_from_a_log_built_anew() throws Exception {
    RecordId flight;
    List<Operation> before = new ArrayList<>();
    try (LogFolder log = open(folder, 1)) {
      flight = log.save(Action.create("draft card", Kind.FLIGHT, note("one"))).get(0);
      log.save(change(flight, note("two")));
      log.save(newest(log, Kind.FLIGHT, flight).undoing().action());
      before.addAll(log.history(Kind.FLIGHT, flight));
    }
    Files.delete(folder.resolve("padside.sqlite"));
    try (LogFolder log = open(folder, 2)) {
      assertThat(log.history(Kind.FLIGHT, flight)).isEqualTo(before).hasSize(3);
    }
  }

  @Test
  void a_record_nobody_knows_has_no_history() throws Exception {
    try (LogFolder log = open(folder, 1)) {
      assertThat(log.history(Kind.FLIGHT, new RecordId("table.C6"))).isEmpty();
      assertThat(log.history(Kind.FLIGHT, new RecordId("nothing"))).isEmpty();
    }
  }
}
