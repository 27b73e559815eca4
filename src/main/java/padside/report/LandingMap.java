package padside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.flight.Field;
import padside.flight.Flight;
import padside.page.Plot;
import padside.site.FieldShape;
import padside.site.Landing;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.UnitSystem;

/** Where the flights of a day came down, on the field with its edges and hazards. */
final class LandingMap {
  private final Measure<Length> distance;

  private LandingMap(UnitSystem units) {
    this.distance = Measure.distance(units);
  }

  /** Absent while no landing is known; flights go by their number on the page. */
  static Optional<Plot> of(Optional<Field> field, List<Flight> flights, UnitSystem units) {
    return new LandingMap(units).drawn(field, flights);
  }

  private Optional<Plot> drawn(Optional<Field> field, List<Flight> flights) {
    List<Plot.Point> landed =
        landings(flights, Flight.LANDING_BEARING, Flight.LANDING_DISTANCE, true);
    if (landed.isEmpty()) {
      return Optional.empty();
    }
    List<Plot.Series> series = new ArrayList<>(ground(field));
    series.add(new Plot.Series("pad", Plot.Mark.PAD, List.of(Plot.Point.of(0, 0))));
    series.add(
        new Plot.Series(
            "where the card expected it",
            Plot.Mark.CROSS,
            landings(flights, Flight.PREDICTED_BEARING, Flight.PREDICTED_DISTANCE, false)));
    series.add(
        new Plot.Series("where it lay, with the number of the flight", Plot.Mark.DOT, landed));
    String place = field.map(each -> " on " + each.name()).orElse("");
    return Optional.of(
        new Plot(
            "Landings" + place,
            landed.size() + " landings seen from above, north at the top.",
            distance.axis("east of the pad"),
            distance.axis("north of the pad"),
            true,
            series));
  }

  private List<Plot.Series> ground(Optional<Field> field) {
    List<Plot.Series> series = new ArrayList<>();
    field
        .flatMap(FieldShape::of)
        .map(FieldShape::corners)
        .ifPresent(
            corners -> series.add(new Plot.Series("field edge", Plot.Mark.OUTLINE, ring(corners))));
    List<Field.Hazard> hazards = field.map(Field::hazards).orElse(List.of());
    for (Field.Hazard hazard : hazards) {
      series.add(
          new Plot.Series("rim of a hazard", Plot.Mark.DASHES, ring(FieldShape.rim(hazard))));
    }
    series.add(
        new Plot.Series(
            "hazard: nothing should land there",
            Plot.Mark.HAZARD,
            hazards.stream()
                .map(each -> point(new Landing(each.bearing(), each.distance()), name(each)))
                .toList()));
    return series;
  }

  private static String name(Field.Hazard hazard) {
    return hazard.name().isBlank() ? "hazard" : hazard.name();
  }

  private List<Plot.Point> ring(List<Landing> corners) {
    List<Plot.Point> ring = new ArrayList<>(corners.stream().map(each -> point(each, "")).toList());
    ring.stream().findFirst().ifPresent(ring::add);
    return ring;
  }

  private List<Plot.Point> landings(
      List<Flight> flights, Column<Bearing> toward, Column<Length> far, boolean labelled) {
    List<Plot.Point> points = new ArrayList<>();
    for (int i = 0; i < flights.size(); i++) {
      Flight flight = flights.get(i);
      String label = labelled ? String.valueOf(i + 1) : "";
      flight
          .facts()
          .get(toward)
          .flatMap(
              bearing ->
                  flight
                      .facts()
                      .get(far)
                      .filter(length -> length.metres() >= 0)
                      .map(length -> new Landing(bearing, length)))
          .filter(any -> flight.status() == Flight.Status.FLOWN)
          .ifPresent(landing -> points.add(point(landing, label)));
    }
    return points;
  }

  private Plot.Point point(Landing landing, String label) {
    double unit = distance.unit();
    return new Plot.Point(landing.eastM() / unit, landing.northM() / unit, label);
  }
}
