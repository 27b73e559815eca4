package padside.insight;

import java.util.List;
import java.util.Locale;
import padside.fact.RecordId;
import padside.units.Length;

/**
 * What measured altitudes say about a rocket's drag coefficient.
 *
 * @param middle the coefficient to count on, the median of what may be
 * @param low with high holds it as often as the confidence asked for tells
 * @param high in half of the other times each it is above this or below low
 * @param deviation one standard deviation of its logarithm: how far it is not known
 * @param spread one standard deviation from flight to flight, as a share
 * @param flights those it was taken from
 * @param odd those that fit it so badly that they were left out
 */
public record Drag(
    double middle,
    double low,
    double high,
    double deviation,
    double spread,
    List<RecordId> flights,
    List<Odd> odd) {
  /**
   * A flight whose altitude does not go with the others and with what a rocket's drag usually is.
   *
   * @param measured its altitude
   * @param low with high holds, as often as the confidence tells, an altitude as high as the others
   *     and what was noted of this one lead to expect
   * @param high above it as often as below low
   * @param cause why that may be, in words that go on after the flight's name
   */
  public record Odd(RecordId flight, Length measured, Length low, Length high, String cause) {}

  /** Keeps its own lists. */
  public Drag {
    flights = List.copyOf(flights);
    odd = List.copyOf(odd);
  }

  /**
   * One standard deviation of the next flight's drag, as a share: not known, and from flight to
   * flight.
   */
  public double share() {
    return Math.hypot(deviation, spread);
  }

  /** {@code 0.62 (0.55 to 0.70) from 7 flights, 1 left out}. */
  public String words() {
    return String.format(Locale.ROOT, "%.2f %s", middle, from());
  }

  /** The same without the coefficient itself. */
  public String from() {
    String from =
        switch (flights.size()) {
          case 0 -> "no flight";
          case 1 -> "1 flight";
          default -> flights.size() + " flights";
        };
    String out = odd.isEmpty() ? "" : ", " + odd.size() + " left out";
    return String.format(Locale.ROOT, "(%.2f to %.2f) from %s%s", low, high, from, out);
  }
}
