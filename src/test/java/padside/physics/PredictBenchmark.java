package padside.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Time of one flight, averaged over 64 random rockets so that no branch is always the same: the
 * program's beside the reference library's adaptive integrators at tolerances where both are about
 * equally far from the reference (apogee within 0.01 %, landing within 2 cm; {@link
 * ReferenceIntegratorTest} holds them to it), and beside a tighter one.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PredictBenchmark {
  private static final int FLIGHTS = 64;

  private final List<Trial> trials = new ArrayList<>();
  private final List<Launch> launches = new ArrayList<>();
  private int next;

  @Setup
  public void build() {
    Random random = new Random(20);
    for (int i = 0; i < FLIGHTS; i++) {
      Trial trial = Trial.random(random);
      trials.add(trial);
      launches.add(trial.launch());
    }
  }

  /** Flies the one launch a flier would call usual: a C6 at 60 g, 12 inch chute, 6 mph. */
  @Benchmark
  public Prediction nominal() {
    return Flight.predict(NOMINAL);
  }

  @Benchmark
  public Prediction mixed() {
    return Flight.predict(launches.get(turn()));
  }

  @Benchmark
  public double mixedByDormandPrince54() {
    return fly(new DormandPrince54Integrator(1e-10, 10, EQUAL_54, EQUAL_54 / 1000));
  }

  @Benchmark
  public double mixedByDormandPrince853() {
    return fly(new DormandPrince853Integrator(1e-10, 10, EQUAL_853, EQUAL_853 / 1000));
  }

  /** Tolerance, in metres and metres per second, at which the 5(4) pair is as good as ours. */
  static final double EQUAL_54 = 1e-5;

  /** The same for the 8(5,3) pair. */
  static final double EQUAL_853 = 1e-5;

  private static final Launch NOMINAL = Rockets.nominal();

  private double fly(ODEIntegrator integrator) {
    return new ReferenceFlight(trials.get(turn()), integrator).fly().landingS;
  }

  private int turn() {
    next = (next + 1) % FLIGHTS;
    return next;
  }
}
