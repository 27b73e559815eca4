package padside.screen;

import java.util.ArrayList;
import java.util.List;
import padside.preflight.Spread;
import padside.units.Bearing;
import padside.units.Length;

/**
 * Where places on the ground lie in a grid of dots, north up.
 *
 * @param dotsPerMetre the same across and down
 * @param padX dot of the pad
 * @param padY dot of the pad
 */
record GroundPlan(double dotsPerMetre, double padX, double padY) {
  private static final int STEPS = 90;

  /** A place, from the pad. */
  record Place(double eastM, double northM) {
    static final Place PAD = new Place(0, 0);

    static Place of(Length east, Length north) {
      return new Place(east.metres(), north.metres());
    }

    static Place of(Bearing bearing, Length distance) {
      double turn = bearing.inRadians();
      return new Place(distance.metres() * Math.sin(turn), distance.metres() * Math.cos(turn));
    }
  }

  /** The largest plan on which all these places lie at least {@code margin} cells from the rim. */
  static GroundPlan of(List<Place> shown, DotGrid grid, Size margin) {
    double west = shown.stream().mapToDouble(Place::eastM).min().orElse(0);
    double east = shown.stream().mapToDouble(Place::eastM).max().orElse(0);
    double south = shown.stream().mapToDouble(Place::northM).min().orElse(0);
    double north = shown.stream().mapToDouble(Place::northM).max().orElse(0);
    double across = grid.across() - 1 - 2.0 * margin.columns() * grid.cellAcross();
    double down = grid.down() - 1 - 2.0 * margin.rows() * grid.cellDown();
    double scale = Math.min(across / Math.max(1, east - west), down / Math.max(1, north - south));
    return new GroundPlan(
        scale,
        (grid.across() - 1) / 2.0 - scale * (west + east) / 2,
        (grid.down() - 1) / 2.0 + scale * (south + north) / 2);
  }

  DotGrid.Dot dot(Place place) {
    return new DotGrid.Dot(
        (int) Math.round(padX + dotsPerMetre * place.eastM),
        (int) Math.round(padY - dotsPerMetre * place.northM));
  }

  /** The place that a dot shows. */
  Place place(DotGrid.Dot dot) {
    return new Place((dot.x() - padX) / dotsPerMetre, (padY - dot.y()) / dotsPerMetre);
  }

  List<DotGrid.Dot> dots(List<Place> places) {
    return places.stream().map(this::dot).toList();
  }

  /** Round an ellipse and back to where it began. */
  static List<Place> around(Spread.Area ellipse) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double turn = 2 * Math.PI * i / STEPS;
      double along = ellipse.longHalf().metres() * Math.cos(turn);
      double aside = ellipse.shortHalf().metres() * Math.sin(turn);
      double sin = Math.sin(ellipse.along().inRadians());
      double cos = Math.cos(ellipse.along().inRadians());
      places.add(
          new Place(
              ellipse.east().metres() + along * sin + aside * cos,
              ellipse.north().metres() + along * cos - aside * sin));
    }
    return places;
  }

  /** Whether a place lies in an ellipse. */
  static boolean holds(Spread.Area ellipse, Place place) {
    double east = place.eastM - ellipse.east().metres();
    double north = place.northM - ellipse.north().metres();
    double sin = Math.sin(ellipse.along().inRadians());
    double cos = Math.cos(ellipse.along().inRadians());
    double along = (east * sin + north * cos) / ellipse.longHalf().metres();
    double aside = (east * cos - north * sin) / ellipse.shortHalf().metres();
    return along * along + aside * aside <= 1;
  }
}
