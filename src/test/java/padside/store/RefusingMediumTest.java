package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;

/** Real file systems that are full, broken or no longer writable, under a log that is open. */
class RefusingMediumTest {
  private static final int MOST_SAVES = 100_000;
  private static final int TRIES = 60;

  @TempDir Path place;

  private final Map<RecordId, String> acknowledged = new HashMap<>();

  private static void needsMounting() {
    assumeTrue(
        SmallMedium.canBeMounted(),
        "file systems may not be mounted here (that takes root); a full medium is not tried");
  }

  @Test
  void a_full_medium_is_told_and_once_there_is_room_saving_goes_on() throws Exception {
    needsMounting();
    try (SmallMedium medium = SmallMedium.inMemory(place)) {
      Path folder = place.resolve("log");
      try (LogFolder log = LogFolder.open(folder, new PretendMachine(1))) {
        Path filler = fillWhileSaving(log, medium);
        Fault fault = untilRefused(log);
        assertThat(fault.code()).isEqualTo("log-not-kept");
        assertThat(fault.sentence()).contains("NOT SAVED", folder.toString());
        assertThat(fault.nextStep()).isNotBlank();
        holdsAll(log);
        Files.delete(filler);
        save(log, "after there was room");
        holdsAll(log);
      }
      Trials.say("full medium: %d acknowledged, 0 lost".formatted(acknowledged.size()));
      holdsAllWhenOpenedAgain(folder);
    }
  }

  private Path fillWhileSaving(LogFolder log, SmallMedium medium) throws Exception {
    for (int i = 0; i < 20; i++) {
      save(log, "while there is room " + i);
    }
    return medium.fill();
  }

  private Fault untilRefused(LogFolder log) {
    for (int i = 0; i < MOST_SAVES; i++) {
      try {
        save(log, "into the last room " + i);
      } catch (Fault fault) {
        return fault;
      }
    }
    throw new AssertionError("a full medium refused nothing");
  }

  @Test
  void a_medium_that_turns_read_only_is_told_and_lost_nothing() throws Exception {
    needsMounting();
    Path image = place.resolve("image");
    Path mount = Files.createDirectory(place.resolve("mount"));
    Path folder = mount.resolve("log");
    try (SmallMedium medium = SmallMedium.ext4(image, mount)) {
      LogFolder log = LogFolder.open(folder, new PretendMachine(1));
      for (int i = 0; i < TRIES; i++) {
        save(log, "before " + i);
      }
      medium.abort();
      assertThat(untilRefused(log).sentence()).contains("NOT SAVED");
      holdsAll(log);
      closeAsFarAsPossible(log);
    }
    try (SmallMedium again = SmallMedium.mounted(image, mount)) {
      assertThat(again).isNotNull();
      Trials.say("read-only medium: %d acknowledged, 0 lost".formatted(acknowledged.size()));
      holdsAllWhenOpenedAgain(folder);
    }
  }

  private static void closeAsFarAsPossible(LogFolder log) {
    try {
      log.close();
    } catch (Fault fault) {
      assertThat(fault.sentence()).isNotBlank();
    }
  }

  /** Each fails one of the calls a save makes, at several of them, for a while or from then on. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "fdatasync:error=EIO:when=7",
        "fdatasync:error=EIO:when=30+",
        "fdatasync:error=ENOSPC:when=20..40",
        "fsync:error=EIO:when=1..3",
        "fsync:error=EIO:when=2+",
        "pwrite64:error=EIO:when=40",
        "pwrite64:error=ENOSPC:when=100..160",
        "pwrite64:error=EIO:when=150+",
        "ftruncate:error=EIO:when=2+"
      })
  void a_call_that_fails_loses_no_acknowledged_save(String failing) throws Exception {
    assumeTrue(
        SavingProgram.canBeTraced(),
        "strace is not installed or may not trace here; failing calls are not tried");
    Path folder = place.resolve("log");
    LogFolder.open(folder, new PretendMachine(1)).close(); // so that saves are what fails
    String call = failing.substring(0, failing.indexOf(':'));
    List<String> said;
    try (SavingProgram program =
        SavingProgram.startTrying(
            folder, place.resolve("trace"), TRIES, "trace=" + call, "inject=" + failing)) {
      said = program.end();
    }
    Acknowledged kept = new Acknowledged();
    said.stream().filter(line -> line.matches("[0-9a-f]{20}\\..*")).forEach(kept::note);
    long faults = said.stream().filter(line -> line.startsWith("FAULT log-")).count();
    assertThat(said).last().isEqualTo("DONE");
    assertThat(kept.records() + faults).as("%s: %s", failing, said).isEqualTo(TRIES);
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(2))) {
      kept.areIn(log.list(Kind.DAY), failing);
    }
    Trials.say(
        "%s: %d acknowledged, %d refused, 0 lost".formatted(failing, kept.records(), faults));
  }

  private void save(LogFolder log, String note) throws Fault {
    Facts facts = Facts.none().with("note", Facts.Cell.of(note, note));
    acknowledged.put(log.save(Action.create("note", Kind.DAY, facts)).get(0), note);
  }

  private void holdsAll(LogFolder log) throws Fault {
    Map<RecordId, String> kept = new HashMap<>();
    for (Stored day : log.list(Kind.DAY)) {
      kept.put(day.id(), String.valueOf(day.facts().cells().get("note").value().orElseThrow()));
    }
    assertThat(kept).containsAllEntriesOf(acknowledged);
  }

  private void holdsAllWhenOpenedAgain(Path folder) throws Fault {
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(9))) {
      holdsAll(log);
    }
  }
}
