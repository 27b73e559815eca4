package padside.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Field;
import padside.units.Bearing;
import padside.units.Length;

/**
 * The outline of a field around its pad, from the distances paced along some bearings.
 *
 * <p>Between two neighbouring bearings at most 90° apart the edge is the straight line through both
 * paced points. Across a wider gap nobody has looked, so the nearer of the two distances holds all
 * the way; along each paced bearing itself its own distance holds. One paced edge alone makes a
 * circle. Of two distances along one bearing the nearer counts. Hazards inside the edges are no
 * part of the field to land on.
 */
public final class FieldShape {
  /** Neighbouring bearings further apart are not joined by a straight line. */
  private static final double WIDEST_CHORD_DEG = 90;

  private static final double TURN_DEG = 360;

  /** A stretch of the outline that starts at one paced edge and ends at the next, clockwise. */
  record Stretch(Field.Edge from, Field.Edge to, double gapDeg) {
    boolean straight() {
      return gapDeg <= WIDEST_CHORD_DEG;
    }

    double nearerM() {
      return Math.min(from.distance().metres(), to.distance().metres());
    }
  }

  private final List<Field.Edge> edges;
  private final List<Stretch> stretches;
  private final Outline outline;
  private final Optional<Length> measuredSide;
  private final Hazards hazards;

  private FieldShape(List<Field.Edge> edges, Optional<Length> measuredSide, Hazards hazards) {
    this.edges = edges;
    this.measuredSide = measuredSide;
    this.hazards = hazards;
    this.stretches = stretches(edges);
    this.outline = new Outline(stretches);
  }

  /** The shape of a field, absent when no edge has been paced. */
  public static Optional<FieldShape> of(Field field) {
    return of(field.edges(), field.smallestSide()).map(shape -> shape.withHazards(field.hazards()));
  }

  /**
   * The shape from edges in any order, without hazards; absent when there are no edges.
   *
   * @param measuredSide the smallest side or diameter where it was measured
   */
  public static Optional<FieldShape> of(List<Field.Edge> edges, Optional<Length> measuredSide) {
    return edges.isEmpty()
        ? Optional.empty()
        : Optional.of(new FieldShape(inOrder(edges), measuredSide, new Hazards(List.of())));
  }

  /** The same outline with these hazards inside. */
  public FieldShape withHazards(List<Field.Hazard> inside) {
    return new FieldShape(edges, measuredSide, new Hazards(inside));
  }

  /** The facts of a round field with the pad in its middle. */
  public static Facts circle(Length radius) {
    return Facts.none()
        .with(Field.EDGES, List.of(new Field.Edge(new Bearing(0), radius, "", "")))
        .with(Field.SMALLEST_SIDE, diameter(radius));
  }

  /**
   * The widest stretch where nobody has paced the edge: where it starts and where, clockwise, it
   * ends. Both are the same where one edge makes a circle; absent where the diameter measured is
   * that of the circle, so that the field is known to be round.
   */
  public Optional<Unpaced> unpaced() {
    return isKnownRound() ? Optional.empty() : widestUnpaced();
  }

  private boolean isKnownRound() {
    return edges.size() == 1 && measuredSide.equals(Optional.of(diameter(edges.get(0).distance())));
  }

  private static Length diameter(Length radius) {
    return new Length(2 * radius.metres());
  }

  private Optional<Unpaced> widestUnpaced() {
    return stretches.stream()
        .filter(stretch -> !stretch.straight())
        .max(Comparator.comparingDouble(Stretch::gapDeg))
        .map(stretch -> new Unpaced(stretch.from().bearing(), stretch.to().bearing()));
  }

  /** Bearings between which, clockwise, nobody has looked. */
  public record Unpaced(Bearing from, Bearing to) {}

  /** The paced edges by bearing, clockwise from north. */
  public List<Field.Edge> edges() {
    return edges;
  }

  /** What inside the edges is to be kept clear of, in the order it was named. */
  public List<Field.Hazard> hazards() {
    return hazards.list();
  }

  /**
   * Places along the edge, clockwise from north, between which it runs straight; arcs by points 5°
   * apart. Fewer than three enclose nothing.
   */
  public List<Landing> corners() {
    return new Corners(stretches).list();
  }

  /** Places along the rim of a hazard, clockwise from north. */
  public static List<Landing> rim(Field.Hazard hazard) {
    return Corners.circle(
        new Landing(hazard.bearing(), hazard.distance()), hazard.radius().metres());
  }

  /** From the pad to the edge along a bearing, hazards or not. */
  public Length reach(Bearing bearing) {
    double toward = bearing.inRadians();
    return new Length(outline.reachM(Math.sin(toward), Math.cos(toward)));
  }

  /** Whether a place lies inside the edges or on one, and in no hazard. */
  public boolean contains(Landing landing) {
    return contains(landing.eastM(), landing.northM());
  }

  /** As {@link #contains(Landing)} for a place so many metres east and north of the pad. */
  public boolean contains(double eastM, double northM) {
    return outline.contains(eastM, northM) && !hazards.hold(eastM, northM);
  }

  /**
   * What a landing so many metres east and north of the pad is lost to; absent where the field
   * {@link #contains(double, double)} it.
   */
  public Optional<Loss> lossAt(double eastM, double northM) {
    return outline.contains(eastM, northM)
        ? hazards.at(eastM, northM).map(Loss.InHazard::new)
        : Optional.of(new Loss.PastEdge(edgeToward(Landing.of(eastM, northM).bearing())));
  }

  /**
   * From a place straight on, away from the pad, to the edge, hazards or not; negative when it lies
   * outside.
   */
  public Length margin(Landing landing) {
    return new Length(reach(landing.bearing()).metres() - landing.distance().metres());
  }

  /** As {@link #margin} for a place so many metres east and north of the pad, in metres. */
  public double marginM(double eastM, double northM) {
    return outline.reachM(eastM, northM) - Math.sqrt(eastM * eastM + northM * northM);
  }

  /**
   * The edge whose paced bearing is nearest: the one a landing out that way goes past. A circle's
   * only edge lies wherever one looks.
   */
  public Field.Edge edgeToward(Bearing bearing) {
    if (edges.size() == 1) {
      Field.Edge round = edges.get(0);
      return new Field.Edge(bearing, round.distance(), round.name(), round.beyond());
    }
    Field.Edge nearest = edges.get(0);
    for (Field.Edge edge : edges) {
      nearest = offDeg(edge, bearing) < offDeg(nearest, bearing) ? edge : nearest;
    }
    return nearest;
  }

  private static double offDeg(Field.Edge edge, Bearing bearing) {
    return Math.abs(edge.bearing().degreesTo(bearing));
  }

  /**
   * The smallest side or diameter of the field: the measured one, else the least distance between
   * two parallel lines that hold the whole outline between them, exact to rounding. Where an edge
   * turns inwards the field is narrower in places than this.
   */
  public Length smallestSide() {
    return measuredSide.orElseGet(() -> new Length(new Width(stretches).leastM()));
  }

  private static List<Field.Edge> inOrder(List<Field.Edge> edges) {
    List<Field.Edge> sorted = new ArrayList<>();
    edges.stream()
        .map(FieldShape::notBehindThePad)
        .sorted(
            Comparator.comparingDouble((Field.Edge edge) -> edge.bearing().degrees())
                .thenComparingDouble(edge -> edge.distance().metres()))
        .filter(edge -> sorted.isEmpty() || !lastOf(sorted).bearing().equals(edge.bearing()))
        .forEach(sorted::add);
    return List.copyOf(sorted);
  }

  private static Field.Edge lastOf(List<Field.Edge> edges) {
    return edges.get(edges.size() - 1);
  }

  /** A negative distance is no distance: nothing lands inside that way. */
  private static Field.Edge notBehindThePad(Field.Edge edge) {
    return edge.distance().metres() >= 0
        ? edge
        : new Field.Edge(edge.bearing(), new Length(0), edge.name(), edge.beyond());
  }

  private static List<Stretch> stretches(List<Field.Edge> edges) {
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Field.Edge from = edges.get(i);
      Field.Edge to = edges.get((i + 1) % edges.size());
      double gap = clockwiseDeg(from.bearing(), to.bearing());
      stretches.add(new Stretch(from, to, gap == 0 ? TURN_DEG : gap));
    }
    return List.copyOf(stretches);
  }

  /** From one bearing clockwise to another, at least 0 and below 360. */
  private static double clockwiseDeg(Bearing from, Bearing to) {
    return new Bearing(to.degrees() - from.degrees()).degrees();
  }
}
