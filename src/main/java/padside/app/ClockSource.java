package padside.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import padside.clock.Moment.Trust;

/**
 * What Linux tells of its clock by files. Elsewhere than on Linux a battery is taken for granted; a
 * container shows none of the files, so that nothing vouches for its clock.
 *
 * @param synchronised there once the clock was synchronised since the machine's start
 *     (systemd-timesyncd.service(8), Files)
 */
record ClockSource(Path synchronised, boolean battery) {
  /**
   * A battery clock may be kept in local time and may have drifted; one whose battery is dead or
   * missing starts years back (common practice, no source).
   */
  private static final Duration APART = Duration.ofDays(1);

  /**
   * Looks once for a battery clock; whether the clock is synchronised is looked for each time.
   *
   * @param root the folder that holds {@code proc}, {@code sys} and {@code run}
   */
  static ClockSource look(Path root, Instant now) {
    boolean linux = Files.exists(root.resolve("proc/uptime"));
    return new ClockSource(
        root.resolve("run/systemd/timesync/synchronized"), !linux || hasBattery(root, now));
  }

  Trust trust() {
    if (Files.exists(synchronised)) {
      return Trust.SURE;
    }
    return battery ? Trust.BATTERY : Trust.NONE;
  }

  /** Whether a clock that ran while the machine was off tells about the same as the system's. */
  private static boolean hasBattery(Path root, Instant now) {
    return clocks(root.resolve("sys/class/rtc")).stream().anyMatch(clock -> agrees(clock, now));
  }

  private static List<Path> clocks(Path folder) {
    try (Stream<Path> clocks = Files.list(folder)) {
      return clocks.toList();
    } catch (IOException e) {
      return List.of(); // a machine without any, or a container
    }
  }

  /** The file's form: Documentation/ABI/testing/sysfs-class-rtc of the Linux kernel. */
  private static boolean agrees(Path clock, Instant now) {
    try {
      String seconds = Files.readString(clock.resolve("since_epoch")).strip();
      Instant shown = Instant.ofEpochSecond(Long.parseLong(seconds));
      return Duration.between(shown, now).abs().compareTo(APART) <= 0;
    } catch (IOException | NumberFormatException e) {
      return false; // it cannot be read: what Linux answers for a clock that has lost its time
    }
  }
}
