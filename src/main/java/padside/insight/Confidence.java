package padside.insight;

import padside.fact.Facts;
import padside.flight.Flight;

/**
 * How many flights of a hundred an interval or an area of a prediction is to hold, in half of the
 * others each to either side.
 *
 * @param percent from 50 to 99
 */
public record Confidence(int percent) {
  public static final int LEAST = 50;
  public static final int MOST = 99;

  private static final Confidence USUAL = new Confidence(90);

  /** Refuses what tells less than even odds, or more than some hundred flights can show. */
  public Confidence {
    if (percent < LEAST || percent > MOST) {
      throw new IllegalArgumentException("a confidence of " + percent + " in 100");
    }
  }

  /** Nine of ten. */
  public static Confidence usual() {
    return USUAL;
  }

  /**
   * The share that the intervals kept with a flight were told to hold. Cards of before it was kept
   * were told the usual one.
   */
  static double told(Facts flight) {
    return flight
        .get(Flight.PREDICTED_SHARE)
        .filter(share -> share > 0 && share < 1)
        .orElse(USUAL.share());
  }

  /** The share it holds, from 0 to 1. */
  public double share() {
    return percent / 100.0;
  }

  /** The share that lies below it, and the one above. */
  public double tail() {
    return (100 - percent) / 200.0;
  }

  /** {@code 90 in 100}, as shares are told everywhere. */
  public String words() {
    return percent + " in 100";
  }
}
