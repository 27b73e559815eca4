package padside.site;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import padside.flight.Field;
import padside.units.Bearing;
import padside.units.Length;

/**
 * Time of one landing held against a field of eight edges, over 4096 scattered landings about half
 * of which lie inside; beside it the plain polar reading that the tests hold the program against.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FieldBenchmark {
  private static final int LANDINGS = 4096;

  private final double[] eastM = new double[LANDINGS];
  private final double[] northM = new double[LANDINGS];
  private FieldShape field;
  private PolarField polar;
  private int next;

  @Setup
  public void build() {
    Random random = new Random(22);
    List<Field.Edge> edges =
        IntStream.range(0, 8)
            .mapToObj(
                k ->
                    new Field.Edge(
                        new Bearing(45 * k + 20 * random.nextDouble()),
                        new Length(80 + 80 * random.nextDouble()),
                        "",
                        ""))
            .toList();
    field = FieldShape.of(edges, Optional.empty()).orElseThrow();
    polar = PolarField.of(edges);
    for (int i = 0; i < LANDINGS; i++) {
      eastM[i] = 90 * random.nextGaussian();
      northM[i] = 90 * random.nextGaussian();
    }
  }

  @Benchmark
  public boolean contains() {
    int i = turn();
    return field.contains(eastM[i], northM[i]);
  }

  @Benchmark
  public double margin() {
    int i = turn();
    return field.marginM(eastM[i], northM[i]);
  }

  @Benchmark
  public Length reach() {
    return field.reach(new Bearing(turn() * 360.0 / LANDINGS));
  }

  @Benchmark
  public boolean containsByPolarReading() {
    int i = turn();
    return polar.contains(eastM[i], northM[i]);
  }

  private int turn() {
    next = (next + 1) % LANDINGS;
    return next;
  }
}
