package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;

/**
 * A first exchange that is cut off. Until it ends nothing but the journal and the mark at its
 * beginning was forced onto the medium, so of every page of the database the old, the new or
 * nothing may be there after a power cut.
 */
class FirstExchangeCutTest {
  private static final int CUTS = Integer.getInteger("padside.cuts", 25);
  private static final long SEED = 20;
  private static final int PAGE = 4096;
  private static final int BATCH = 20;

  @TempDir Path place;
  private List<String> lines;
  private List<String> state;

  @BeforeEach
  void fill() throws Exception {
    Path pad = place.resolve("pad");
    try (LogFolder log = LogFolder.open(pad, new PretendMachine(1))) {
      SeasonOfFlights.save(log, 60);
      lines =
          new ArrayList<>(
              log.exchange().holdings().runs().entrySet().stream()
                  .flatMap(
                      run -> run.getValue().stream().map(span -> read(log, run.getKey(), span)))
                  .flatMap(List::stream)
                  .toList());
    }
    state = LogState.of(pad);
  }

  private static List<String> read(LogFolder log, String run, Holdings.Span span) {
    try {
      return log.exchange().lines(run, span);
    } catch (Fault e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void no_line_that_was_taken_is_lost_whatever_of_the_database_is_on_the_medium() throws Exception {
    Random random = new Random(SEED);
    for (int cut = 0; cut < CUTS; cut++) {
      Path log = place.resolve("cut-" + cut);
      int taken = cutOff(log, random);
      try (LogFolder opened = LogFolder.open(log, new PretendMachine(random.nextLong()))) {
        assertThat(opened.exchange().holdings().count())
            .as("seed %d, cut %d", SEED, cut)
            .isEqualTo(taken);
        opened.exchange().take(lines);
      }
      assertThat(LogState.of(log)).as("seed %d, cut %d", SEED, cut).isEqualTo(state);
      FolderCopy.delete(log);
    }
  }

  @Test
  void what_is_typed_while_it_goes_on_is_kept() throws Exception {
    Path log = place.resolve("desktop");
    Path killed = place.resolve("killed");
    try (LogFolder open = LogFolder.open(log, new PretendMachine(2))) {
      open.exchange().take(lines.subList(0, BATCH));
      open.save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, "Gooseberry")));
      open.exchange().take(lines.subList(BATCH, lines.size()));
      FolderCopy.of(log, killed);
      open.exchange().settle();
    }
    for (Path each : List.of(log, killed)) {
      LogFolder.open(each, new PretendMachine(3)).close();
      assertThat(LogState.rows(each, "SELECT count(*) FROM rocket WHERE name = 'Gooseberry'"))
          .containsExactly("1");
      assertThat(LogState.rows(each, "SELECT count(*) FROM meta WHERE key = 'unfilled'"))
          .containsExactly("0");
      assertThat(LogState.rows(each, "PRAGMA journal_mode")).containsExactly("wal");
    }
    assertThat(LogState.of(killed)).isEqualTo(LogState.of(log));
  }

  /** Leaves a folder as a cut may; answers how many lines were acknowledged. */
  private int cutOff(Path folder, Random random) throws IOException, Fault {
    Path desktop = place.resolve("desktop-" + folder.getFileName());
    FailingMedium medium = new FailingMedium();
    byte[] before;
    int taken;
    try (LogFolder log = LogFolder.open(desktop, new PretendMachine(2), medium)) {
      Exchange exchange = log.exchange();
      medium.fail(FailingMedium.Failure.WRITE, OwnJournal.TRIES);
      assertThatThrownBy(() -> exchange.take(lines)).isInstanceOf(Fault.class);
      before = Files.readAllBytes(desktop.resolve(Opening.DATABASE));
      taken = 1 + random.nextInt(lines.size());
      for (int from = 0; from < taken; from += BATCH) {
        exchange.take(lines.subList(from, Math.min(taken, from + BATCH)));
      }
      FolderCopy.of(desktop, folder);
    }
    Path database = folder.resolve(Opening.DATABASE);
    Files.write(database, mixed(before, Files.readAllBytes(database), random));
    FolderCopy.delete(desktop);
    return taken;
  }

  private static byte[] mixed(byte[] before, byte[] after, Random random) {
    byte[] mixed = after.clone();
    double lost = random.nextDouble();
    for (int at = 0; at < after.length; at += PAGE) {
      if (random.nextDouble() < lost) {
        int end = Math.min(after.length, at + PAGE);
        Arrays.fill(mixed, at, end, (byte) 0);
        if (at < before.length) {
          System.arraycopy(before, at, mixed, at, Math.min(end, before.length) - at);
        }
      }
    }
    return random.nextInt(4) == 0
        ? Arrays.copyOf(mixed, before.length + random.nextInt(after.length - before.length + 1))
        : mixed;
  }
}
