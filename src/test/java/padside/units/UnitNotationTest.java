package padside.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitNotationTest {
  private static final UnitSystem US = UnitSystem.US;
  private static final UnitSystem METRIC = UnitSystem.METRIC;

  private static <T> T value(Notation<T> notation, String typed) {
    Reading<T> reading = notation.read(typed);
    assertThat(reading.objection()).as(typed).isEmpty();
    return reading.value().orElseThrow();
  }

  private static String objection(Notation<?> notation, String typed) {
    return notation.read(typed).objection().orElseThrow(() -> new AssertionError(typed));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "120g|120",
        "120 grams|120",
        "0.05kg|50",
        ".05 KG|50",
        "+120g|120",
        "12,5g|12.5",
        "0,125kg|125",
        "1kg 50g|1050",
        "16oz|453.59237",
        "1lb|453.59237",
        "1lb 4oz|566.9904625",
        "1 lb 4 oz|566.9904625",
        "4.2|119.067997125",
        "1/2 lb|226.796185",
      })
  void masses_are_read_in_any_unit(String typed, double grams) {
    assertThat(value(Notations.mass(US), typed).inGrams()).isCloseTo(grams, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "18in|0.4572",
        "18 in.|0.4572",
        "1 5/8in|0.041275",
        "1-5/8\"|0.041275",
        "5/8 in|0.015875",
        "5ft 3in|1.6002",
        "5'3\"|1.6002",
        "5′ 3″|1.6002",
        "5 ft 3 1/2 in|1.6129",
        "3''|0.0762",
        "6'|1.8288",
        "3\"|0.0762",
        "90cm|0.9",
        "24.8mm|0.0248",
        "300ft|91.44",
        "150m|150",
        "0.5mi|804.672",
        "1km|1000",
        "200yd|182.88",
        "45 paces|34.29",
        "1 pace|0.762",
        "60p|45.72",
        "1m 20cm 5mm|1.205",
        "1.64|0.041656",
      })
  void lengths_are_read_in_any_unit(String typed, double metres) {
    assertThat(value(Notations.bodyLength(US), typed).metres()).isCloseTo(metres, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "30mph, 13.4112",
    "30 mi/h, 13.4112",
    "44ft/s, 13.4112",
    "44 fps, 13.4112",
    "36km/h, 10",
    "36 kph, 10",
    "9 kt, 4.63",
    "9 knots, 4.63",
    "2.5m/s, 2.5",
    "2.5 M / S, 2.5",
    "44, 13.4112",
  })
  void speeds_are_read_in_any_unit(String typed, double mps) {
    assertThat(value(Notations.flightSpeed(US), typed).metresPerSecond())
        .isCloseTo(mps, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "41F, 278.15",
    "41 °F, 278.15",
    "41 deg F, 278.15",
    "5C, 278.15",
    "5 ºC, 278.15",
    "-5C, 268.15",
    "−5 °C, 268.15",
    "278K, 278",
    "41, 278.15",
    "-459.67F, 0",
    "-0F, 255.372222222222222",
  })
  void temperatures_are_read_in_any_unit(String typed, double kelvins) {
    assertThat(value(Notations.temperature(US), typed).kelvins()).isCloseTo(kelvins, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "1013.25hPa, 101325",
    "1013.25 mbar, 101325",
    "101.325kPa, 101325",
    "101325Pa, 101325",
    "29.92inHg, 101320.75888",
    "29.92 in Hg, 101320.75888",
    "29.92, 101320.75888",
  })
  void pressures_are_read_in_any_unit(String typed, double pascals) {
    assertThat(value(Notations.pressure(US), typed).pascals()).isCloseTo(pascals, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "5, 5",
    "60s, 60",
    "1.5 s, 1.5",
    "1m30s, 90",
    "1 min 30 s, 90",
    "2min, 120",
    "1h, 3600",
    "1h 5min, 3900",
    "1h30s, 3630",
  })
  void times_are_read_in_any_unit(String typed, double seconds) {
    assertThat(value(Notations.timeSpan(), typed).seconds()).isCloseTo(seconds, within(1e-9));
  }

  @Test
  void angles_impulses_and_forces_are_read() {
    for (String typed : List.of("3deg", "3°", "3 degrees", "3")) {
      assertThat(value(Notations.angle(), typed).inDegrees()).isCloseTo(3, within(1e-12));
    }
    for (String typed : List.of("8.82Ns", "8.82 N·s", "8.82 N*s", "8.82 n s", "8.82")) {
      assertThat(value(Notations.impulse(), typed).newtonSeconds()).isEqualTo(8.82);
    }
    assertThat(value(Notations.impulse(), "2lbf·s").newtonSeconds())
        .isCloseTo(8.896443230521, within(1e-12));
    assertThat(value(Notations.force(), "14.1N").newtons()).isEqualTo(14.1);
    assertThat(value(Notations.force(), "1 lbf").newtons())
        .isCloseTo(4.4482216152605, within(1e-12));
  }

  @Test
  void a_bare_number_means_the_unit_of_the_setting() {
    assertThat(value(Notations.mass(US), "4")).isEqualTo(Mass.ofOunces(4));
    assertThat(value(Notations.mass(METRIC), "4")).isEqualTo(Mass.ofGrams(4));
    assertThat(value(Notations.canopyLength(METRIC), "30").metres()).isCloseTo(0.3, within(1e-12));
    assertThat(value(Notations.bodyLength(METRIC), "4")).isEqualTo(Length.ofMillimetres(4));
    assertThat(value(Notations.rodLength(US), "4")).isEqualTo(Length.ofInches(4));
    assertThat(value(Notations.rodLength(METRIC), "4")).isEqualTo(Length.ofCentimetres(4));
    assertThat(value(Notations.distance(US), "4")).isEqualTo(Length.ofFeet(4));
    assertThat(value(Notations.distance(METRIC), "4")).isEqualTo(new Length(4));
    assertThat(value(Notations.windSpeed(US), "4")).isEqualTo(Speed.ofMph(4));
    assertThat(value(Notations.windSpeed(METRIC), "4")).isEqualTo(new Speed(4));
    assertThat(value(Notations.descentRate(US), "4")).isEqualTo(Speed.ofFeetPerSecond(4));
    assertThat(value(Notations.descentRate(METRIC), "4")).isEqualTo(new Speed(4));
    assertThat(value(Notations.temperature(METRIC), "4")).isEqualTo(Temperature.ofCelsius(4));
    assertThat(value(Notations.pressure(METRIC), "4")).isEqualTo(Pressure.ofHectopascals(4));
  }

  @Test
  void only_an_altitude_or_an_angle_may_be_negative() {
    assertThat(value(Notations.altitude(US), "-5ft 3in").metres()).isCloseTo(-1.6002, within(1e-9));
    assertThat(value(Notations.angle(), "-3deg").inDegrees()).isCloseTo(-3, within(1e-12));
    List<UnitNotation<?>> others =
        List.of(
            Notations.mass(US),
            Notations.rodLength(US),
            Notations.windSpeed(US),
            Notations.pressure(US),
            Notations.timeSpan(),
            Notations.impulse(),
            Notations.force());
    for (UnitNotation<?> notation : others) {
      assertThat(objection(notation, "-1")).contains("\"-1\"").contains("cannot be negative");
      assertThat(shownAgain(notation, "-0")).startsWith("0 ");
    }
    assertThat(objection(Notations.temperature(METRIC), "-274"))
        .contains("nothing is colder than -459.67F, -273.15C or 0K");
  }

  private static <T> String shownAgain(UnitNotation<T> notation, String typed) {
    return notation.show(value(notation, typed));
  }

  @Test
  void an_objection_says_what_was_seen_and_what_to_type() {
    assertThat(objection(Notations.rodLength(US), "12 parsec"))
        .isEqualTo("\"12 parsec\" has no unit of length I know; type it like 36in, 3ft or 90cm.");
    assertThat(objection(Notations.altitude(US), ""))
        .isEqualTo("\"\" is empty; type it like 850ft or 260m.");
    assertThat(objection(Notations.mass(METRIC), "1,500g")).contains("could mean 1500 or 1.500");
    assertThat(objection(Notations.mass(METRIC), "about 9g"))
        .contains("does not begin with a number");
    assertThat(objection(Notations.mass(METRIC), "9g 3")).contains("is more than one number");
    assertThat(objection(Notations.mass(METRIC), "9g 3g")).contains("is more than one mass");
    assertThat(objection(Notations.mass(METRIC), "4oz 1lb")).contains("is more than one mass");
    assertThat(objection(Notations.bodyLength(US), "1/0in")).contains("divides by zero");
    assertThat(objection(Notations.distance(US), "9".repeat(40) + "km"))
        .contains("larger than any");
    assertThat(objection(Notations.distance(US), "9".repeat(65))).contains("longer than 64");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "NaN",
        "Infinity",
        "-Infinity",
        "1e5g",
        "0x10g",
        "١٢g",
        "12-14g",
        "--3g",
        "3..5g",
        "1.2.3g",
        "g",
        "-",
        ".",
        ",",
        "1/2/3g",
        "1,234,567g",
        "4ozz"
      })
  void what_is_not_plainly_one_mass_is_refused(String typed) {
    assertThat(objection(Notations.mass(METRIC), typed))
        .endsWith("; type it like 120g, 0.12kg or 4.2oz.");
  }

  @Test
  void an_objection_repeats_nothing_a_terminal_obeys() {
    String typed = "3\u001b[31m\u0007\u202e\ue000\u2028\ud800x";
    assertThat(objection(Notations.mass(US), typed)).startsWith("\"3?[31m?????x\" has no unit");
    assertThat(objection(Notations.mass(US), "x".repeat(60)))
        .contains("\"" + "x".repeat(24) + "…\"");
  }

  @Test
  void the_strict_form_refuses_a_bare_number_with_the_list_of_units() {
    UnitNotation<Mass> strict = Notations.mass(METRIC).withUnitRequired();
    assertThat(objection(strict, "120"))
        .isEqualTo(
            "\"120\" has no unit, which is one of g, kg, oz, lb; type it like 120g, 0.12kg or"
                + " 4.2oz.");
    assertThat(objection(strict, "0")).contains("has no unit");
    assertThat(value(strict, "120g")).isEqualTo(Mass.ofGrams(120));
    assertThat(strict.show(Mass.ofGrams(120))).isEqualTo("120 g");
  }

  @Test
  void values_are_shown_as_a_flier_says_them() {
    assertThat(Notations.mass(US).show(Mass.ofGrams(120))).isEqualTo("4.23 oz");
    assertThat(Notations.mass(METRIC).show(Mass.ofGrams(1534.26))).isEqualTo("1534 g");
    assertThat(Notations.bodyLength(US).show(Length.ofMillimetres(24.8))).isEqualTo("0.976 in");
    assertThat(Notations.bodyLength(METRIC).show(Length.ofInches(1.64))).isEqualTo("41.7 mm");
    assertThat(Notations.rodLength(METRIC).show(Length.ofInches(36))).isEqualTo("91.4 cm");
    assertThat(Notations.distance(US).show(new Length(91.44))).isEqualTo("300 ft");
    assertThat(Notations.distance(METRIC).show(new Length(5.43))).isEqualTo("5.4 m");
    assertThat(Notations.distance(METRIC).show(new Length(9.96))).isEqualTo("10 m");
    assertThat(Notations.altitude(METRIC).show(new Length(-0.2))).isEqualTo("0 m");
    assertThat(Notations.windSpeed(US).show(new Speed(8.9408))).isEqualTo("20 mph");
    assertThat(Notations.temperature(US).show(Temperature.ofCelsius(5))).isEqualTo("41 °F");
    assertThat(Notations.pressure(US).show(new Pressure(101325))).isEqualTo("29.92 inHg");
    assertThat(Notations.pressure(METRIC).show(new Pressure(101325))).isEqualTo("1013.3 hPa");
    assertThat(Notations.angle().show(Angle.ofDegrees(3))).isEqualTo("3°");
    assertThat(Notations.timeSpan().show(new TimeSpan(1.862))).isEqualTo("1.86 s");
    assertThat(Notations.impulse().show(new Impulse(8.82))).isEqualTo("8.82 N·s");
  }

  @Test
  void a_column_has_the_number_and_its_heading_the_unit() {
    UnitNotation<Speed> wind = Notations.windSpeed(US);
    assertThat(wind.showBare(Speed.ofMph(6))).isEqualTo("6");
    assertThat(wind.symbol()).isEqualTo("mph");
    assertThat(wind.example()).isEqualTo("6mph");
  }

  @Test
  void a_limit_shown_down_never_reads_larger_than_it_is() {
    UnitNotation<Speed> wind = Notations.windSpeed(US);
    assertThat(wind.show(Speed.ofMph(13.36))).isEqualTo("13.4 mph");
    assertThat(wind.showDown(Speed.ofMph(13.36))).isEqualTo("13.3 mph");
    assertThat(wind.showDown(new Speed(8.9408))).isEqualTo("20 mph");
    assertThat(wind.showDown(new Speed(0))).isEqualTo("0 mph");
  }

  @Test
  void a_number_without_dimension_has_no_unit_to_ask_for() {
    UnitNotation<Double> number = Notations.number().withUnitRequired();
    assertThat(value(number, "0,75")).isEqualTo(0.75);
    assertThat(number.show(0.75)).isEqualTo("0.75");
    assertThat(objection(number, "0.75kg"))
        .isEqualTo("\"0.75kg\" is more than a plain number; type it like 0.75 or 2.");
    assertThat(objection(number, "-1")).contains("cannot be negative");
  }

  @Test
  void another_value_may_be_made_of_what_was_read() {
    assertThat(Notations.angle().read("3deg").map(Angle::inDegrees).value().orElseThrow())
        .isCloseTo(3, within(1e-12));
    assertThat(Notations.angle().read("steep").map(Angle::inDegrees).objection())
        .isEqualTo(Notations.angle().read("steep").objection());
  }
}
