package padside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import padside.flight.Flight;
import padside.page.Block;
import padside.page.Plot;
import padside.page.Prose;
import padside.trace.KeptTrace;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitSystem;

/** The lines altimeters wrote, as charts. */
final class TracePlot {
  /** More would make a page nobody prints. */
  private static final int MOST = 12;

  private final Measure<Length> altitude;

  TracePlot(UnitSystem units) {
    this.altitude = Measure.altitude(units);
  }

  /** A flight with what it is called. */
  record Named(String name, Flight flight) {
    Optional<KeptTrace> trace() {
      return flight.facts().get(Flight.TRACE).flatMap(KeptTrace::read);
    }
  }

  /** Those of flights in their order that have one; of too many the last. */
  List<Block> of(List<Named> flights) {
    List<Named> traced = flights.stream().filter(each -> each.trace().isPresent()).toList();
    List<Block> blocks = new ArrayList<>();
    if (traced.size() > MOST) {
      blocks.add(Prose.of("The last " + MOST + " of " + traced.size() + " traces."));
    }
    traced.stream()
        .skip(Math.max(0, traced.size() - MOST))
        .map(each -> plot(each.name, each.trace().orElseThrow()))
        .forEach(blocks::add);
    return blocks;
  }

  private Plot plot(String name, KeptTrace trace) {
    List<Plot.Point> marks =
        trace.marks().stream().map(mark -> point(mark.at(), mark.event().word())).toList();
    List<Plot.Point> line = trace.points().stream().map(point -> point(point, "")).toList();
    return new Plot(
        "Trace of " + name,
        words(trace),
        new Plot.Axis("from lift-off", "s"),
        altitude.axis("altitude"),
        false,
        List.of(
            new Plot.Series("as the altimeter wrote it", Plot.Mark.LINE, line),
            new Plot.Series("what was found in it", Plot.Mark.CROSS, marks)));
  }

  private Plot.Point point(KeptTrace.Point point, String label) {
    return new Plot.Point(point.time().seconds(), altitude.number(point.height()), label);
  }

  /** {@code Highest 870 ft. Apogee 5.2 s, ejection 6.1 s. 812 samples of flight7.csv ...} */
  private String words(KeptTrace trace) {
    String marks =
        trace.marks().stream()
            .map(mark -> mark.event().word() + " " + Notations.timeSpan().show(mark.at().time()))
            .collect(Collectors.joining(", "));
    return "Highest "
        + altitude.notation().show(trace.highest())
        + (marks.isEmpty() ? "" : "; " + marks)
        + ". "
        + trace.samples()
        + " samples of "
        + trace.name()
        + ", each within "
        + Math.round(100 * trace.within().metres())
        + " cm of the line.";
  }
}
