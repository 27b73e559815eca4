package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Fault;
import padside.insight.Confidence;
import padside.preflight.Settings;
import padside.safety.OwnLimits;
import padside.units.Length;
import padside.units.Speed;
import padside.units.UnitSystem;

/** A settings file that is not one: it is told, stays as it is, and says what to do. */
class SettingsFileTest {
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("settings.properties");
  }

  private void isToldAndNotWritten(String why) {
    SettingsFile read = SettingsFile.read(file);

    assertThat(read.settings().units()).isEqualTo(UnitSystem.US);
    assertThat(read.told())
        .containsExactly(
            "The settings file %s cannot be read: %s. The usual settings stand. Mend it or take it away; nothing of it was changed."
                .formatted(file, why));
    assertThatThrownBy(() -> SettingsFile.keep(file, Map.of("units", "metric")))
        .isInstanceOfSatisfying(
            Fault.class,
            fault -> {
              assertThat(fault.sentence()).endsWith("cannot be read: " + why + ".");
              assertThat(fault.nextStep()).contains("nothing of it was changed");
            });
  }

  private void staysAsItIs(byte[] bytes, String why) throws IOException {
    Files.write(file, bytes);
    isToldAndNotWritten(why);
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    assertThat(folder).isDirectoryContaining(file::equals);
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void of_other_letters_than_utf_8_it_is_left_alone() throws Exception {
    staysAsItIs(
        "# Größe\nunits = metric\n".getBytes(StandardCharsets.ISO_8859_1), "it is no UTF-8 text");
  }

  @Test
  void with_half_an_escape_it_is_left_alone() throws Exception {
    staysAsItIs(
        "units = metric\nbackup.second = C:\\usb\n".getBytes(StandardCharsets.UTF_8),
        "a \\u in it stands without its four hexadecimal digits");
  }

  @Test
  void all_that_is_set_is_gone_by() throws Exception {
    Files.writeString(
        file,
        """
        units = metric
        rules = uk-club
        own-limit = 12 mph
        own-ceiling = 1000 ft
        own-rod-exit = 15
        own-thrust = 6.5
        rod-divisor = 5
        confidence = 80
        flier = Zoë Example
        """);
    SettingsFile read = SettingsFile.read(file);

    assertThat(read.told()).isEmpty();
    assertThat(read.settings())
        .isEqualTo(
            new Settings(
                UnitSystem.METRIC,
                "uk-club",
                new OwnLimits(
                    Optional.of(Speed.ofMph(12)),
                    Optional.of(Length.ofFeet(1000)),
                    Optional.of(new Speed(15)),
                    Optional.of(6.5)),
                Optional.of(5.0),
                new Confidence(80),
                Optional.of("Zoë Example")));
  }

  @Test
  void a_folder_in_its_place_is_told() throws Exception {
    Files.createDirectory(file);

    isToldAndNotWritten("it is a folder");
  }

  @Test
  void a_link_to_nothing_is_told_and_one_to_a_file_stays_a_link() throws Exception {
    Path elsewhere = folder.resolve("elsewhere");
    Files.createSymbolicLink(file, elsewhere);
    isToldAndNotWritten("it is a link to a file that is not there");

    Files.writeString(elsewhere, "# mine\n");
    SettingsFile.keep(file, Map.of("units", "metric"));
    assertThat(file).isSymbolicLink();
    assertThat(Files.readString(elsewhere)).startsWith("# mine\n").endsWith("\nunits = metric\n");
  }

  @Test
  void one_that_nobody_may_read_is_told() throws Exception {
    Files.writeString(file, "units = metric\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("-wx-wx-wx"));
    assumeFalse(Files.isReadable(file), "the superuser may read everything");

    isToldAndNotWritten("you have no leave to read it");
  }
}
