package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/** Landings in every wind, against the flights themselves. */
class LandingFanTest {
  private static final int FLIGHTS = 40;
  private static final Draws DRAWS = Draws.of(FLIGHTS, 5);

  private final double[] eastM = new double[FLIGHTS];
  private final double[] northM = new double[FLIGHTS];

  private static LandingFan fan(Launch launch) {
    return LandingFan.of(launch, Rockets.scatter(), DRAWS, () -> false);
  }

  private static Launch with(Launch launch, Wind wind, Rod rod) {
    WindProfile profile = new WindProfile(wind, launch.wind().readingHeight());
    return launch.withWind(profile).withRod(rod);
  }

  private static Wind wind(double meanMps, double gustMps, double fromDeg) {
    return new Wind(new Speed(meanMps), new Speed(gustMps), Optional.of(new Bearing(fromDeg)));
  }

  private static Dispersion flown(Launch launch, double testedMps) {
    return flown(launch, testedMps, DRAWS);
  }

  private static Dispersion flown(Launch launch, double testedMps, Draws draws) {
    Wind scaled = launch.wind().wind().scaledTo(new Speed(testedMps));
    return Dispersion.fly(
        with(launch, scaled, launch.rod()), Rockets.scatter(), draws, () -> false);
  }

  /** Rockets that lift off well and whose delay suits, half of them from a leaning rod. */
  private static List<Launch> usable(int count, long seed) {
    Random random = new Random(seed);
    List<Launch> launches = new ArrayList<>();
    while (launches.size() < count) {
      Trial trial = Trial.random(random);
      Launch launch = trial.launch();
      Prediction flight = Flight.predict(launch);
      double best = flight.bestDelay().seconds();
      if (trial.chuteM() > 0 && flight.rodExitSpeed().metresPerSecond() > 12 && best > 1) {
        Rod rod = launches.size() % 2 == 0 ? Rod.vertical(new Length(trial.rodM())) : launch.rod();
        launches.add(
            new Launch(
                launch.airframe(),
                launch.stages(),
                rod,
                launch.air(),
                WindProfile.of(wind(3, 4.5, trial.windFromDeg())),
                Optional.of(new TimeSpan(Math.rint(best))),
                launch.recovery(),
                List.of()));
      }
    }
    return launches;
  }

  @Test
  void landings_are_those_of_the_flights_themselves() {
    double worst = 0;
    int off = 0;
    int compared = 0;
    for (Launch launch : usable(20, 17)) {
      LandingFan fan = fan(launch);
      for (double tested = 0.35; tested < 20; tested += 1.3) {
        fan.land(new Speed(tested), eastM, northM);
        Dispersion flown = flown(launch, tested);
        for (int i = 0; i < FLIGHTS; i++) {
          double miss =
              Math.hypot(eastM[i] - flown.landingEastM(i), northM[i] - flown.landingNorthM(i));
          double distance = Math.hypot(flown.landingEastM(i), flown.landingNorthM(i));
          double share = miss / Math.max(0.3, 0.005 * distance);
          worst = Math.max(worst, share);
          off += share > 1 ? 1 : 0;
          compared++;
        }
      }
    }
    assertThat(off / (double) compared).as("worst %.2f", worst).isLessThan(0.005);
    assertThat(worst).isLessThan(6);
  }

  /** Two of 1,024 flights are 0.2 percentage points. */
  @Test
  void share_within_a_circle_is_that_of_the_flights_themselves_to_two_in_a_thousand() {
    int flights = 1024;
    Draws draws = Draws.of(flights, 1);
    double[] east = new double[flights];
    double[] north = new double[flights];
    for (Launch launch : usable(8, 23)) {
      LandingFan fan = LandingFan.of(launch, Rockets.scatter(), draws, () -> false);
      for (double tested = 0.35; tested < 20; tested += 1.3 + tested / 5) {
        fan.land(new Speed(tested), east, north);
        double[] told = distances(i -> Math.hypot(east[i], north[i]), flights);
        Dispersion flown = flown(launch, tested, draws);
        double[] fact =
            distances(i -> Math.hypot(flown.landingEastM(i), flown.landingNorthM(i)), flights);
        for (double share : new double[] {0.5, 0.8, 0.9, 0.95}) {
          int wanted = (int) (share * flights);
          double radiusM = (fact[wanted - 1] + fact[wanted]) / 2;
          long inside = Arrays.stream(told).filter(distance -> distance < radiusM).count();
          assertThat(inside).as("%s m/s, %s", tested, launch).isBetween(wanted - 2L, wanted + 2L);
        }
      }
    }
  }

  private static double[] distances(IntToDoubleFunction of, int flights) {
    return IntStream.range(0, flights).mapToDouble(of).sorted().toArray();
  }

  @Test
  void landings_at_a_level_are_the_flights_to_the_last_bit_and_only_missing_levels_are_flown() {
    Launch launch = usable(1, 3).get(0);
    LandingFan fan = fan(launch);
    fan.land(new Speed(0), eastM, northM);
    assertThat(fan.levelsFlown()).isEqualTo(3);
    Dispersion calm = flown(launch, 0);
    for (int i = 0; i < FLIGHTS; i++) {
      assertThat(eastM[i]).isCloseTo(calm.landingEastM(i), within(1e-9));
      assertThat(northM[i]).isCloseTo(calm.landingNorthM(i), within(1e-9));
    }
    fan.land(new Speed(4), eastM, northM);
    assertThat(fan.levelsFlown()).isEqualTo(6);
    fan.land(new Speed(1), eastM, northM);
    assertThat(fan.levelsFlown()).isEqualTo(7);
    fan.land(new Speed(3.6), eastM, northM);
    assertThat(fan.levelsFlown()).isEqualTo(7);
  }

  @Test
  void turned_fan_is_the_fan_of_the_turned_wind() {
    for (Launch launch : usable(4, 9)) {
      Wind wind = launch.wind().wind();
      double from = wind.from().orElseThrow().degrees();
      Launch turned = with(launch, wind(3, 4.5, from + 112.5), launch.rod());
      double[] east = new double[FLIGHTS];
      double[] north = new double[FLIGHTS];
      fan(launch)
          .turnedBy(Angle.ofDegrees(90))
          .turnedBy(Angle.ofDegrees(22.5))
          .land(new Speed(5), east, north);
      fan(turned).land(new Speed(5), eastM, northM);
      for (int i = 0; i < FLIGHTS; i++) {
        assertThat(east[i]).isCloseTo(eastM[i], within(0.05));
        assertThat(north[i]).isCloseTo(northM[i], within(0.05));
      }
    }
  }

  @Test
  void fans_turned_from_a_vertical_rod_share_what_is_flown() {
    LandingFan fan = fan(usable(1, 3).get(0));
    fan.land(new Speed(3), eastM, northM);
    assertThat(fan.turnedBy(Angle.ofDegrees(30)).levelsFlown()).isEqualTo(fan.levelsFlown());
  }

  @Test
  void calm_launch_has_no_gust_at_any_level_and_wind_from_north() {
    Launch launch = with(Rockets.nominal(), Wind.calm(), Rod.vertical(new Length(0.9)));
    fan(launch).land(new Speed(5), eastM, northM);
    Dispersion flown = flown(with(launch, wind(5, 5, 0), launch.rod()), 5);
    for (int i = 0; i < FLIGHTS; i++) {
      assertThat(northM[i]).isCloseTo(flown.landingNorthM(i), within(1.0)).isNegative();
    }
  }

  @Test
  void an_abandoned_fan_ends_at_the_next_flight() {
    AtomicInteger asked = new AtomicInteger();
    LandingFan fan =
        LandingFan.of(
            Rockets.nominal(), Rockets.scatter(), DRAWS, () -> asked.incrementAndGet() > 50);
    assertThatThrownBy(() -> fan.land(new Speed(5), eastM, northM))
        .isInstanceOf(CancellationException.class);
    assertThat(asked).hasValue(51);
  }

  @Test
  void negative_wind_is_refused() {
    assertThatThrownBy(() -> fan(Rockets.nominal()).land(new Speed(-1), eastM, northM))
        .isInstanceOf(RefusedInput.class);
  }
}
