package padside.wire;

import java.util.Locale;
import java.util.Random;

/** A made-up wind meter: mean with gusts, one line a second, the same for the same seed. */
public final class MadeWind {
  /** A light wind to fly in; invented, like what follows. */
  private static final double MEAN_MPS = 3.5;

  private static final double FROM_DEGREES = 240;
  private static final double SPEED_SCATTER_MPS = 0.8;
  private static final double DIRECTION_SCATTER_DEGREES = 12;

  /** How much of a second's deviation is left in the next. */
  private static final double KEPT = 0.85;

  private final Random random;
  private double faster;
  private double turned;

  public MadeWind(long seed) {
    random = new Random(seed);
  }

  /** The line of the next second. */
  public String next() {
    faster = next(faster);
    turned = next(turned);
    double speed = Math.max(0, MEAN_MPS + SPEED_SCATTER_MPS * faster);
    long from = Math.round(FROM_DEGREES + DIRECTION_SCATTER_DEGREES * turned);
    return String.format(Locale.ROOT, "wind %.1f m/s %03d", speed, Math.floorMod(from, 360L));
  }

  private double next(double deviation) {
    return KEPT * deviation + Math.sqrt(1 - KEPT * KEPT) * random.nextGaussian();
  }
}
