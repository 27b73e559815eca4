package padside.units;

import java.util.Arrays;
import java.util.Optional;

/**
 * A number of the Beaufort scale with its range of mean wind, after the World Meteorological
 * Organization's table (read at second hand; Manual on Codes, code table 1100, from memory), metres
 * per second to one decimal.
 *
 * <p>The table's columns are rounded each for itself: 16 knots is force 4 in the knots column but
 * 8.2 m/s, force 5 in this one. This one decides here.
 */
public enum Beaufort {
  B0(0, 0.0, 0.2, "smoke goes straight up"),
  B1(1, 0.3, 1.5, "smoke drifts, vanes still"),
  B2(2, 1.6, 3.3, "felt on the face, leaves rustle, vanes move"),
  B3(3, 3.4, 5.4, "leaves and twigs always moving, light flags out"),
  B4(4, 5.5, 7.9, "dust and paper lifted, small branches move"),
  B5(5, 8.0, 10.7, "small leafy trees sway"),
  B6(6, 10.8, 13.8, "large branches move, wires whistle, umbrellas hard to hold"),
  B7(7, 13.9, 17.1, "whole trees move, walking is hard"),
  B8(8, 17.2, 20.7, "twigs break off"),
  B9(9, 20.8, 24.4, "slight damage to buildings"),
  B10(10, 24.5, 28.4, "trees uprooted"),
  B11(11, 28.5, 32.6, "widespread damage"),
  B12(12, 32.7, Double.POSITIVE_INFINITY, "devastation");

  private final int number;
  private final double lowest_mps;
  private final double highest_mps;
  private final String sign;

  Beaufort(int number, double lowest_mps, double highest_mps, String sign) {
    this.number = number;
    this.lowest_mps = lowest_mps;
    this.highest_mps = highest_mps;
    this.sign = sign;
  }

  /** 0 to 12. */
  public int number() {
    return number;
  }

  /** The least mean wind of this number. */
  public Speed lowest() {
    return new Speed(lowest_mps);
  }

  /** The largest mean wind of this number; force 12 has none. */
  public Optional<Speed> highest() {
    return Double.isFinite(highest_mps) ? Optional.of(new Speed(highest_mps)) : Optional.empty();
  }

  /** What the wind does on land. */
  public String signOnLand() {
    return sign;
  }

  /**
   * The wind that stands for this number when nobody had an instrument: the middle of its range as
   * mean, its upper bound as gust, so that the value held against limits is the cautious one (our
   * choice; the scale itself says nothing of gusts). Force 0 is calm by name and so is zero; force
   * 12 has no upper bound and stands at its lower one, far past every limit.
   */
  public Wind wind(Optional<Bearing> from) {
    if (this == B0) {
      return new Wind(new Speed(0), new Speed(0), from);
    }
    Speed gust = highest().orElse(lowest());
    Speed mean = new Speed((lowest_mps + gust.metresPerSecond()) / 2);
    return new Wind(mean, gust, from);
  }

  /** The number of a mean wind that is not negative, taken to the table's tenth of a m/s. */
  public static Beaufort of(Speed mean) {
    double tenths = Math.round(mean.metresPerSecond() * 10.0) / 10.0;
    Beaufort found = B0;
    for (Beaufort each : values()) {
      if (each.lowest_mps <= tenths) {
        found = each;
      }
    }
    return found;
  }

  /** The row of a number, empty outside 0 to 12. */
  public static Optional<Beaufort> find(int number) {
    return Arrays.stream(values()).filter(each -> each.number == number).findFirst();
  }
}
