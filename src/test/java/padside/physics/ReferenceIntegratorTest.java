package padside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random flights against the Hipparchus 8(5,3) integrator at a tolerance of 1e-10. */
class ReferenceIntegratorTest {
  private static final int FLIGHTS = 60;

  /** A tenth of a per cent. */
  private static final double SHARE = 1e-3;

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void random_flights_agree_with_the_reference(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < FLIGHTS; i++) {
      Trial trial = Trial.random(random);
      agree("seed %d, flight %d, %s".formatted(seed, i, trial), trial);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 4})
  void random_two_stage_flights_on_clusters_agree_with_the_reference(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < FLIGHTS; i++) {
      Trial trial = Trial.stacked(random);
      agree("seed %d, flight %d, %s".formatted(seed, i, trial), trial);
    }
  }

  /** One long step could jump over both the reading height and the ground. */
  @Test
  void heavy_rocket_that_hops_just_over_the_reading_height_agrees_with_the_reference() {
    Trial hop =
        new Trial(
            0.99,
            0.0142,
            0.51,
            List.of(
                new Trial.Lit(
                    List.of(0.0, 0.0555, 0.0884, 0.245),
                    List.of(0.0, 63.8, 41.9, 41.9),
                    0.0306,
                    0.0139,
                    1,
                    0)),
            0.4,
            0.4,
            230,
            300,
            69000,
            5,
            287,
            2,
            7,
            0,
            0.7);
    agree("hop", hop);
  }

  private static void agree(String which, Trial trial) {
    Prediction ours = Flight.predict(trial.launch());
    ReferenceFlight reference =
        new ReferenceFlight(trial, new DormandPrince853Integrator(1e-10, 5, 1e-10, 1e-10)).fly();
    close(which + " rod", ours.rodExitSpeed().metresPerSecond(), reference.rodExitMps);
    close(which + " apogee", ours.apogee().metres(), reference.apogeeM);
    double best = reference.apogeeS - reference.burnoutS;
    close(which + " best delay", ours.bestDelay().seconds(), best);
    close(which + " time", ours.flightTime().seconds(), reference.landingS);
    double east = ours.landing().east().metres() - reference.atLanding[0];
    double north = ours.landing().north().metres() - reference.atLanding[1];
    double distance = Math.hypot(reference.atLanding[0], reference.atLanding[1]);
    assertThat(Math.hypot(east, north))
        .as(which + " landing")
        .isLessThan(Math.max(0.05, SHARE * distance));
  }

  private static void close(String which, double ours, double reference) {
    assertThat(ours).as(which).isCloseTo(reference, within(SHARE * Math.abs(reference)));
  }
}
