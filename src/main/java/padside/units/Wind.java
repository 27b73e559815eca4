package padside.units;

import java.util.Optional;

/**
 * A wind as read at one height: mean, gust (at least the mean; equal to it when none was noted) and
 * the bearing it comes <em>from</em>, absent when nobody looked.
 */
public record Wind(Speed mean, Speed gust, Optional<Bearing> from) {
  /** Refuses a negative mean and a gust below the mean. */
  public Wind {
    if (mean.metresPerSecond() < 0) {
      throw new IllegalArgumentException("wind cannot be negative: " + mean);
    }
    if (gust.metresPerSecond() < mean.metresPerSecond()) {
      throw new IllegalArgumentException("gust below mean: " + gust + " < " + mean);
    }
  }

  public static Wind calm() {
    return new Wind(new Speed(0), new Speed(0), Optional.empty());
  }

  /** The value held against limits: the larger of mean and gust, which is the gust. */
  public Speed tested() {
    return gust;
  }

  /** The same direction and gustiness with the tested value moved to {@code tested}. */
  public Wind scaledTo(Speed tested) {
    double ratio =
        gust.metresPerSecond() == 0 ? 1 : mean.metresPerSecond() / gust.metresPerSecond();
    return new Wind(new Speed(tested.metresPerSecond() * ratio), tested, from);
  }
}
