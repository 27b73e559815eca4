package padside.physics;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import padside.units.Length;
import padside.units.Speed;

/**
 * One launch flown many times with scatter: where the flights come down, where they top out and how
 * fast each delay on sale would fire. Flights count from 0; metres are from the pad.
 */
public final class Dispersion {
  private static final double NEVER_SAFE = Double.POSITIVE_INFINITY;

  private final double[] landingEastM;
  private final double[] landingNorthM;
  private final double[] apogeeEastM;
  private final double[] apogeeNorthM;
  private final double[] apogeeM;
  private final double[] highestM;

  /** By delay on sale, then by flight. */
  private final double[][] firingAirspeedMps;

  private Dispersion(int flights, int delays) {
    landingEastM = new double[flights];
    landingNorthM = new double[flights];
    apogeeEastM = new double[flights];
    apogeeNorthM = new double[flights];
    apogeeM = new double[flights];
    highestM = new double[flights];
    firingAirspeedMps = new double[delays][flights];
  }

  /**
   * Flies every draw.
   *
   * @param abandoned asked before each flight
   * @throws CancellationException once {@code abandoned} answers true
   */
  public static Dispersion fly(
      Launch launch, Scatter scatter, Draws draws, BooleanSupplier abandoned) {
    ScatteredFlights flights = new ScatteredFlights(launch, scatter, draws);
    Dispersion dispersion = new Dispersion(draws.flights(), launch.delaysOnSale().size());
    double meanMps = launch.wind().wind().mean().metresPerSecond();
    double gustMps = launch.wind().wind().gust().metresPerSecond();
    for (int i = 0; i < draws.flights(); i++) {
      if (abandoned.getAsBoolean()) {
        throw new CancellationException();
      }
      dispersion.keep(i, flights.fly(i, meanMps, gustMps));
    }
    return dispersion;
  }

  private void keep(int flight, FlightPath path) {
    landingEastM[flight] = path.state()[0];
    landingNorthM[flight] = path.state()[1];
    Passage passage = path.passage();
    apogeeEastM[flight] = passage.apogeeEastM();
    apogeeNorthM[flight] = passage.apogeeNorthM();
    apogeeM[flight] = passage.apogeeM();
    highestM[flight] = path.highestM();
    for (int row = 0; row < firingAirspeedMps.length; row++) {
      Optional<double[]> fired = passage.fired(row);
      firingAirspeedMps[row][flight] =
          fired.isPresent() ? path.airspeedMps(fired.get()) : NEVER_SAFE;
    }
  }

  /** How many flights were flown. */
  public int flights() {
    return landingEastM.length;
  }

  /** Where one flight lands, east of the pad; 0 when it never left the rod. */
  public double landingEastM(int flight) {
    return landingEastM[flight];
  }

  /** Where one flight lands, north of the pad; 0 when it never left the rod. */
  public double landingNorthM(int flight) {
    return landingNorthM[flight];
  }

  /** The place under one flight's apogee, east of the pad. */
  public double apogeeEastM(int flight) {
    return apogeeEastM[flight];
  }

  /** The place under one flight's apogee, north of the pad. */
  public double apogeeNorthM(int flight) {
    return apogeeNorthM[flight];
  }

  /** Apogee of one flight, above the pad, as if no ejection came first. */
  public double apogeeM(int flight) {
    return apogeeM[flight];
  }

  /** The height that this share of the flights as flown stay at or below. */
  public Length highest(double share) {
    double[] sorted = highestM.clone();
    Arrays.sort(sorted);
    int rank = (int) Math.ceil(share * sorted.length) - 1;
    return new Length(sorted[Math.max(0, Math.min(sorted.length - 1, rank))]);
  }

  /**
   * Speed through the air at which one flight's charge fires.
   *
   * @param delay place in the launch's delays on sale
   * @return infinite when the ground comes first or the rocket never left the rod
   */
  public double firingAirspeedMps(int delay, int flight) {
    return firingAirspeedMps[delay][flight];
  }

  /**
   * Share of the flights, from 0 to 1, whose charge fires in the air and at {@code most} or less.
   */
  public double shareFiringWithin(int delay, Speed most) {
    return Arrays.stream(firingAirspeedMps[delay])
            .filter(airspeed -> airspeed <= most.metresPerSecond())
            .count()
        / (double) flights();
  }

  /** The ellipse that this share of such landings lies in, were they spread normally. */
  public Ellipse landing(double share) {
    return Ellipse.holding(share, landingEastM, landingNorthM);
  }

  /** The ellipse on the ground that this share of such apogees stands over. */
  public Ellipse apogee(double share) {
    return Ellipse.holding(share, apogeeEastM, apogeeNorthM);
  }
}
