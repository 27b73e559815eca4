package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts.Cell;
import padside.fact.RecordId;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;

/** A program killed with -9 while it saves: nothing it acknowledged is lost, nothing is half. */
class KillTest {
  private static final int KILLS = Integer.getInteger("padside.kills", 12);
  private static final long SEED = 20;

  @TempDir Path folder;

  @Test
  void no_acknowledged_save_is_lost_and_none_is_half_there() throws Exception {
    Random random = new Random(SEED);
    Acknowledged acknowledged = new Acknowledged();
    for (int kill = 1; kill <= KILLS; kill++) {
      try (SavingProgram program = SavingProgram.start(folder)) {
        program.acknowledged(1 + random.nextInt(60));
        Thread.sleep(random.nextInt(10));
        program.kill().forEach(acknowledged::note);
      }
      if (random.nextInt(4) == 0) {
        Files.delete(folder.resolve("padside.sqlite"));
      }
      try (LogFolder log = LogFolder.open(folder, new PretendMachine(random.nextLong()))) {
        acknowledged.areIn(log.list(Kind.DAY), "seed " + SEED + ", kill " + kill);
      }
    }
  }

  @Test
  void an_undo_is_there_whole_or_not_at_all() throws Exception {
    Random random = new Random(SEED);
    for (int kill = 1; kill <= KILLS / 2; kill++) {
      List<String> acknowledged;
      try (SavingProgram program = SavingProgram.startUndoing(folder)) {
        program.acknowledged(2 + random.nextInt(20));
        Thread.sleep(random.nextInt(10));
        acknowledged = program.kill();
      }
      String[] last = acknowledged.get(acknowledged.size() - 1).split(" ", 2);
      long count = Long.parseLong(last[1]);
      try (LogFolder log = LogFolder.open(folder, new PretendMachine(random.nextLong()))) {
        Stored day = log.find(Kind.DAY, new RecordId(last[0])).orElseThrow();
        Long now = (Long) day.facts().cells().get("note").value().orElseThrow();
        assertThat(day.facts().cells())
            .as("kill %d, note and its twin change together", kill)
            .containsEntry("note", Cell.of(now, "typed " + now))
            .containsEntry("twin", Cell.of(now));
        assertThat(now % 1_000_000)
            .as("seed %d, kill %d: %d acknowledged", SEED, kill, count)
            .isBetween(count % 1_000_000, count % 1_000_000 + 1);
      }
    }
  }
}
