package padside.physics;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import padside.units.Bearing;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/**
 * Time of a thousand scattered flights of the usual launch, of the fan of their landings up to a
 * limit of 5 m/s, and of one track of a hundred points. Once as the compiler can best, once as the
 * launcher lets it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DispersionBenchmark {
  private static final int FLIGHTS = 1000;
  private static final Draws DRAWS = Draws.of(FLIGHTS, 1);
  private static final Launch LAUNCH =
      Rockets.nominal()
          .withWind(
              WindProfile.of(
                  new Wind(Speed.ofMph(6), Speed.ofMph(9), Optional.of(new Bearing(240)))));

  private final double[] eastM = new double[FLIGHTS];
  private final double[] northM = new double[FLIGHTS];

  @Benchmark
  public Dispersion dispersion() {
    return Dispersion.fly(LAUNCH, Rockets.scatter(), DRAWS, () -> false);
  }

  @Benchmark
  public double fan() {
    LandingFan fan = LandingFan.of(LAUNCH, Rockets.scatter(), DRAWS, () -> false);
    for (int tenths = 0; tenths <= 50; tenths += 5) {
      fan.land(new Speed(tenths / 10.0), eastM, northM);
    }
    return eastM[0];
  }

  @Benchmark
  public List<TrackPoint> track() {
    return Flight.track(LAUNCH, new TimeSpan(0.9));
  }

  @Benchmark
  public Draws draws() {
    return Draws.of(FLIGHTS, 2);
  }
}
