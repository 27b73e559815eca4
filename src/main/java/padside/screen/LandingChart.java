package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.flight.Field;
import padside.page.RoundStep;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.Outlook;
import padside.preflight.Spread;
import padside.site.FieldShape;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitNotation;
import padside.units.UnitSystem;
import padside.units.Wind;

/**
 * The field from above: pad, edges, where half and most of the landings lie, wind, sun. The lowest
 * row of its area holds scale and north.
 */
final class LandingChart {
  static final String PAD = "●";
  static final String NOMINAL = "×";
  static final String SUN = "☼";
  static final String HAZARD = "!";

  private static final Size MARGIN = new Size(1, 1);
  private static final double SCALE_SHARE = 0.3;
  private static final int LONG_NAME = 12;
  private static final int SHORT_NAME = 6;
  private static final int OUTLINE_STEPS = 360;

  private final Optional<FieldShape> shape;
  private final List<Field.Hazard> hazards;
  private final Optional<Outlook> outlook;
  private final Optional<Wind> wind;
  private final UnitSystem units;

  private LandingChart(LiveCheck check, UnitSystem units) {
    Optional<Field> field = check.asked().flatMap(Card::field);
    this.shape = field.flatMap(FieldShape::of);
    this.hazards = field.map(Field::hazards).orElse(List.of());
    this.outlook = check.answer().flatMap(Answer::outlook);
    this.wind = check.asked().flatMap(Card::wind);
    this.units = units;
  }

  static void draw(Canvas canvas, FormPane.Area area, LiveCheck check, World world) {
    FormPane.Area map = new FormPane.Area(area.left(), area.top(), area.width(), area.height() - 1);
    DotGrid grid = new DotGrid(map, world.braille());
    LandingChart chart = new LandingChart(check, world.settings().units());
    GroundPlan plan = GroundPlan.of(chart.extent(), grid, MARGIN);
    chart.lines(grid, plan);
    WindMark arrow = WindMark.of(chart.wind, grid);
    arrow.lines();
    grid.put(canvas);
    ChartLabels labels = new ChartLabels(canvas, grid);
    arrow.words(labels);
    chart.marks(labels, plan, grid);
    chart.names(labels, plan);
    chart.scale(canvas, area, plan, grid);
  }

  /** Everything that must be seen. */
  private List<GroundPlan.Place> extent() {
    List<GroundPlan.Place> places = new ArrayList<>(List.of(GroundPlan.Place.PAD));
    shape.ifPresent(field -> places.addAll(outline(field)));
    hazards.forEach(hazard -> places.addAll(rim(hazard)));
    outlook.ifPresent(flight -> places.addAll(landings(flight)));
    return places;
  }

  private static List<GroundPlan.Place> landings(Outlook flight) {
    if (!flight.bearingKnown()) {
      return ring(GroundPlan.Place.PAD, flight.landingDistance());
    }
    List<GroundPlan.Place> places = new ArrayList<>(List.of(nominal(flight)));
    flight.spread().ifPresent(spread -> places.addAll(GroundPlan.around(spread.landingMost())));
    return places;
  }

  private static GroundPlan.Place nominal(Outlook flight) {
    return GroundPlan.Place.of(flight.landingBearing(), flight.landingDistance());
  }

  /** Between the paced bearings; along one of them alone a distance can stand out like a needle. */
  private static List<GroundPlan.Place> outline(FieldShape field) {
    List<GroundPlan.Place> places = new ArrayList<>();
    for (int i = 0; i <= OUTLINE_STEPS; i++) {
      Bearing bearing = new Bearing((i + 0.5) * 360 / OUTLINE_STEPS);
      places.add(GroundPlan.Place.of(bearing, field.reach(bearing)));
    }
    return places;
  }

  private static List<GroundPlan.Place> rim(Field.Hazard hazard) {
    return ring(middle(hazard), hazard.radius());
  }

  private static GroundPlan.Place middle(Field.Hazard hazard) {
    return GroundPlan.Place.of(hazard.bearing(), hazard.distance());
  }

  private static List<GroundPlan.Place> ring(GroundPlan.Place middle, Length radius) {
    Spread.Area round =
        new Spread.Area(
            new Length(middle.eastM()),
            new Length(middle.northM()),
            radius,
            radius,
            new Bearing(0));
    return GroundPlan.around(round);
  }

  private void lines(DotGrid grid, GroundPlan plan) {
    shape.ifPresent(field -> grid.lines(plan.dots(outline(field)), DotGrid.Ink.BORDER));
    hazards.forEach(hazard -> grid.lines(plan.dots(rim(hazard)), DotGrid.Ink.BORDER));
    outlook
        .filter(flight -> !flight.bearingKnown())
        .ifPresent(flight -> grid.lines(plan.dots(landings(flight)), DotGrid.Ink.FAINT));
    outlook
        .filter(Outlook::bearingKnown)
        .flatMap(Outlook::spread)
        .ifPresent(
            spread -> {
              grid.lines(plan.dots(GroundPlan.around(spread.landingMost())), DotGrid.Ink.FAINT);
              fill(grid, plan, spread.landingHalf());
            });
  }

  private static void fill(DotGrid grid, GroundPlan plan, Spread.Area ellipse) {
    grid.dot(plan.dot(GroundPlan.Place.of(ellipse.east(), ellipse.north())), DotGrid.Ink.AREA);
    for (int y = 0; y < grid.down(); y++) {
      for (int x = 0; x < grid.across(); x++) {
        DotGrid.Dot dot = new DotGrid.Dot(x, y);
        if (grid.stippled(dot) && GroundPlan.holds(ellipse, plan.place(dot))) {
          grid.dot(dot, DotGrid.Ink.AREA);
        }
      }
    }
  }

  private void marks(ChartLabels labels, GroundPlan plan, DotGrid grid) {
    hazards.forEach(hazard -> labels.mark(plan.dot(middle(hazard)), HAZARD, Style.STRONG));
    outlook
        .filter(Outlook::bearingKnown)
        .ifPresent(flight -> labels.mark(plan.dot(nominal(flight)), NOMINAL, Style.STRONG));
    labels.mark(plan.dot(GroundPlan.Place.PAD), PAD, Style.STRONG);
    outlook.flatMap(Outlook::sun).ifPresent(sun -> sun(labels, plan, grid, sun.azimuth()));
  }

  /** At the rim of the chart, where one sees it from the pad. */
  private static void sun(ChartLabels labels, GroundPlan plan, DotGrid grid, Bearing azimuth) {
    double right = Math.sin(azimuth.inRadians());
    double down = -Math.cos(azimuth.inRadians());
    double toSide = ((right > 0 ? grid.across() - 1 : 0) - plan.padX()) / right;
    double toEnd = ((down > 0 ? grid.down() - 1 : 0) - plan.padY()) / down;
    double reach =
        Math.min(Double.isFinite(toSide) ? toSide : toEnd, Double.isFinite(toEnd) ? toEnd : toSide);
    DotGrid.Dot rim =
        new DotGrid.Dot(
            (int) Math.round(plan.padX() + reach * right),
            (int) Math.round(plan.padY() + reach * down));
    labels.beside(rim, right, down, new ChartLabels.Label(List.of(SUN + " sun"), Style.STRONG));
  }

  private void names(ChartLabels labels, GroundPlan plan) {
    for (Field.Hazard hazard : hazards) {
      List<String> forms =
          List.of(
              hazard.name(),
              Paragraph.cut(hazard.name(), LONG_NAME),
              Paragraph.cut(hazard.name(), SHORT_NAME));
      labels.beside(plan.dot(middle(hazard)), 1, 0, new ChartLabels.Label(forms, Style.PLAIN));
    }
    shape.ifPresent(
        field -> {
          for (var edge : field.edges()) {
            double right = Math.sin(edge.bearing().inRadians());
            double down = -Math.cos(edge.bearing().inRadians());
            labels.beside(
                plan.dot(GroundPlan.Place.of(edge.bearing(), edge.distance())),
                right,
                down,
                new ChartLabels.Label(forms(edge.name(), edge.distance()), Style.PLAIN));
          }
        });
  }

  /** Longest first. */
  private List<String> forms(String name, Length distance) {
    String far = Notations.distance(units).show(distance);
    return name.isBlank()
        ? List.of(far)
        : List.of(
            name + " " + far,
            name,
            Paragraph.cut(name, LONG_NAME),
            Paragraph.cut(name, SHORT_NAME));
  }

  private void scale(Canvas canvas, FormPane.Area area, GroundPlan plan, DotGrid grid) {
    UnitNotation<Length> distance = Notations.distance(units);
    double unitM = distance.read("1").value().orElseThrow().metres();
    double cellM = grid.cellAcross() / plan.dotsPerMetre();
    double round = RoundStep.atMost(SCALE_SHARE * area.width() * cellM / unitM);
    int cells = Math.max(2, (int) Math.round(round * unitM / cellM));
    int row = area.top() + area.height() - 1;
    String bar = "├" + "─".repeat(cells - 2) + "┤ ";
    canvas.put(area.left() + 1, row, bar + distance.show(new Length(round * unitM)), Style.PLAIN);
    String north = "↑ north";
    canvas.put(area.left() + area.width() - north.length(), row, north, Style.PLAIN);
  }
}
