package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.Wind;

class WindProfileTest {
  /** Factors of the one-seventh power law, computed beforehand from (z/zr)^(1/7). */
  @ParameterizedTest
  @CsvSource({
    "2, 10, 1.258499",
    "3, 10, 1.187668",
    "10, 50, 1.258499",
    "10, 100, 1.389495",
    "10, 150, 1.472357",
    "10, 300, 1.625614"
  })
  void wind_grows_with_the_seventh_root_of_height(double readM, double atM, double factor) {
    WindProfile profile = new WindProfile(wind(4, Optional.empty()), new Length(readM));
    double speed = profile.speedAt(new Length(atM)).metresPerSecond();
    assertThat(speed / 4).isCloseTo(factor, within(1e-5));
  }

  @Test
  void wind_is_constant_below_the_reading_height() {
    WindProfile profile = WindProfile.of(wind(4, Optional.empty()));
    assertThat(profile.speedAt(new Length(0))).isEqualTo(new Speed(4));
    assertThat(profile.speedAt(new Length(1.9))).isEqualTo(new Speed(4));
  }

  @Test
  void wind_from_south_west_blows_towards_north_east() {
    WindProfile profile = WindProfile.of(wind(4, Optional.of(new Bearing(225))));
    assertThat(profile.flow().eastMps()).isCloseTo(4 * Math.sqrt(0.5), within(1e-12));
    assertThat(profile.flow().northMps()).isCloseTo(4 * Math.sqrt(0.5), within(1e-12));
  }

  @Test
  void direction_is_known_when_noted_and_does_not_matter_in_a_calm() {
    assertThat(WindProfile.of(wind(4, Optional.of(new Bearing(0)))).directionKnown()).isTrue();
    assertThat(WindProfile.of(wind(4, Optional.empty())).directionKnown()).isFalse();
    assertThat(WindProfile.calm().directionKnown()).isTrue();
  }

  @Test
  void reading_height_outside_its_range_is_refused() {
    Wind calm = Wind.calm();
    assertThatThrownBy(() -> new WindProfile(calm, new Length(0)))
        .isInstanceOf(RefusedInput.class)
        .hasMessage("Wind reading height 0.00 m is outside 0.1 to 100 m; check the unit.");
    assertThatThrownBy(() -> new WindProfile(calm, new Length(101)))
        .hasMessageContaining("101.00 m");
  }

  private static Wind wind(double mps, Optional<Bearing> from) {
    return new Wind(new Speed(mps), new Speed(mps), from);
  }
}
