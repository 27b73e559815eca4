package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.units.Length;
import padside.units.Pressure;
import padside.units.Temperature;

class AirTest {
  /**
   * US Standard Atmosphere 1976 / ISO 2533, geopotential heights: rows computed beforehand from the
   * standard's constants, which were read in a summary of ICAO 7488/2; the tropopause pressure that
   * follows from them, 22 632 Pa, was read there too.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 288.150, 101325.00, 1.225000",
    "100, 287.500, 100129.44, 1.213283",
    "500, 284.900, 95460.84, 1.167269",
    "1000, 281.650, 89874.56, 1.111643",
    "1500, 278.400, 84555.99, 1.058067",
    "2000, 275.150, 79495.20, 1.006490"
  })
  void standard_air_follows_the_standard(double m, double k, double pa, double density) {
    Length height = new Length(m);
    assertThat(Air.standardTemperature(height).kelvins()).isCloseTo(k, within(1e-9));
    assertThat(Air.standardPressure(height).pascals()).isCloseTo(pa, within(0.02));
    assertThat(kgpm3(Air.standardAt(height).density())).isCloseTo(density, within(2e-6));
    assertThat(kgpm3(Air.standardAt(new Length(0)).densityAt(height)))
        .as("thinning with height above a sea-level pad")
        .isCloseTo(density, within(2e-6));
  }

  /** The tropopause row of the same table, 11 km above a sea-level pad. */
  @Test
  void air_thins_as_the_standard_says_up_to_the_tropopause() {
    Air air = Air.standardAt(new Length(0));
    assertThat(kgpm3(air.densityAt(new Length(11000)))).isCloseTo(0.363918, within(1e-6));
  }

  /**
   * CIPM-2007 (Picard et al., Metrologia 45 (2008) 149-155), 400 ppm CO2, and the difference the
   * simple form has from it in per cent: computed beforehand, its coefficients of compressibility
   * from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 101325, 0.5, 1.199314, -0.037",
    "20, 101325, 0, 1.204557, -0.037",
    "15, 101325, 0, 1.225521, -0.043",
    "0, 101325, 0.8, 1.290696, -0.061",
    "-10, 102000, 0.5, 1.350606, -0.075"
  })
  void density_from_readings_differs_from_cipm_as_stated(
      double celsius, double pascals, double humidity, double cipm, double percent) {
    Air air =
        Air.at(
            new Length(1234),
            Optional.of(Temperature.ofCelsius(celsius)),
            Optional.of(new Pressure(pascals)),
            OptionalDouble.of(humidity));
    double difference = 100 * (kgpm3(air.density()) / cipm - 1);
    assertThat(difference).isCloseTo(percent, within(0.001));
  }

  @Test
  void readings_replace_only_the_standard_values_they_stand_for() {
    Length field = new Length(1000);
    Air warm =
        Air.at(field, Optional.of(new Temperature(300)), Optional.empty(), OptionalDouble.empty());
    assertThat(kgpm3(warm.density())).isCloseTo(1.111643 * 281.65 / 300, within(2e-6));
    assertThat(warm.temperature().kelvins()).isEqualTo(300);
  }

  /**
   * Exact inverse of the standard atmosphere, computed beforehand; the formula is the standard's.
   */
  @ParameterizedTest
  @CsvSource({"1.1, 1107.06", "1.0, 2064.30"})
  void density_altitude_inverts_the_standard_air(double density, double metres) {
    Air air = Air.uniform(new Density(density));
    assertThat(air.densityAltitude().metres()).isCloseTo(metres, within(0.01));
  }

  @Test
  void uniform_air_is_the_same_at_every_height() {
    Air air = Air.uniform(new Density(1.2));
    assertThat(air.densityAt(new Length(3000))).isEqualTo(air.density());
  }

  @Test
  void impossible_readings_are_refused_with_the_value_seen() {
    assertThatThrownBy(() -> Air.standardAt(new Length(20000)))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("Field elevation 20000 m is outside -500 to 9000 m; check the unit.");
    assertThatThrownBy(() -> Air.standardAt(new Length(-501))).isInstanceOf(RefusedInput.class);
    assertThatThrownBy(() -> read(75, 101325, 0)).hasMessageContaining("75.0 °C");
    assertThatThrownBy(() -> read(-75, 101325, 0)).hasMessageContaining("-75.0 °C");
    assertThatThrownBy(() -> read(15, 2992, 0)).hasMessageContaining("29.9 hPa");
    assertThatThrownBy(() -> read(15, 299200, 0)).hasMessageContaining("2992.0 hPa");
    assertThatThrownBy(() -> read(15, 101325, 50)).hasMessageContaining("5000 %");
    assertThatThrownBy(() -> read(15, 101325, -0.1)).hasMessageContaining("-10 %");
    assertThatThrownBy(() -> new Density(-1)).hasMessageContaining("-1.0 kg/m³");
    assertThatThrownBy(() -> new Density(Double.NaN)).isInstanceOf(RefusedInput.class);
  }

  private static Air read(double celsius, double pascals, double humidity) {
    return Air.at(
        new Length(0),
        Optional.of(Temperature.ofCelsius(celsius)),
        Optional.of(new Pressure(pascals)),
        OptionalDouble.of(humidity));
  }

  private static double kgpm3(Density density) {
    return density.kilogramsPerCubicMetre();
  }
}
