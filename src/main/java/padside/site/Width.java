package padside.site;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * The least width of an outline of straight lines and arcs about the pad.
 *
 * <p>The width in a direction is the sum of the outline's support functions there and opposite.
 * Between directions in which the supporting points change it is a sum of terms r·cos(φ − β) with
 * positive values, or constant, so that its least value lies where a supporting point changes: all
 * those directions are tried. The rotating calipers (Toussaint, 1983) with arcs added.
 */
final class Width {
  /** A corner of the outline in polar form. */
  private record Corner(double bearing, double distanceM) {
    double alongM(double direction) {
      return distanceM * Math.cos(direction - bearing);
    }

    double east() {
      return distanceM * Math.sin(bearing);
    }

    double north() {
      return distanceM * Math.cos(bearing);
    }
  }

  /** An arc about the pad from one bearing clockwise through {@code sweep}, in radians. */
  private record Arc(double bearing, double sweep, double radiusM) {
    boolean faces(double direction) {
      double turn = (direction - bearing) % (2 * Math.PI);
      return (turn < 0 ? turn + 2 * Math.PI : turn) <= sweep;
    }

    Stream<Corner> ends() {
      return Stream.of(new Corner(bearing, radiusM), new Corner(bearing + sweep, radiusM));
    }
  }

  private final List<Corner> corners = new ArrayList<>();
  private final List<Arc> arcs = new ArrayList<>();

  Width(List<FieldShape.Stretch> stretches) {
    for (FieldShape.Stretch stretch : stretches) {
      double bearing = stretch.from().bearing().inRadians();
      corners.add(new Corner(bearing, stretch.from().distance().metres()));
      if (!stretch.straight()) {
        Arc arc = new Arc(bearing, Math.toRadians(stretch.gapDeg()), stretch.nearerM());
        arcs.add(arc);
        arc.ends().forEach(corners::add);
      }
    }
  }

  double leastM() {
    return directions().map(this::inM).min().orElseThrow();
  }

  private double inM(double direction) {
    return supportM(direction) + supportM(direction + Math.PI);
  }

  private double supportM(double direction) {
    double corner = corners.stream().mapToDouble(each -> each.alongM(direction)).max().orElse(0);
    double arc =
        arcs.stream()
            .filter(each -> each.faces(direction))
            .mapToDouble(Arc::radiusM)
            .max()
            .orElse(0);
    return Math.max(corner, arc);
  }

  private DoubleStream directions() {
    DoubleStream sides =
        corners.stream().flatMapToDouble(a -> corners.stream().mapToDouble(b -> normal(a, b)));
    DoubleStream ends = arcs.stream().flatMap(Arc::ends).mapToDouble(Corner::bearing);
    DoubleStream tangents =
        arcs.stream()
            .flatMapToDouble(
                arc -> corners.stream().flatMapToDouble(corner -> tangents(arc, corner)));
    return DoubleStream.concat(sides, DoubleStream.concat(ends, tangents));
  }

  /** Square to the line through two corners. */
  private static double normal(Corner a, Corner b) {
    return Math.atan2(b.north() - a.north(), a.east() - b.east());
  }

  /** The directions in which a corner reaches as far as the arc. */
  private static DoubleStream tangents(Arc arc, Corner corner) {
    double ratio = corner.distanceM() == 0 ? 2 : arc.radiusM() / corner.distanceM();
    return ratio > 1
        ? DoubleStream.empty()
        : DoubleStream.of(corner.bearing() - Math.acos(ratio), corner.bearing() + Math.acos(ratio));
  }
}
