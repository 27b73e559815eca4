package padside.safety;

import java.util.List;
import java.util.Optional;
import padside.units.Length;

/**
 * One row of a table: it holds up to and including its bound, above the bound of the row before.
 *
 * @param upTo installed impulse in N·s or apogee in m, as the table says
 * @param complexPeople for clusters and stages
 */
record Band(
    double upTo,
    Optional<Length> smallestSide,
    Optional<Length> people,
    Optional<Length> complexPeople,
    Optional<Length> clearedDiameter,
    String classes) {

  /** The row for a value; a value equal to a bound is in the lower row. */
  static Optional<Band> find(List<Band> bands, double value) {
    return bands.stream().filter(band -> !Bounds.over(value, band.upTo)).findFirst();
  }
}
