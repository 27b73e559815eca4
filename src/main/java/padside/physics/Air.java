package padside.physics;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import padside.units.Length;
import padside.units.Pressure;
import padside.units.Temperature;

/**
 * The air over one field: its density at the pad and how it thins with height.
 *
 * <p>Above the pad the temperature falls by the standard 6.5 K/km from the pad's own temperature
 * and the pressure follows in hydrostatic balance (US Standard Atmosphere 1976 and ISO 2533, valid
 * to 11 km; geometric height is taken for geopotential, 0.05 m in 500 m). A uniform air keeps the
 * pad's density at every height.
 */
public record Air(Density density, Temperature temperature, boolean uniform) {
  /** Sea-level temperature, US Standard Atmosphere 1976 / ISO 2533. */
  private static final double SEA_LEVEL_K = 288.15;

  /** Sea-level pressure, same source. */
  private static final double SEA_LEVEL_PA = 101325.0;

  /** Fall of temperature with height, same source. */
  static final double LAPSE_KPM = 0.0065;

  /** Gas constant of dry air, R* 8.31432 J/(mol K) over 28.9644 g/mol, same source. */
  private static final double DRY_AIR_JPKGK = 8314.32 / 28.9644;

  /** Gas constant of water vapour, read at second hand. */
  private static final double VAPOUR_JPKGK = 461.495;

  /** Exponent g0/(L R) of pressure; density has one less. */
  static final double PRESSURE_EXPONENT =
      Flight.STANDARD_GRAVITY_MPS2 / (LAPSE_KPM * DRY_AIR_JPKGK);

  private static final double LOWEST_FIELD_M = -500;
  private static final double HIGHEST_FIELD_M = 9000;

  /** The standard air over a field at this elevation above sea level. */
  public static Air standardAt(Length elevation) {
    return at(elevation, Optional.empty(), Optional.empty(), OptionalDouble.empty());
  }

  /**
   * The air over a field where some readings were taken; what was not read is standard for the
   * elevation. Humidity is a share from 0 to 1, dry when absent.
   *
   * @param stationPressure the pressure at the field itself, not reduced to sea level
   */
  public static Air at(
      Length elevation,
      Optional<Temperature> temperature,
      Optional<Pressure> stationPressure,
      OptionalDouble humidity) {
    return read(
        temperature.orElse(standardTemperature(elevation)),
        stationPressure.orElse(standardPressure(elevation)),
        humidity.orElse(0));
  }

  /** Air of one density at every height. */
  public static Air uniform(Density density) {
    return new Air(density, new Temperature(SEA_LEVEL_K), true);
  }

  /**
   * Density as the sum of dry air and water vapour, each an ideal gas; saturation vapour pressure
   * after Alduchov and Eskridge (1996), eq. 21, from memory. Within 0.08 % of CIPM-2007 between -10
   * and 20 °C.
   */
  private static Air read(Temperature temperature, Pressure pressure, double humidity) {
    double celsius = temperature.inCelsius();
    RefusedInput.unless(
        celsius >= -60 && celsius <= 60,
        say("Temperature %.1f °C is outside -60 to 60 °C; check the unit.", celsius));
    RefusedInput.unless(
        pressure.pascals() >= 25000 && pressure.pascals() <= 110000,
        say(
            "Station pressure %.1f hPa is outside 250 to 1100 hPa; check the unit.",
            pressure.inHectopascals()));
    RefusedInput.unless(
        humidity >= 0 && humidity <= 1,
        say("Relative humidity %.0f %% is outside 0 to 100 %%.", humidity * 100));
    double vapour = humidity * 610.94 * Math.exp(17.625 * celsius / (celsius + 243.04));
    double density =
        (pressure.pascals() - vapour) / (DRY_AIR_JPKGK * temperature.kelvins())
            + vapour / (VAPOUR_JPKGK * temperature.kelvins());
    return new Air(new Density(density), temperature, false);
  }

  /** Standard temperature at an elevation above sea level. */
  public static Temperature standardTemperature(Length elevation) {
    double metres = elevation.metres();
    RefusedInput.unless(
        metres >= LOWEST_FIELD_M && metres <= HIGHEST_FIELD_M,
        say("Field elevation %.0f m is outside -500 to 9000 m; check the unit.", metres));
    return new Temperature(SEA_LEVEL_K - LAPSE_KPM * metres);
  }

  /** Standard pressure at an elevation above sea level. */
  public static Pressure standardPressure(Length elevation) {
    double ratio = standardTemperature(elevation).kelvins() / SEA_LEVEL_K;
    return new Pressure(SEA_LEVEL_PA * Math.pow(ratio, PRESSURE_EXPONENT));
  }

  /**
   * How far above the pad the pressure has fallen to this: US Standard Atmosphere 1976, eq. 33a
   * solved for the height, from the pad's own pressure and temperature.
   */
  public static Length heightAt(Pressure aloft, Pressure pad, Temperature atPad) {
    double ratio = aloft.pascals() / pad.pascals();
    return new Length(atPad.kelvins() / LAPSE_KPM * (1 - Math.pow(ratio, 1 / PRESSURE_EXPONENT)));
  }

  /** Density at a height above the pad. */
  public Density densityAt(Length height) {
    double ratio = Math.max(0, 1 - thinningPerM() * height.metres());
    return new Density(density.kilogramsPerCubicMetre() * Math.pow(ratio, densityExponent()));
  }

  /** The standard-atmosphere height at which dry air has this density at the pad. */
  public Length densityAltitude() {
    double seaLevel = SEA_LEVEL_PA / (DRY_AIR_JPKGK * SEA_LEVEL_K);
    double ratio = density.kilogramsPerCubicMetre() / seaLevel;
    return new Length(SEA_LEVEL_K / LAPSE_KPM * (1 - Math.pow(ratio, 1 / densityExponent())));
  }

  /** Relative fall of temperature for each metre of height: L/T; zero when uniform. */
  double thinningPerM() {
    return uniform ? 0 : LAPSE_KPM / temperature.kelvins();
  }

  /** Density goes with this power of the temperature ratio. */
  static double densityExponent() {
    return PRESSURE_EXPONENT - 1;
  }

  private static String say(String sentence, double value) {
    return String.format(Locale.ROOT, sentence, value);
  }
}
