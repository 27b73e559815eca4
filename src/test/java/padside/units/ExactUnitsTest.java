package padside.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * Every unit against its definition, written out anew from the source named. "1959 agreement" is
 * the international yard and pound agreement (US Federal Register 24 FR 5348, 1 July 1959): the
 * yard 0.9144 m, the avoirdupois pound 0.45359237 kg. Where it does not say that a source was read,
 * number, date and place in it are cited from memory.
 */
class ExactUnitsTest {
  /** A few last places of a double. */
  private static final Percentage EXACT = Percentage.withPercentage(1e-13);

  private static final double YARD_M = 0.9144;
  private static final double POUND_KG = 0.45359237;

  /** Third CGPM 1901, kept by the SI brochure: standard acceleration of gravity. */
  private static final double GRAVITY_MPS2 = 9.80665;

  private static <T> void same(
      DoubleFunction<T> of, ToDoubleFunction<T> in, ToDoubleFunction<T> si, double one) {
    for (double number : List.of(1.0, 0.37, 250.0)) {
      T value = of.apply(number);
      assertThat(si.applyAsDouble(value)).isCloseTo(number * one, EXACT);
      assertThat(in.applyAsDouble(value)).isCloseTo(number, EXACT);
    }
  }

  @Test
  void masses_follow_the_1959_agreement_and_the_si_brochure() {
    same(Mass::ofPounds, Mass::inPounds, Mass::kilograms, POUND_KG);
    same(Mass::ofOunces, Mass::inOunces, Mass::kilograms, POUND_KG / 16);
    same(Mass::ofGrams, Mass::inGrams, Mass::kilograms, 0.001);
    assertThat(Mass.ofOunces(1).inGrams())
        .as("NIST SP 811 appendix B.8 and Handbook 44 appendix C: ounce, exact")
        .isCloseTo(28.349523125, EXACT);
  }

  @Test
  void lengths_follow_the_1959_agreement_and_the_si_brochure() {
    same(Length::ofYards, Length::inYards, Length::metres, YARD_M);
    same(Length::ofFeet, Length::inFeet, Length::metres, YARD_M / 3);
    same(Length::ofInches, Length::inInches, Length::metres, YARD_M / 36);
    // US Army drill step, 30 inches: FM 3-21.5 Drill and Ceremonies, from memory.
    same(Length::ofPaces, Length::inPaces, Length::metres, 30 * YARD_M / 36);
    same(Length::ofMiles, Length::inMiles, Length::metres, 1760 * YARD_M);
    same(Length::ofMillimetres, Length::inMillimetres, Length::metres, 0.001);
    same(Length::ofCentimetres, Length::inCentimetres, Length::metres, 0.01);
    same(Length::ofKilometres, Length::inKilometres, Length::metres, 1000);
  }

  @Test
  void speeds_are_lengths_an_hour_or_a_second() {
    same(Speed::ofMph, Speed::inMph, Speed::metresPerSecond, 1760 * YARD_M / 3600);
    same(Speed::ofFeetPerSecond, Speed::inFeetPerSecond, Speed::metresPerSecond, YARD_M / 3);
    same(Speed::ofKilometresPerHour, Speed::inKilometresPerHour, Speed::metresPerSecond, 1 / 3.6);
    // International nautical mile, 1852 m: First International Extraordinary Hydrographic
    // Conference, Monaco 1929; SI brochure 8th edition table 8.
    same(Speed::ofKnots, Speed::inKnots, Speed::metresPerSecond, 1852.0 / 3600);
  }

  @Test
  void thirty_miles_an_hour_are_forty_four_feet_a_second() {
    // 30 x 5280 / 3600 = 44, and 44 x 0.3048 = 13.4112, both without remainder.
    assertThat(Speed.ofMph(30).inFeetPerSecond()).isCloseTo(44, EXACT);
    assertThat(Speed.ofMph(30).metresPerSecond()).isCloseTo(13.4112, EXACT);
    assertThat(Speed.ofMph(20).metresPerSecond()).isCloseTo(8.9408, EXACT);
  }

  @Test
  void temperatures_meet_at_their_fixed_points() {
    // SI brochure 9th edition 2.3.1: t/°C = T/K - 273.15. NIST SP 811 B.8: T/K = (t/°F +
    // 459.67)/1.8.
    assertThat(Temperature.ofCelsius(0).kelvins()).isCloseTo(273.15, EXACT);
    assertThat(Temperature.ofFahrenheit(32).inCelsius()).isCloseTo(0, within(1e-12));
    assertThat(Temperature.ofFahrenheit(212).inCelsius()).isCloseTo(100, within(1e-12));
    assertThat(Temperature.ofFahrenheit(-40).inCelsius()).isCloseTo(-40, within(1e-12));
    assertThat(Temperature.ofCelsius(15).inFahrenheit()).isCloseTo(59, within(1e-12));
    assertThat(Temperature.ofFahrenheit(-459.67).kelvins()).isZero();
  }

  @Test
  void pressures_follow_nist_sp_811() {
    // NIST SP 811 (2008) B.8: inch of mercury, conventional, 3.386389 E+03 Pa; millibar 1 E+02 Pa.
    same(Pressure::ofInchesOfMercury, Pressure::inInchesOfMercury, Pressure::pascals, 3386.389);
    same(Pressure::ofHectopascals, Pressure::inHectopascals, Pressure::pascals, 100);
    same(Pressure::ofKilopascals, Pressure::inKilopascals, Pressure::pascals, 1000);
  }

  @Test
  void pound_force_is_the_pound_at_standard_gravity() {
    same(Force::ofPoundsForce, Force::inPoundsForce, Force::newtons, POUND_KG * GRAVITY_MPS2);
    same(
        Impulse::ofPoundForceSeconds,
        Impulse::inPoundForceSeconds,
        Impulse::newtonSeconds,
        POUND_KG * GRAVITY_MPS2);
    assertThat(Force.ofPoundsForce(1).newtons()).isCloseTo(4.4482216152605, EXACT);
    // 14 CFR 101.22 (read in the regulation): 40,960 N·s are 9,208 lbf·s.
    assertThat(new Impulse(40_960).inPoundForceSeconds()).isCloseTo(9208.2, within(0.05));
  }

  @Test
  void times_and_angles_follow_the_si_brochure() {
    // SI brochure 9th edition table 8: 1 min = 60 s, 1 h = 3600 s, 1° = (π/180) rad.
    same(TimeSpan::ofMilliseconds, TimeSpan::inMilliseconds, TimeSpan::seconds, 0.001);
    same(TimeSpan::ofMinutes, TimeSpan::inMinutes, TimeSpan::seconds, 60);
    same(TimeSpan::ofHours, TimeSpan::inHours, TimeSpan::seconds, 3600);
    same(Angle::ofDegrees, Angle::inDegrees, Angle::radians, Math.PI / 180);
  }

  @Test
  void no_quantity_holds_what_is_not_a_finite_number() {
    List<DoubleFunction<?>> quantities =
        List.of(
            Mass::new,
            Length::new,
            Speed::new,
            Temperature::new,
            Pressure::new,
            Angle::new,
            Bearing::new,
            TimeSpan::new,
            Impulse::new,
            Force::new);
    for (DoubleFunction<?> quantity : quantities) {
      for (double bad : List.of(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY)) {
        assertThatThrownBy(() -> quantity.apply(bad))
            .isInstanceOf(IllegalArgumentException.class)
            .hasMessageContaining("not a finite number");
      }
    }
  }
}
