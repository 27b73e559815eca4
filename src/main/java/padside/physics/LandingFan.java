package padside.physics;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Speed;
import padside.units.Wind;

/**
 * Where every drawn flight of one launch lands in any wind, from calm upward, the wind's direction
 * and its ratio of gust to mean kept; no gust where the launch's wind is calm. With the same draws
 * each landing moves smoothly with the wind, and so does the share that lies inside a field.
 *
 * <p>Flights are flown at those of a row of wind levels that the winds asked for need, kept, and
 * interpolated between. One thread at a time.
 */
public final class LandingFan {
  private final Repeated repeated;
  private final WindLevels levels;
  private final double turnRadians;

  /** All that decides the flights. */
  private record Repeated(Launch launch, Scatter scatter, Draws draws, BooleanSupplier abandoned) {
    WindLevels levels() {
      Wind wind = launch.wind().wind();
      double gustMps = wind.gust().metresPerSecond();
      double meanPerTested = gustMps == 0 ? 1 : wind.mean().metresPerSecond() / gustMps;
      return new WindLevels(new ScatteredFlights(launch, scatter, draws), meanPerTested, abandoned);
    }
  }

  private LandingFan(Repeated repeated, WindLevels levels, double turnRadians) {
    this.repeated = repeated;
    this.levels = levels;
    this.turnRadians = turnRadians;
  }

  /**
   * The fan of a launch; nothing is flown yet.
   *
   * @param abandoned asked before each flight; once it answers true, {@link #land} throws a {@link
   *     CancellationException}
   */
  public static LandingFan of(
      Launch launch, Scatter scatter, Draws draws, BooleanSupplier abandoned) {
    Repeated repeated = new Repeated(launch, scatter, draws, abandoned);
    return new LandingFan(repeated, repeated.levels(), 0);
  }

  /**
   * The fan of the same launch with its wind turned clockwise; where none was noted it comes from
   * north before. From a vertical rod a turned wind only turns the landings, so both fans share
   * what either has flown; a leaning rod stays, and the turned fan flies for itself.
   */
  public LandingFan turnedBy(Angle clockwise) {
    Launch launch = repeated.launch();
    if (launch.rod().tilt().radians() == 0) {
      return new LandingFan(repeated, levels, turnRadians + clockwise.radians());
    }
    Wind wind = launch.wind().wind();
    double degrees = Math.toDegrees(launch.wind().fromRadians()) + clockwise.inDegrees();
    Wind turned = new Wind(wind.mean(), wind.gust(), Optional.of(new Bearing(degrees)));
    return of(
        launch.withWind(new WindProfile(turned, launch.wind().readingHeight())),
        repeated.scatter(),
        repeated.draws(),
        repeated.abandoned());
  }

  /** How many flights there are. */
  public int flights() {
    return repeated.draws().flights();
  }

  /**
   * Writes where each flight lands, metres from the pad, in a wind whose larger of mean and gust is
   * {@code tested}. The arrays hold a place a flight.
   */
  public void land(Speed tested, double[] eastM, double[] northM) {
    RefusedInput.unless(tested.metresPerSecond() >= 0, "A wind cannot be negative.");
    levels.find(tested.metresPerSecond());
    double sin = Math.sin(turnRadians);
    double cos = Math.cos(turnRadians);
    for (int flight = 0; flight < flights(); flight++) {
      double east = levels.eastM(flight);
      double north = levels.northM(flight);
      eastM[flight] = east * cos + north * sin;
      northM[flight] = north * cos - east * sin;
    }
  }

  /** How many levels have been flown so far. */
  int levelsFlown() {
    return levels.flown();
  }
}
