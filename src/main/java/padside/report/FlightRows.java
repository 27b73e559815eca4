package padside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.flight.Flight;
import padside.flight.OutcomeTable;
import padside.flight.Ruling;
import padside.motor.MotorText;
import padside.page.Plot;
import padside.page.Table;
import padside.units.Length;

/**
 * Flights as lines of a table and points of a chart.
 *
 * @param outcomes the words for what came of them
 */
record FlightRows(OutcomeTable outcomes, Measure<Length> altitude) {
  /**
   * What {@link #cells} and {@link #point} tell of a flight beside its motor, burn and ejection.
   */
  static final List<Column<?>> TOLD =
      List.of(
          Flight.VERDICT,
          Flight.PREDICTED_APOGEE,
          Flight.ALTITUDE,
          Flight.BOOST,
          Flight.RECOVERY,
          Flight.LANDING,
          Flight.LANDED_ON,
          Flight.NOTE);

  static FlightRows of(PageSource source) {
    return new FlightRows(source.outcomes(), Measure.altitude(source.units()));
  }

  /** Heads of {@link #cells}. */
  List<Table.Column> columns() {
    return List.of(
        Table.Column.of("Motor"),
        Table.Column.of("Check"),
        Table.Column.ofNumbers(altitude.heading("Predicted")),
        Table.Column.ofNumbers(altitude.heading("Measured")),
        Table.Column.ofNumbers("Off by %"),
        Table.Column.of("Outcome"),
        Table.Column.of("Note"));
  }

  /** What every list of flights tells of one. */
  List<String> cells(Flight flight) {
    return List.of(
        flight.motor().map(motor -> MotorText.of(motor).brief()).orElse("?"),
        flight.verdict().map(Ruling.Verdict::word).orElse(""),
        altitude.cell(flight.facts(), Flight.PREDICTED_APOGEE),
        altitude.cell(flight.altitude()),
        offBy(flight),
        FlightWords.outcome(flight, outcomes),
        flight.facts().get(Flight.NOTE).orElse(""));
  }

  private static String offBy(Flight flight) {
    return share(flight)
        .map(share -> Math.round(100 * (share - 1)))
        .map(off -> off > 0 ? "+" + off : String.valueOf(off))
        .orElse("");
  }

  /** Measured over predicted altitude. */
  static Optional<Double> share(Flight flight) {
    return flight
        .facts()
        .get(Flight.PREDICTED_APOGEE)
        .filter(predicted -> predicted.metres() > 0)
        .flatMap(
            predicted -> flight.altitude().map(measured -> measured.metres() / predicted.metres()));
  }

  /** A flight's place in the chart of predicted against measured altitude. */
  Optional<Plot.Point> point(Flight flight, String label) {
    return flight
        .facts()
        .get(Flight.PREDICTED_APOGEE)
        .flatMap(
            predicted ->
                flight
                    .altitude()
                    .map(
                        measured ->
                            new Plot.Point(
                                altitude.number(predicted), altitude.number(measured), label)));
  }

  /** The chart of predicted against measured altitude; absent of fewer than two flights. */
  Optional<Plot> altitudes(List<Plot.Point> points) {
    if (points.size() < 2) {
      return Optional.empty();
    }
    double most = points.stream().mapToDouble(p -> Math.max(p.x(), p.y())).max().orElseThrow();
    long above = points.stream().filter(point -> point.y() > point.x()).count();
    List<Plot.Series> series = new ArrayList<>();
    series.add(new Plot.Series("a flight", Plot.Mark.DOT, points));
    series.add(
        new Plot.Series(
            "measured as predicted",
            Plot.Mark.DASHES,
            List.of(Plot.Point.of(0, 0), Plot.Point.of(most, most))));
    return Optional.of(
        new Plot(
            "Altitude predicted and measured",
            "Of "
                + points.size()
                + " flights "
                + above
                + " went higher than predicted, which is above the dashed line.",
            altitude.axis("predicted"),
            altitude.axis("measured"),
            false,
            series));
  }
}
