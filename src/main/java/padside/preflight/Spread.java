package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.units.Bearing;
import padside.units.Length;

/**
 * Where flights like this one come to: the flight repeated with scatter in motor, drag, delay, wind
 * and rod.
 *
 * @param flights how many were flown
 * @param landingHalf half of the landings lie in it, on the ground
 * @param landingMost as many landings as the confidence tells lie in it
 * @param apogeeHalf half of the apogees stand over it
 * @param apogeeMost as many apogees stand over it
 * @param inside share of the landings inside the field, from 0 to 1; absent without a field
 * @param past where the other landings go, the largest share first
 */
public record Spread(
    int flights,
    Area landingHalf,
    Area landingMost,
    Area apogeeHalf,
    Area apogeeMost,
    Optional<Double> inside,
    List<Past> past) {
  /**
   * An ellipse seen from the pad.
   *
   * @param east centre, from the pad
   * @param north centre, from the pad
   * @param longHalf half of its longest diameter
   * @param shortHalf half of its shortest
   * @param along where the longest points to
   */
  public record Area(Length east, Length north, Length longHalf, Length shortHalf, Bearing along) {}

  /**
   * What landings are lost to.
   *
   * @param words the edge they go past or the hazard they lie in: {@code lane NE 280 ft (road)}
   * @param share of all flights
   */
  public record Past(String words, double share) {}

  /** Keeps its own list. */
  public Spread {
    past = List.copyOf(past);
  }
}
