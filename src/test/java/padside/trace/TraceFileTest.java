package padside.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.physics.Air;
import padside.units.Length;
import padside.units.Pressure;
import padside.units.Temperature;
import padside.units.UnitSystem;

class TraceFileTest {
  @TempDir private Path folder;

  private TraceFile read(String text) throws IOException {
    return read(text.getBytes(StandardCharsets.UTF_8)).value().orElseThrow();
  }

  private padside.units.Reading<TraceFile> read(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("flight.csv"), bytes);
    return TraceFile.read(file, Wanted.nothing(UnitSystem.US));
  }

  private String refused(String text) throws IOException {
    return read(text.getBytes(StandardCharsets.UTF_8)).objection().orElseThrow();
  }

  /** A climb to 100 m in 4 s and down at 5 m/s, in metres, ten samples a second. */
  private static List<double[]> plain() {
    List<double[]> samples = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      double at = i / 10.0 - 10;
      double up = at < 0 ? 0 : at < 4 ? 100 - 6.25 * (4 - at) * (4 - at) : 100 - 5 * (at - 4);
      samples.add(new double[] {i / 10.0, Math.max(0, up)});
    }
    return samples;
  }

  private static String table(String header, String form, double timeUnit, double heightUnit) {
    StringBuilder text = new StringBuilder(header);
    plain()
        .forEach(
            s -> text.append(String.format(Locale.ROOT, form, s[0] / timeUnit, s[1] / heightUnit)));
    return text.toString();
  }

  private static double apogee(TraceFile file) {
    return file.find(1, TraceAir.unknown())
        .value()
        .orElseThrow()
        .apogee()
        .value()
        .orElseThrow()
        .metres();
  }

  @Test
  void columns_are_read_by_name_and_unit_however_they_are_parted() throws IOException {
    List<String> same =
        List.of(
            table("time s,altitude ft\n", "%.1f,%.2f\n", 1, 0.3048),
            table("Time (ms);Alt [m]\r\n", "%.0f;%.3f\r\n", 0.001, 1),
            table(
                "flown at dawn\n# by nobody\nvolts\theight_m\ttime_s\n",
                "%2$.1f\t%2$.3f\t%1$.1f\n",
                1,
                1),
            table("time,altitude\ns,ft\n", "%.1f,%.2f\n", 1, 0.3048),
            table("# time_s  height_ft\n", "%.1f   %.2f\n", 1, 0.3048),
            table("\"time s\",\"altitude, ft\"\n", "\"%.1f\",\"%.2f\"\n", 1, 0.3048),
            table("", "%.1f,%.2f\n", 1, 0.3048),
            table("time s;altitude m;speed m/s\n", "%.1f;%.3f;1,5\n", 1, 1)
                .replaceAll("(\\d)\\.(\\d)", "$1,$2"));
    for (String text : same) {
      assertThat(apogee(read(text))).as(text.substring(0, 30)).isCloseTo(100, within(0.5));
    }
  }

  @Test
  void what_was_guessed_is_told() throws IOException {
    assertThat(read(table("", "%.0f,%.2f\n", 0.001, 0.3048)).told())
        .anyMatch(said -> said.contains("column 1 in ms"))
        .anyMatch(said -> said.contains("names no unit of height; taken for ft"));
    assertThat(read(table("t s,alt ft,agl ft\n", "%1$.1f,%2$.2f,%2$.2f\n", 1, 0.3048)).told())
        .anyMatch(said -> said.startsWith("Columns 2 and 3 would do for height"));
  }

  @Test
  void the_flier_chooses_columns_and_units() throws IOException {
    Path file =
        Files.writeString(folder.resolve("x.csv"), table("t s,a,b\n", "%1$.1f,7,%2$.3f\n", 1, 1));
    Wanted wanted = Wanted.of("height=3m", UnitSystem.US).value().orElseThrow();

    assertThat(apogee(TraceFile.read(file, wanted).value().orElseThrow()))
        .isCloseTo(100, within(0.5));
    assertThat(Wanted.of("height=3hPa", UnitSystem.US).objection()).isPresent();
    assertThat(Wanted.of("speed=3", UnitSystem.US).objection()).isPresent();
    Wanted past = Wanted.of("height=9m", UnitSystem.US).value().orElseThrow();
    assertThat(TraceFile.read(file, past).objection().orElseThrow())
        .isEqualTo("There is no column 9; the table has 3.");
  }

  /** US Standard Atmosphere 1976: pressures at 500, 1000 and 1500 m geopotential. */
  @ParameterizedTest
  @CsvSource({"101325, 0", "95460.84, 500.003", "89874.56, 999.997", "84555.99, 1499.999"})
  void a_pressure_is_the_height_of_the_standard_tables(double pascals, double metres) {
    assertThat(height(pascals, 288.15)).isCloseTo(metres, within(0.01));
  }

  /** Worked from the same standard: the same pressure in air of 0, 15 and 30 °C at the ground. */
  @ParameterizedTest
  @CsvSource({"273.15, 284.349", "288.15, 299.964", "303.15, 315.579"})
  void an_altimeter_fixed_to_15_degrees_understates_in_warm_air(double kelvins, double metres) {
    assertThat(height(97773, kelvins)).isCloseTo(metres, within(0.001));
    Optional<Length> warmed =
        new TraceAir(Optional.of(new Temperature(kelvins)), Optional.empty())
            .warmed(new Length(299.964));
    assertThat(warmed.orElseThrow().metres()).isCloseTo(metres, within(0.001));
  }

  private static double height(double pascals, double kelvins) {
    return Air.heightAt(new Pressure(pascals), new Pressure(101325), new Temperature(kelvins))
        .metres();
  }

  @Test
  void pressures_are_reckoned_from_those_on_the_pad_in_the_air_of_the_day() {
    Random random = new Random(5);
    MadeTrace made = MadeTrace.drawn(random);
    Path file = made.written(MadeTrace.Faults.none(20), random).asPressures(folder, 98000, 303.15);
    TraceFile read = TraceFile.read(file, Wanted.nothing(UnitSystem.US)).value().orElseThrow();
    TraceAir day = new TraceAir(Optional.of(new Temperature(303.15)), Optional.empty());

    TraceFinding warm = read.find(1, day).value().orElseThrow();
    assertThat(warm.apogee().value().orElseThrow().metres())
        .isCloseTo(made.highestM(), within(0.5));
    assertThat(warm.warmed().orElseThrow().metres())
        .isCloseTo(made.highestM() * 288.15 / 303.15, within(0.5));
    assertThat(apogee(read)).isCloseTo(made.highestM() * 288.15 / 303.15, within(0.5));
  }

  @Test
  void two_flights_in_one_file_are_told_apart_even_where_the_time_begins_anew() throws IOException {
    String one = table("time s,altitude ft\n", "%.1f,%.2f\n", 1, 0.3048);
    String half = table("", "%.1f,%.2f\n", 1, 0.6096);

    TraceFile both = read(one + half);
    assertThat(both.flights()).hasSize(2);
    assertThat(apogee(both)).isCloseTo(100, within(0.5));
    assertThat(
            both.find(2, TraceAir.unknown())
                .value()
                .orElseThrow()
                .apogee()
                .value()
                .orElseThrow()
                .metres())
        .isCloseTo(50, within(0.5));
    assertThat(both.find(3, TraceAir.unknown()).objection().orElseThrow())
        .isEqualTo("There is no flight 3 in the file, which has 2 flights.");
  }

  @Test
  void bad_rows_are_named_and_left_out() throws IOException {
    String[] lines = table("time s,altitude ft\n", "%.1f,%.2f\n", 1, 0.3048).split("\n");
    lines[5] = "0.4,\u001b[2Jnoise";
    lines[90] = "-,-";
    lines[140] = "13.9,999999999";
    lines[200] = "9999999,12";
    lines[210] = "x".repeat(9000);

    TraceFile file = read(String.join("\n", lines));
    assertThat(apogee(file)).isCloseTo(100, within(0.5));
    assertThat(file.told())
        .contains(
            "5 lines were left out: line 6 has no height, line 91 has no time, line 141 has a height"
                + " no air has ...");
  }

  @Test
  void whatever_is_no_flight_is_refused_in_a_sentence() throws IOException {
    String rising = table("time s,altitude ft\n", "%.1f,%.2f\n", 1, 0.3048);
    assertThat(refused("")).contains("is empty");
    assertThat(refused("\n\n\n")).contains("No line among the first");
    assertThat(refused("a,b\nc,d\n")).contains("No line among the first 2 has a time and a height");
    assertThat(refused("x".repeat(300_000))).contains("No line among the first");
    assertThat(refused("time,alt\n1,2\u00003\n")).contains("no text in UTF-8");
    assertThat(refused(table("time s,altitude ft\n", "%.1f,%.2f\n", 1, 30)))
        .startsWith("No flight was found in 500 samples");
    assertThat(refused(rising.replaceAll("(?m)^(\\d+\\.\\d),.*[0-4]$", "$1,?")))
        .startsWith("Too much of the file cannot be read: ");
    assertThat(read(rising.getBytes(StandardCharsets.UTF_16)).objection().orElseThrow())
        .contains("no text in UTF-8");
    assertThat(TraceFile.read(folder, Wanted.nothing(UnitSystem.US)).objection().orElseThrow())
        .contains("is a folder");
    assertThat(
            TraceFile.read(folder.resolve("none\u001b.csv"), Wanted.nothing(UnitSystem.US))
                .objection()
                .orElseThrow())
        .isEqualTo("There is no file \"none?.csv\"; check its name and folder.");
  }

  /** Bytes at random and tables with bytes turned over: a value or a sentence, never a throw. */
  @Test
  void no_bytes_make_it_throw() throws IOException {
    byte[] sound =
        table("time s,altitude ft\n", "%.1f,%.2f\n", 1, 0.3048).getBytes(StandardCharsets.UTF_8);
    for (int seed = 1; seed <= 200; seed++) {
      Random random = new Random(seed);
      byte[] bytes = sound.clone();
      for (int i = random.nextInt(400); i >= 0; i--) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(seed % 2 == 0 ? 256 : 127);
      }
      String luck = "seed " + seed;
      padside.units.Reading<TraceFile> read = read(bytes);
      read.value().ifPresent(file -> file.find(1, TraceAir.unknown()));
      read.objection().ifPresent(said -> assertThat(said).as(luck).endsWith("."));
    }
  }
}
