package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Random;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.store.FolderCopy;
import padside.store.LogFolder;

/**
 * The real program killed with -9 at any moment of typing in any form, and as it starts. The next
 * start opens; every field the screen said was kept is in the log as typed, and nothing half.
 */
class KilledAtThePadIT {
  private static final int KILLS = Trials.of("screen-kills", 200, 2000);

  /** After so many a new log is begun, so that the lists stay short. */
  private static final int KILLS_A_LOG = 25;

  @TempDir static Path prepared;
  @TempDir static Path tables;

  private final ScheduledExecutorService killers = Executors.newScheduledThreadPool(2);
  private final AtomicInteger acknowledged = new AtomicInteger();
  private final AtomicInteger groups = new AtomicInteger();

  @BeforeAll
  static void prepareLog() throws IOException {
    try (PadTable home = new PadTable(prepared, 80, 24)) {
      home.add(
          "device", "{\"name\": \"12 in nylon\", \"shape\": \"parachute\", \"diameter_m\": 0.3}");
      String rocket =
          home.add(
                  "rocket",
                  "{\"name\": \"Sparrow\", \"mass_kg\": 0.036, \"diameter_m\": 0.0248,"
                      + " \"rod_m\": 0.9}")
              .get(0);
      String day =
          home.add("day", "{\"date\": \"" + LocalDate.now(ZoneId.systemDefault()) + "\"}").get(0);
      home.add(
          "flight",
          "{\"day\": \"%s\", \"rocket\": \"%s\", \"motor\": \"A8-3\", \"status\": \"flown\"}"
              .formatted(day, rocket));
    }
  }

  @Test
  void what_the_screen_said_was_kept_is_there_after_a_kill_at_any_moment() throws Exception {
    long begun = System.nanoTime();
    int logs = (KILLS + KILLS_A_LOG - 1) / KILLS_A_LOG;
    Trials.run(logs, (number, random) -> oneLog(number, Math.min(KILLS_A_LOG, KILLS), random));
    killers.shutdownNow();
    Trials.say(
        ("%d kills of the program, %d of its whole process group: %d fields acknowledged, 0 lost;"
                + " %d s")
            .formatted(
                logs * Math.min(KILLS_A_LOG, KILLS),
                groups.get(),
                acknowledged.get(),
                TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - begun)));
    assertThat(acknowledged.get()).as("fields acknowledged").isGreaterThan(KILLS);
  }

  private void oneLog(int number, int kills, Random random) throws Exception {
    Path folder = Files.createDirectory(tables.resolve("table" + number));
    FolderCopy.of(prepared.resolve("data"), folder.resolve("data"));
    TypedTexts typed = new TypedTexts();
    try (PadTable pad = new PadTable(folder, 80, 24)) {
      for (int kill = 1; kill <= kills; kill++) {
        KilledSession session = new KilledSession(pad, typed, random, killers);
        groups.addAndGet(session.play() ? 1 : 0);
        lookInto(pad.log(), folder.resolve("look" + kill), typed, session.told(number, kill));
      }
    }
    acknowledged.addAndGet(typed.acknowledged());
    FolderCopy.delete(folder);
  }

  /** Looks into a copy, so that the next start of the program finds what the kill left. */
  private static void lookInto(Path log, Path copy, TypedTexts typed, String when)
      throws Exception {
    FolderCopy.of(log, copy);
    try (LogFolder left = LogFolder.open(copy, new ThisMachine())) {
      typed.areIn(left, when);
    }
    FolderCopy.delete(copy);
  }
}
