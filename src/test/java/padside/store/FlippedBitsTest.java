package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Operation;

/**
 * Decay of the files of a log, closed in order or killed: it opens, and what it shows is what was
 * written; where something is lost that is told.
 */
class FlippedBitsTest {
  private static final int FLIPS = Trials.of("flips", 1000, 10_000);
  private static final int RECORDS = 60;

  @TempDir Path home;

  private final Map<RecordId, List<Facts>> written = new HashMap<>();
  private final Set<String> lines = new HashSet<>();
  private final Tally tally = new Tally();
  private Path closed;
  private Path killed;

  /** What came of all trials. */
  private static final class Tally {
    private final AtomicInteger whole = new AtomicInteger();
    private final AtomicInteger lost = new AtomicInteger();
    private final AtomicInteger unharmed = new AtomicInteger();
    private final AtomicInteger told = new AtomicInteger();
    private final Map<String, Integer> faults = new TreeMap<>();

    synchronized void fault(Fault fault) {
      faults.merge(fault.code(), 1, Integer::sum);
    }
  }

  /** The same records twice: written in two runs and closed; and left as by kill -9 in a third. */
  @BeforeEach
  void two_logs() throws Exception {
    closed = home.resolve("closed");
    killed = home.resolve("killed");
    Random random = Trials.random(0);
    for (int run = 1; run <= 2; run++) {
      try (LogFolder log = LogFolder.open(closed, new PretendMachine(run))) {
        write(log, random, RECORDS / 3);
      }
    }
    FolderCopy.of(closed, home.resolve("open"));
    try (LogFolder log = LogFolder.open(home.resolve("open"), new PretendMachine(3))) {
      write(log, random, RECORDS / 3);
      FolderCopy.of(home.resolve("open"), killed);
    }
    assertThat(Files.size(killed.resolve("padside.sqlite-wal"))).isPositive();
    Path look = FolderCopy.of(killed, home.resolve("look"));
    LogFolder.open(look, new PretendMachine(4)).close();
    lines.addAll(LogState.rows(look, "SELECT raw FROM op"));
  }

  private void write(LogFolder log, Random random, int records) throws Fault {
    List<RecordId> made = new ArrayList<>();
    for (int i = 0; i < records; i++) {
      Facts facts = facts(random);
      RecordId id = log.save(Action.create("add", Kind.FLIGHT, facts)).get(0);
      written.computeIfAbsent(id, any -> new ArrayList<>()).add(facts);
      made.add(id);
      RecordId other = made.get(random.nextInt(made.size()));
      Facts change = facts(random);
      log.save(Action.change("note", Kind.FLIGHT, other, change));
      written.get(other).add(change);
    }
  }

  private static Facts facts(Random random) {
    Facts facts = Facts.none();
    for (String field : List.of("note", "status", "motor", "rod_m")) {
      Object value = field.equals("rod_m") ? random.nextDouble() : "word " + random.nextLong();
      facts = facts.with(field, Facts.Cell.of(value, "typed " + random.nextLong()));
    }
    return facts;
  }

  @Test
  void what_is_shown_after_decay_was_written_and_what_is_lost_is_told() throws Exception {
    Trials.run(FLIPS, this::trial);
    Trials.say(
        ("%d logs decayed: %d records whole, %d lost and told; %d opened as if nothing had been,"
                + " %d told a repair, faults %s, 0 silently wrong")
            .formatted(
                FLIPS,
                tally.whole.get(),
                tally.lost.get(),
                tally.unharmed.get(),
                tally.told.get(),
                tally.faults));
    assertThat(tally.whole.get()).as("most is recovered").isGreaterThan(30 * FLIPS);
  }

  private void trial(int number, Random random) throws Exception {
    Path from = number % 2 == 0 ? closed : killed;
    Path folder = FolderCopy.of(from, home.resolve("trial" + number));
    List<String> damage = Damage.to(folder, random);
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(1000 + number))) {
      boolean told = !log.notices().isEmpty();
      (told ? tally.told : tally.unharmed).incrementAndGet();
      compare(log, told, from.equals(killed) ? RECORDS : RECORDS / 3 * 2, damage);
      Facts after = facts(random);
      RecordId id = log.save(Action.create("after", Kind.FLIGHT, after)).get(0);
      assertThat(log.find(Kind.FLIGHT, id).orElseThrow().facts().cells())
          .as("%s: saving goes on", damage)
          .isEqualTo(after.cells());
    } catch (Fault fault) {
      assertThat(fault.sentence()).as("%s", damage).isNotBlank();
      tally.fault(fault);
    }
    FolderCopy.delete(folder);
  }

  private void compare(LogFolder log, boolean told, int records, List<String> damage) throws Fault {
    int whole = 0;
    for (Stored flight : log.list(Kind.FLIGHT)) {
      List<Facts> ever = written.getOrDefault(flight.id(), List.of());
      assertThat(ever).as("%s: a record nobody made: %s", damage, flight).isNotEmpty();
      Facts now = ever.stream().reduce(Facts.none(), Facts::with);
      boolean same = flight.facts().cells().equals(now.cells());
      whole += same ? 1 : 0;
      assertThat(same || told).as("%s: silently %s", damage, flight.facts()).isTrue();
      flight.facts().cells().forEach((field, cell) -> wasWritten(ever, field, cell, damage));
      history(log, flight.id(), ever, damage);
    }
    assertThat(whole == records || told).as("%s: %d of %d", damage, whole, records).isTrue();
    tally.whole.addAndGet(whole);
    tally.lost.addAndGet(records - whole);
  }

  private static void history(
      LogFolder log, RecordId id, Collection<Facts> ever, List<String> damage) throws Fault {
    for (Operation operation : log.history(Kind.FLIGHT, id)) {
      for (Operation.Changed change : operation.changes()) {
        if (!change.after().equals(Facts.Cell.emptied()) && !change.field().equals("removed")) {
          wasWritten(ever, change.field(), change.after(), damage);
        }
      }
    }
  }

  private static void wasWritten(
      Collection<Facts> ever, String field, Facts.Cell cell, List<String> damage) {
    assertThat(ever.stream().map(facts -> facts.cells().get(field)))
        .as("%s: %s", damage, field)
        .contains(cell);
  }
}
