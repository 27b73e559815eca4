package padside.preflight;

import java.util.Locale;
import java.util.Optional;
import padside.insight.Drag;

/**
 * The drag coefficient a flight was predicted with.
 *
 * @param why where it comes from, in words
 * @param learned what the rocket's measured altitudes say, used or not
 */
public record DragUsed(double coefficient, String why, Optional<Drag> learned) {
  /** {@code 0.62 (0.55 to 0.70) from 7 flights}, {@code 0.75 as typed}. */
  public String words() {
    return String.format(Locale.ROOT, "%.2f %s", coefficient, why);
  }
}
