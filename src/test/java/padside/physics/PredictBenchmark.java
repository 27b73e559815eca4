package padside.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
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
 * equally far from the reference; {@link ReferenceIntegratorTest} holds them to it.
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
    for (Trial trial : trials()) {
      trials.add(trial);
      launches.add(trial.launch());
    }
  }

  /** The rockets flown. */
  static List<Trial> trials() {
    Random random = new Random(20);
    return Stream.generate(() -> Trial.random(random)).limit(FLIGHTS).toList();
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
    return fly(equal54());
  }

  @Benchmark
  public double mixedByDormandPrince853() {
    return fly(equal853());
  }

  /** The 5(4) pair at a tolerance, in metres and metres per second, at which it is as good. */
  static ODEIntegrator equal54() {
    return new DormandPrince54Integrator(1e-10, 10, 3e-5, 3e-8);
  }

  /** The 8(5,3) pair at one. */
  static ODEIntegrator equal853() {
    return new DormandPrince853Integrator(1e-10, 10, 1e-3, 1e-6);
  }

  private static final Launch NOMINAL = Rockets.nominal();

  private double fly(ODEIntegrator integrator) {
    return new ReferenceFlight(trials.get(turn()), integrator).fly().landingS;
  }

  private int turn() {
    next = (next + 1) % FLIGHTS;
    return next;
  }
}
