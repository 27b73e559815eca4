package padside.physics;

import static java.util.Comparator.comparingDouble;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/**
 * The closed forms of a descent against Hipparchus' 8(5,3) integrator at 1e-10, which carries the
 * same state down step by step.
 */
class SettledDescentTest {
  private static final double G = 9.80665;
  private static final double KG = 0.05;

  /** A canopy or streamer that falls at some speed at the pad, in a wind from west. */
  private record Fall(double mps, double windMps, double readingM) {
    static Fall random(Random random) {
      double mps = 0.8 * Math.pow(15, random.nextDouble());
      return new Fall(mps, 10 * random.nextDouble(), random.nextInt(3) == 0 ? 10 : 2);
    }

    double dragAreaM2() {
      return 2 * KG * G / (density(0) * mps * mps);
    }

    static double density(double z) {
      return 1.225 * Math.pow(1 - 0.0065 * z / 288.15, G / (287.05287 * 0.0065) - 1);
    }

    double wind(double z) {
      return windMps * Math.pow(Math.max(1, z / readingM), 1.0 / 7);
    }

    Forces forces() {
      Motor motor = new Motor(Rockets.c6().curve(), new Mass(0.002), new Mass(0.001));
      Launch launch =
          new Launch(
              new Airframe(new Mass(KG - 0.001), Length.ofMillimetres(25), 0.75),
              List.of(Stage.of(motor)),
              Rod.vertical(new Length(1)),
              Air.standardAt(new Length(0)),
              new WindProfile(
                  new Wind(new Speed(windMps), new Speed(windMps), Optional.of(new Bearing(270))),
                  new Length(readingM)),
              Optional.of(new TimeSpan(5)),
              Optional.of(new CanopyDrag(1, dragAreaM2(), CanopyDrag.ReferenceArea.FLAT_CANOPY)),
              List.of());
      Conditions planned = Conditions.planned(launch);
      Forces forces = new Forces(launch, Burn.of(launch), planned, G);
      forces.open(planned);
      forces.aboveReading(true);
      return forces;
    }

    /** Least height the series is used at. */
    double floorM() {
      return Math.max(1.001 * readingM, 8 * mps * mps / G);
    }

    /** A state as far from the settled fall, to a tenth, as still counts as settled. */
    double[] hardlySettled(SettledDescent settled, Random random) {
      double z = 1.6 * floorM() + 300 * random.nextDouble() * random.nextDouble();
      double aside = mps * random.nextGaussian();
      double up = mps * Math.max(-1, random.nextGaussian());
      for (double share = 1; share > 1e-3; share *= 0.9) {
        double[] state = {0, 0, z, wind(z) + share * aside, 0, share * up - mps};
        if (settled.reached(state)) {
          return state;
        }
      }
      throw new IllegalStateException("never settled: " + this);
    }

    /** East, seconds, and the rates of east and height once a state has come down so far. */
    double[] down(double[] from, double floor) {
      ODEState state = new ODEState(from[2], new double[] {from[0], 0, from[3], from[5]});
      ODEIntegrator integrator = new DormandPrince853Integrator(1e-9, 50, 1e-10, 1e-10);
      if (floor < readingM) {
        state = integrator.integrate(new Motion(this), state, readingM);
      }
      return integrator.integrate(new Motion(this), state, floor).getPrimaryState();
    }
  }

  /** By height: east, time, and the two rates. */
  private record Motion(Fall fall) implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return 4;
    }

    @Override
    public double[] computeDerivatives(double z, double[] y) {
      double aside = y[2] - fall.wind(z);
      double push = fall.dragAreaM2() * Fall.density(z) / (2 * KG) * Math.hypot(aside, y[3]);
      return new double[] {y[2] / y[3], 1 / y[3], -push * aside / y[3], (-push * y[3] - G) / y[3]};
    }
  }

  /** What came of a closed form, less what the reference says. */
  private record Miss(double eastM, double seconds, double eastMps, double upMps) {
    static Miss of(double[] end, double seconds, double[] reference) {
      return new Miss(
          Math.abs(end[0] - reference[0]),
          Math.abs(seconds - reference[1]),
          Math.abs(end[3] - reference[2]),
          Math.abs(end[5] - reference[3]));
    }
  }

  private static void assertWithin(Miss most, List<Miss> misses) {
    assertThat(misses).hasSizeGreaterThan(100);
    assertThat(largest(misses, Miss::eastM)).as("east").isLessThan(most.eastM);
    assertThat(largest(misses, Miss::seconds)).as("seconds").isLessThan(most.seconds);
    assertThat(largest(misses, Miss::eastMps)).as("speed aside").isLessThan(most.eastMps);
    assertThat(largest(misses, Miss::upMps)).as("speed up").isLessThan(most.upMps);
  }

  private static double largest(List<Miss> misses, ToDoubleFunction<Miss> of) {
    return misses.stream().mapToDouble(of).max().orElseThrow();
  }

  /**
   * Falls of 0.8 to 12 m/s in winds up to 10 m/s, from where they first count as settled: as far
   * off the settled fall as that may be, up to 300 m above the least height.
   */
  @Test
  void settled_descent_ends_where_the_reference_does() {
    Random random = new Random(1);
    List<Miss> misses = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      Fall fall = Fall.random(random);
      SettledDescent settled = new SettledDescent(fall.forces());
      double[] state = fall.hardlySettled(settled, random);
      double seconds = settled.glide(state);
      double[] end = settled.state();
      assertThat(end[2] == 0).isEqualTo(settled.landed());
      misses.add(Miss.of(end, seconds, fall.down(state, end[2])));
    }
    assertWithin(new Miss(0.075, 0.008, 0.025, 0.025), misses);
    List<Miss> usual = misses.stream().sorted(comparingDouble(Miss::eastM)).limit(360).toList();
    assertWithin(new Miss(0.025, 0.005, 0.025, 0.025), usual);
  }

  /** The last metres alone, begun from a state the reference has brought down from high above. */
  @Test
  void last_metres_end_where_the_reference_does() {
    Random random = new Random(2);
    List<Miss> misses = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      Fall fall = Fall.random(random);
      Forces forces = fall.forces();
      LastMetres lastMetres = new LastMetres(forces);
      double floor = fall.floorM();
      double[] high = {0, 0, 10 * floor, forces.windEast(10 * floor), 0, -fall.mps};
      double[] at = fall.down(high, floor);
      double[] state = {0, 0, floor, at[2], 0, at[3]};
      if (lastMetres.areSettled(floor)) {
        double[] reference = fall.down(state, 0);
        misses.add(Miss.of(state, lastMetres.fall(state), reference));
      }
    }
    assertWithin(new Miss(0.08, 0.008, 0.025, 0.025), misses);
  }

  /** Its closed form has nothing for the fall that a strong wind's shear slows. */
  @Test
  void fast_fall_in_a_strong_wind_is_left_to_the_integrator_near_the_ground() {
    Fall streamer = new Fall(9, 8, 2);
    SettledDescent settled = new SettledDescent(streamer.forces());
    double[] state = streamer.hardlySettled(settled, new Random(3));
    settled.glide(state);
    assertThat(settled.landed()).isFalse();
    assertThat(settled.state()[2]).isCloseTo(8 * 9 * 9 / G, within(0.01));
  }
}
