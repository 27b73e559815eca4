package padside.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import padside.flight.Field;
import padside.units.Bearing;

/**
 * The reading of paced edges in polar form, written for plainness: the outline along a bearing from
 * the areas of two triangles (half the product of two sides and the sine between them). The program
 * has no angles on its way to the same answers.
 */
record PolarField(List<Field.Edge> edges) {
  /** Edges by bearing, the nearer of two along one. */
  static PolarField of(List<Field.Edge> paced) {
    List<Field.Edge> sorted = new ArrayList<>();
    paced.stream()
        .sorted(
            Comparator.comparingDouble((Field.Edge edge) -> edge.bearing().degrees())
                .thenComparingDouble(edge -> edge.distance().metres()))
        .filter(
            edge ->
                sorted.isEmpty() || !sorted.get(sorted.size() - 1).bearing().equals(edge.bearing()))
        .forEach(sorted::add);
    return new PolarField(List.copyOf(sorted));
  }

  boolean contains(double eastM, double northM) {
    return contains(Landing.of(eastM, northM));
  }

  boolean contains(Landing landing) {
    return landing.distance().metres() <= reachM(landing.bearing());
  }

  double reachM(Bearing bearing) {
    Field.Edge from =
        edges.stream()
            .min(Comparator.comparingDouble(edge -> clockwiseDeg(edge.bearing(), bearing)))
            .orElseThrow();
    Field.Edge to = edges.get((edges.indexOf(from) + 1) % edges.size());
    double wholeDeg = clockwiseDeg(from.bearing(), to.bearing());
    double turnDeg = clockwiseDeg(from.bearing(), bearing);
    double a = Math.max(0, from.distance().metres());
    double b = Math.max(0, to.distance().metres());
    if (turnDeg == 0) {
      return a;
    }
    if (edges.size() == 1 || wholeDeg > 90 || a == 0 || b == 0) {
      return Math.min(a, b);
    }
    double whole = Math.toRadians(wholeDeg);
    double turn = Math.toRadians(turnDeg);
    return a * b * Math.sin(whole) / (a * Math.sin(turn) + b * Math.sin(whole - turn));
  }

  private static double clockwiseDeg(Bearing from, Bearing to) {
    return new Bearing(to.degrees() - from.degrees()).degrees();
  }
}
