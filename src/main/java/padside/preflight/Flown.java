package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.physics.Dispersion;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.safety.Case;

/**
 * A launch with what it comes to.
 *
 * @param field the field's largest wind; absent while field or recovery are not known
 * @param path as {@link Outlook#path}
 * @param scattered the same launch with scatter
 */
record Flown(
    Launch launch,
    Prediction prediction,
    Optional<Case.FieldLimit> field,
    List<Outlook.PathPoint> path,
    Optional<Dispersion> scattered,
    Optional<Sunlight> sun) {
  Flown {
    path = List.copyOf(path);
  }

  /** The nominal flight alone. */
  static Flown of(Launch launch, Prediction prediction) {
    return new Flown(
        launch, prediction, Optional.empty(), List.of(), Optional.empty(), Optional.empty());
  }

  /** Whether something comes down that has left the rod with its recovery known. */
  boolean lands() {
    return prediction.leftRod() && launch.recovery().isPresent();
  }

  Flown withField(Optional<Case.FieldLimit> limit) {
    return new Flown(launch, prediction, limit, path, scattered, sun);
  }

  Flown withScattered(Dispersion flights) {
    return new Flown(launch, prediction, field, path, Optional.of(flights), sun);
  }

  Flown withPath(List<Outlook.PathPoint> points, Optional<Sunlight> light) {
    return new Flown(launch, prediction, field, points, scattered, light);
  }
}
