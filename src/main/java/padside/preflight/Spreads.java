package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.physics.Dispersion;
import padside.physics.Ellipse;
import padside.site.FieldShape;
import padside.units.UnitSystem;

/** Puts a launch flown with scatter into this room's own words. */
final class Spreads {
  private static final double HALF = 0.5;

  private Spreads() {}

  static Spread of(Dispersion scattered, Optional<FieldShape> field, Settings settings) {
    Optional<Losses> losses = field.map(shape -> losses(scattered, shape, settings.units()));
    double share = settings.confidence().share();
    return new Spread(
        scattered.flights(),
        area(scattered.landing(HALF)),
        area(scattered.landing(share)),
        area(scattered.apogee(HALF)),
        area(scattered.apogee(share)),
        losses.map(Losses::inside),
        losses.map(Losses::past).orElse(List.of()));
  }

  private static Losses losses(Dispersion scattered, FieldShape field, UnitSystem units) {
    Losses losses = new Losses(field, units);
    for (int i = 0; i < scattered.flights(); i++) {
      losses.count(scattered.landingEastM(i), scattered.landingNorthM(i));
    }
    return losses;
  }

  private static Spread.Area area(Ellipse ellipse) {
    return new Spread.Area(
        ellipse.east(), ellipse.north(), ellipse.longHalf(), ellipse.shortHalf(), ellipse.along());
  }
}
