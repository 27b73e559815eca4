package padside.preflight;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.physics.WindProfile;
import padside.safety.Case;
import padside.site.FieldShape;
import padside.site.Landing;
import padside.units.Bearing;
import padside.units.Speed;
import padside.units.Wind;

/**
 * The largest wind with which the predicted landing still lies inside the field, the wind's
 * direction and its ratio of gust to mean kept. Where nobody noted a direction, the worst of
 * sixteen is taken.
 */
final class FieldLimits {
  /** Winds are searched up to here, twice what any code here allows. */
  static final Speed SEARCHED_TO = new Speed(20);

  private static final int STEPS = 16;
  private static final int HALVINGS = 12;
  private static final int DIRECTIONS = 16;

  private final Launch launch;
  private final FieldShape field;
  private final Wind wind;

  private FieldLimits(Launch launch, FieldShape field, Wind wind) {
    this.launch = launch;
    this.field = field;
    this.wind = wind;
  }

  /** The limit, without an edge where landings stay inside up to {@link #SEARCHED_TO}. */
  static Case.FieldLimit of(Launch launch, FieldShape field) {
    Wind wind = launch.wind().wind();
    if (wind.from().isPresent()) {
      return new FieldLimits(launch, field, wind).limit();
    }
    return IntStream.range(0, DIRECTIONS)
        .mapToObj(i -> new Bearing(360.0 * i / DIRECTIONS))
        .map(from -> new Wind(wind.mean(), wind.gust(), Optional.of(from)))
        .map(turned -> new FieldLimits(launch, field, turned).limit())
        .min(Comparator.comparingDouble(limit -> limit.wind().metresPerSecond()))
        .orElseThrow();
  }

  private Case.FieldLimit limit() {
    double step = SEARCHED_TO.metresPerSecond() / STEPS;
    for (int i = 0; i <= STEPS; i++) {
      if (!field.contains(landing(i * step))) {
        return i == 0 ? between(0, 0) : between((i - 1) * step, i * step);
      }
    }
    return new Case.FieldLimit(SEARCHED_TO, Optional.empty());
  }

  /** Halves the stretch between a wind that lands inside and one that lands outside. */
  private Case.FieldLimit between(double insideMps, double outsideMps) {
    double low = insideMps;
    double high = outsideMps;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (field.contains(landing(middle))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new Case.FieldLimit(
        new Speed(low), Optional.of(field.edgeToward(landing(high).bearing())));
  }

  private Landing landing(double testedMps) {
    Wind scaled = wind.scaledTo(new Speed(testedMps));
    WindProfile profile = new WindProfile(scaled, launch.wind().readingHeight());
    Prediction.Landing landing = Flight.predict(launch.withWind(profile)).landing();
    return Landing.of(landing.east().metres(), landing.north().metres());
  }
}
