package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random flights against the Hipparchus 8(5,3) integrator at a tolerance of 1e-10. */
class ReferenceIntegratorTest {
  private static final int FLIGHTS = 60;

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void random_flights_agree_with_the_reference(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < FLIGHTS; i++) {
      Trial trial = Trial.random(random);
      Prediction ours = Flight.predict(trial.launch());
      ReferenceFlight reference =
          new ReferenceFlight(trial, new DormandPrince853Integrator(1e-10, 5, 1e-10, 1e-10)).fly();
      agree("seed %d, flight %d, %s".formatted(seed, i, trial), ours, reference);
    }
  }

  private static void agree(String which, Prediction ours, ReferenceFlight reference) {
    close(which + " rod", ours.rodExitSpeed().metresPerSecond(), reference.rodExitMps, 1e-3);
    close(which + " apogee", ours.apogee().metres(), reference.apogeeM, 1e-3);
    double best = reference.apogeeS - reference.burnoutS;
    close(which + " best delay", ours.bestDelay().seconds(), best, 1e-3);
    close(which + " time", ours.flightTime().seconds(), reference.landingS, 1e-3);
    double east = ours.landing().east().metres() - reference.atLanding[0];
    double north = ours.landing().north().metres() - reference.atLanding[1];
    double distance = Math.hypot(reference.atLanding[0], reference.atLanding[1]);
    assertThat(Math.hypot(east, north))
        .as(which + " landing")
        .isLessThan(Math.max(0.05, 1e-3 * distance));
  }

  private static void close(String which, double ours, double reference, double share) {
    assertThat(ours).as(which).isCloseTo(reference, within(share * Math.abs(reference)));
  }
}
