package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import padside.Trials;
import padside.fact.Fault;
import padside.flight.Kind;

/**
 * Power that fails while a program saves: what was written is replayed up to a moment, and what a
 * medium may then hold is opened. Every acknowledged save is there whole.
 */
class PowerCutTest {
  private static final int CUTS = Trials.of("cuts", 250, 2500);
  private static final int SAVES = 120;
  private static final int CONTROLS = 60;

  /** So many events in the folders are new, and the first saves are acknowledged. */
  private static final int BEGINNING = 300;

  @TempDir static Path recorded;
  @TempDir Path places;

  private static List<WriteRecord.Event> events = List.of();
  private static Path log;

  /** Two runs on one log, the first killed. */
  @BeforeAll
  static void record() throws Exception {
    assumeTrue(
        SavingProgram.canBeTraced(),
        "strace is not installed or may not trace here; power cuts are not tried");
    log = Files.createDirectory(recorded.toRealPath().resolve("log"));
    events = new ArrayList<>();
    for (int run = 1; run <= 2; run++) {
      Path trace = recorded.resolve("trace" + run);
      try (SavingProgram program =
          SavingProgram.startTraced(log, trace, "trace=" + WriteRecord.CALLS)) {
        program.acknowledged(SAVES);
      }
      events.addAll(WriteRecord.read(trace, log));
    }
    // Of each run strace may be killed before it has written down the last thing that was said.
    assertThat(events.stream().filter(WriteRecord.Said.class::isInstance).count())
        .isGreaterThanOrEqualTo(2 * (SAVES - 1));
  }

  @ParameterizedTest
  @EnumSource
  void no_acknowledged_save_is_lost_however_much_of_the_rest_is(PowerCut.Names model)
      throws Exception {
    AtomicLong acknowledged = new AtomicLong();
    AtomicLong told = new AtomicLong();
    Trials.run(
        CUTS,
        (number, random) -> {
          Path place = places.resolve("cut" + number);
          Acknowledged said = cut(events, model, place, random);
          try (LogFolder left = LogFolder.open(place, new PretendMachine(number))) {
            said.areIn(left.list(Kind.DAY), "cut " + number);
            acknowledged.addAndGet(said.records());
            told.addAndGet(left.notices().isEmpty() ? 0 : 1);
          }
          FolderCopy.delete(place);
        });
    Trials.say(
        "%d power cuts, names last %s: %d acknowledged records, 0 lost, %d repairs told"
            .formatted(CUTS, model, acknowledged.get(), told.get()));
  }

  /** The test bites: where nothing is ever forced, acknowledged saves are found lost. */
  @Test
  void without_forcing_saves_are_lost() throws Exception {
    List<WriteRecord.Event> unforced =
        events.stream().filter(event -> !(event instanceof WriteRecord.Forced)).toList();
    AtomicLong losing = new AtomicLong();
    Trials.run(
        CONTROLS,
        (number, random) -> {
          Path place = places.resolve("control" + number);
          Acknowledged said = cut(unforced, PowerCut.Names.WITH_THEIR_FILE, place, random);
          losing.addAndGet(isLost(said, place, number) ? 1 : 0);
          FolderCopy.delete(place);
        });
    Trials.say(
        "%d power cuts without forcing: %d lost acknowledged saves"
            .formatted(CONTROLS, losing.get()));
    assertThat(losing.get()).isGreaterThan(CONTROLS / 2);
  }

  private static boolean isLost(Acknowledged said, Path place, int number) {
    try (LogFolder left = LogFolder.open(place, new PretendMachine(number))) {
      return said.lost(left.list(Kind.DAY)) > 0;
    } catch (Fault fault) {
      return true;
    }
  }

  /** Lays down what one cut may leave; answers what had been acknowledged by then. */
  private static Acknowledged cut(
      List<WriteRecord.Event> all, PowerCut.Names model, Path place, Random random)
      throws Exception {
    PowerCut medium = new PowerCut(log, model);
    Acknowledged said = new Acknowledged();
    int most = random.nextInt(4) == 0 ? Math.min(BEGINNING, all.size()) : all.size();
    for (WriteRecord.Event event : all.subList(0, 1 + random.nextInt(most))) {
      medium.take(event);
      if (event instanceof WriteRecord.Said line) {
        said.note(line.line());
      }
    }
    medium.leave(place, random);
    return said;
  }
}
