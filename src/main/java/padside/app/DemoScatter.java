package padside.app;

import java.util.Map;
import java.util.Random;

/**
 * How far the made-up season strays from the model: standard deviations, drawn no further than
 * twice their size. The sizes are chosen, not measured.
 *
 * @param impulse share of the total impulse
 * @param drag share of the drag coefficient
 * @param delay share of the delay
 * @param readingM error of an altimeter, in metres
 * @param distance share of the distance at which the rocket is found
 * @param bearingDeg error of the bearing at which it is found
 */
record DemoScatter(
    double impulse,
    double drag,
    double delay,
    double readingM,
    double distance,
    double bearingDeg) {
  /** Draws stop here, in standard deviations. */
  static final double FURTHEST = 2;

  static DemoScatter of(Map<?, ?> json) {
    return new DemoScatter(
        number(json, "impulse_share"),
        number(json, "drag_share"),
        number(json, "delay_share"),
        number(json, "altimeter_m"),
        number(json, "distance_share"),
        number(json, "bearing_deg"));
  }

  /** What one flight drew; every flight draws the same number of times. */
  record Draw(
      double impulseFactor,
      double dragFactor,
      double delayFactor,
      double readingM,
      double distanceFactor,
      double bearingDeg) {}

  Draw draw(Random random) {
    return new Draw(
        1 + impulse * next(random),
        1 + drag * next(random),
        1 + delay * next(random),
        readingM * next(random),
        1 + distance * next(random),
        bearingDeg * next(random));
  }

  private static double next(Random random) {
    return Math.max(-FURTHEST, Math.min(FURTHEST, random.nextGaussian()));
  }

  private static double number(Map<?, ?> json, String name) {
    return ((Number) json.get(name)).doubleValue();
  }
}
