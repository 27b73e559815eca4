package padside.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever is shown can be typed again and means the same; whatever is typed is answered. */
class ShowThenReadTest {
  private static final long SEED = 20261125;

  private static List<UnitNotation<?>> notations() {
    List<UnitNotation<?>> all = new ArrayList<>();
    for (UnitSystem system : UnitSystem.values()) {
      all.addAll(
          List.of(
              Notations.mass(system),
              Notations.bodyLength(system),
              Notations.canopyLength(system),
              Notations.rodLength(system),
              Notations.distance(system),
              Notations.altitude(system),
              Notations.windSpeed(system),
              Notations.descentRate(system),
              Notations.flightSpeed(system)));
      all.addAll(List.of(Notations.temperature(system), Notations.pressure(system)));
      all.add(Notations.number());
    }
    all.addAll(
        List.of(Notations.angle(), Notations.timeSpan(), Notations.impulse(), Notations.force()));
    return all;
  }

  /** From thousandths to tens of thousands, a few of them with few digits as people type. */
  private static String number(Random random) {
    double value = Math.pow(10, random.nextDouble() * 7 - 3);
    return BigDecimal.valueOf(value)
        .setScale(random.nextInt(6), RoundingMode.HALF_UP)
        .toPlainString();
  }

  @Test
  void every_typed_quantity_survives_show_then_read() {
    Random random = new Random(SEED);
    for (UnitNotation<?> notation : notations()) {
      for (int i = 0; i < 300; i++) {
        survives(notation, number(random));
      }
      survives(notation, "0");
      survives(notation, notation.example());
    }
  }

  private static <T> void survives(UnitNotation<T> notation, String typed) {
    String about = typed + " as " + notation.symbol() + ", seed " + SEED;
    T value = notation.read(typed).value().orElseThrow(() -> new AssertionError(about));
    String shown = notation.show(value);
    T again =
        notation
            .withUnitRequired()
            .read(shown)
            .value()
            .orElseThrow(() -> new AssertionError(about));
    assertThat(notation.show(again)).as(about).isEqualTo(shown);
    String bare = notation.showBare(value);
    assertThat(notation.read(bare).value()).as(about).contains(again);
    if (typed.matches("[\\d.]+")) {
      int decimals = Math.max(0, new BigDecimal(bare).scale());
      double halfDigit = 0.5 * Math.pow(10, -decimals);
      assertThat(Double.parseDouble(bare))
          .as(about)
          .isCloseTo(Double.parseDouble(typed), within(halfDigit * (1 + 1e-6)));
    }
  }

  @Test
  void a_wind_survives_both_ways_of_showing_it() {
    Random random = new Random(SEED);
    for (UnitSystem system : UnitSystem.values()) {
      WindNotation notation = Notations.wind(system);
      for (int i = 0; i < 500; i++) {
        double mean = random.nextDouble() * random.nextInt(20);
        Speed gust = new Speed(mean * (1 + random.nextInt(3) * 0.4));
        Optional<Bearing> from =
            switch (random.nextInt(3)) {
              case 0 -> Optional.empty();
              case 1 -> Optional.of(new Bearing(22.5 * random.nextInt(16)));
              default -> Optional.of(new Bearing(random.nextDouble() * 360));
            };
        survives(notation, new Wind(new Speed(mean), gust, from));
      }
    }
  }

  private static void survives(WindNotation notation, Wind wind) {
    String about = wind + ", seed " + SEED;
    Reading<Wind> reading = notation.read(notation.show(wind));
    assertThat(reading.objection()).as(about).isEmpty();
    Wind again = reading.value().orElseThrow();
    assertThat(notation.show(again)).as(about).isEqualTo(notation.show(wind));
    assertThat(notation.withUnitRequired().read(notation.showShort(wind)))
        .as(about)
        .isEqualTo(reading);
    double halfTenth_mps = 0.05 * 0.44704 + 0.05;
    assertThat(again.tested().metresPerSecond())
        .as(about)
        .isCloseTo(wind.tested().metresPerSecond(), within(halfTenth_mps));
    if (wind.tested().metresPerSecond() > 0.1) {
      assertThat(again.from().isPresent()).as(about).isEqualTo(wind.from().isPresent());
    }
    wind.from()
        .ifPresent(
            from ->
                assertThat(from.degreesTo(again.from().orElseThrow()))
                    .as(about)
                    .isCloseTo(0, within(0.5001)));
  }

  @Test
  void a_bearing_survives_show_then_read() {
    Random random = new Random(SEED);
    Notation<Bearing> notation = Notations.bearing();
    for (int i = 0; i < 1000; i++) {
      Bearing bearing = new Bearing(random.nextDouble() * 360);
      String about = bearing + ", seed " + SEED;
      String shown = notation.show(bearing);
      Bearing again = notation.read(shown).value().orElseThrow(() -> new AssertionError(about));
      assertThat(bearing.degreesTo(again)).as(about).isCloseTo(0, within(0.5001));
      assertThat(notation.show(again)).as(about).isEqualTo(shown);
    }
  }

  @Test
  void whatever_is_typed_is_answered_in_one_safe_sentence() {
    Random random = new Random(SEED);
    List<Notation<?>> all = new ArrayList<>(notations());
    all.addAll(
        List.of(
            Notations.bearing(),
            Notations.wind(UnitSystem.US),
            Notations.wind(UnitSystem.METRIC).withUnitRequired()));
    for (int i = 0; i < 3000; i++) {
      String typed = noise(random);
      Notation<?> notation = all.get(random.nextInt(all.size()));
      assertThatCode(() -> answered(notation, typed))
          .as("%s, seed %d, text %d", typed, SEED, i)
          .doesNotThrowAnyException();
    }
  }

  private static <T> void answered(Notation<T> notation, String typed) {
    Reading<T> reading = notation.read(typed);
    reading
        .value()
        .ifPresent(value -> assertThat(notation.read(notation.show(value)).value()).isPresent());
    reading
        .objection()
        .ifPresent(
            sentence -> {
              assertThat(sentence).contains("; type ").endsWith(".").hasSizeLessThan(200);
              assertThat(sentence.chars().noneMatch(Character::isISOControl)).isTrue();
            });
  }

  private static final List<String> SCRAPS =
      List.of(
          "1",
          "6",
          "9",
          "240",
          "0",
          "1 5/8",
          "/",
          ".",
          ",",
          "-",
          "+",
          " ",
          "g",
          "g9",
          "SW",
          "mph",
          "m/s",
          "in",
          "'",
          "\"",
          "°",
          "F",
          "C",
          "lb",
          "oz",
          "B3",
          "calm",
          "from",
          "s",
          "N·s",
          "NaN",
          "\u001b[",
          "\u0000",
          "é",
          "٣",
          "𝟛",
          "\ud83d",
          "999999999999",
          "hPa",
          "kt",
          "m",
          "h");

  private static String noise(Random random) {
    StringBuilder text = new StringBuilder();
    int length = 1 + random.nextInt(random.nextInt(8) == 0 ? 60 : 6);
    for (int i = 0; i < length; i++) {
      text.append(SCRAPS.get(random.nextInt(SCRAPS.size())));
    }
    return text.toString();
  }
}
