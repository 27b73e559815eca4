package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.clock.Moment.Trust;

class ClockSourceTest {
  private static final Instant NOW = Instant.parse("2026-10-17T12:00:00Z");

  @TempDir Path root;

  private void file(String path, String text) throws IOException {
    Path file = root.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Trust trust() {
    return ClockSource.look(root, NOW).trust();
  }

  @Test
  void a_container_or_a_pi_without_a_battery_clock_vouches_for_nothing() throws IOException {
    file("proc/uptime", "14580.12 29000.00\n");
    assertThat(trust()).isEqualTo(Trust.NONE);
    Files.createDirectories(root.resolve("sys/class/rtc"));
    assertThat(trust()).isEqualTo(Trust.NONE);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-10-17T12:00:01Z, BATTERY",
    "2026-10-17T07:00:00Z, BATTERY", // kept in local time
    "1970-01-01T00:04:03Z, NONE", // a Raspberry Pi 5 without the battery
    "2000-01-01T00:00:20Z, NONE", // a clock chip whose battery is dead
  })
  void a_battery_clock_counts_where_it_agrees_with_the_system(Instant shown, Trust trust)
      throws IOException {
    file("proc/uptime", "14580.12 29000.00\n");
    file("sys/class/rtc/rtc0/since_epoch", shown.getEpochSecond() + "\n");
    assertThat(trust()).isEqualTo(trust);
  }

  @Test
  void a_battery_clock_that_cannot_be_read_is_none() throws IOException {
    file("proc/uptime", "14580.12 29000.00\n");
    Files.createDirectories(root.resolve("sys/class/rtc/rtc0"));
    assertThat(trust()).isEqualTo(Trust.NONE);
    file("sys/class/rtc/rtc0/since_epoch", "\n");
    assertThat(trust()).isEqualTo(Trust.NONE);
  }

  @Test
  void a_clock_synchronised_later_is_sure_from_then_on() throws IOException {
    file("proc/uptime", "14580.12 29000.00\n");
    ClockSource source = ClockSource.look(root, NOW);
    assertThat(source.trust()).isEqualTo(Trust.NONE);
    file("run/systemd/timesync/synchronized", "");
    assertThat(source.trust()).isEqualTo(Trust.SURE);
  }

  @Test
  void elsewhere_than_on_linux_a_battery_is_taken_for_granted() {
    assertThat(trust()).isEqualTo(Trust.BATTERY);
  }
}
