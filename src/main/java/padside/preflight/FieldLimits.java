package padside.preflight;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import padside.physics.Draws;
import padside.physics.LandingFan;
import padside.physics.Launch;
import padside.safety.Case;
import padside.site.FieldShape;
import padside.units.Angle;
import padside.units.Speed;

/**
 * The largest wind up to which nine of ten landings lie inside the field, the wind's direction and
 * its ratio of gust to mean kept. Where nobody noted a direction, the worst of sixteen is taken.
 *
 * <p>All winds are flown with the same draws, so that the limit is the same for the same card and
 * moves smoothly with what is on it. A few draws find where to look.
 */
final class FieldLimits {
  /** Winds are searched up to here, twice what any code here allows. */
  static final Speed SEARCHED_TO = new Speed(20);

  private static final int DIRECTIONS = 16;

  /** 256 draws tell a limit up to some 3 % higher than 1,024 do, as measured. */
  private static final double CAUTION = 0.95;

  private final Launch launch;
  private final FieldShape field;
  private final Scattering scattering;
  private final BooleanSupplier abandoned;

  private FieldLimits(
      Launch launch, FieldShape field, Scattering scattering, BooleanSupplier abandoned) {
    this.launch = launch;
    this.field = field;
    this.scattering = scattering;
    this.abandoned = abandoned;
  }

  /**
   * The limit, without what landings are lost to where they stay inside up to {@link #SEARCHED_TO}.
   *
   * @throws CancellationException soon after {@code abandoned} answers true
   */
  static Case.FieldLimit of(
      Launch launch, FieldShape field, Scattering scattering, BooleanSupplier abandoned) {
    FieldLimits limits = new FieldLimits(launch, field, scattering, abandoned);
    LandingFan rough = limits.fan(scattering.roughDraws());
    LandingFan all = limits.fan(scattering.draws());
    return launch.wind().wind().from().isPresent()
        ? limits.along(rough, all, SEARCHED_TO.metresPerSecond())
        : limits.worst(rough, all);
  }

  /** As {@link #of} with few draws, and so much lower that all of them tell no less. */
  static Case.FieldLimit cautious(
      Launch launch, FieldShape field, Scattering few, BooleanSupplier abandoned) {
    Case.FieldLimit limit = of(launch, field, few, abandoned);
    return new Case.FieldLimit(
        new Speed(CAUTION * limit.wind().metresPerSecond()), limit.bound());
  }

  private LandingFan fan(Draws draws) {
    return LandingFan.of(launch, scattering.sizes(), draws, abandoned);
  }

  private Case.FieldLimit worst(LandingFan rough, LandingFan all) {
    Case.FieldLimit least = new Case.FieldLimit(SEARCHED_TO, Optional.empty());
    for (int i = 0; i < DIRECTIONS; i++) {
      Angle turn = Angle.ofDegrees(360.0 * i / DIRECTIONS);
      double mostMps = least.wind().metresPerSecond();
      Case.FieldLimit limit = along(rough.turnedBy(turn), all.turnedBy(turn), mostMps);
      least = limit.bound().isPresent() ? limit : least;
    }
    return least;
  }

  /** The limit if it lies below that wind, else that wind without what landings are lost to. */
  private Case.FieldLimit along(LandingFan roughFan, LandingFan allFan, double mostMps) {
    LandingShares all = new LandingShares(allFan, field);
    double first = new LandingShares(roughFan, field).firstLost(0, mostMps);
    double start = Math.max(0, first - LandingShares.STEP_MPS);
    while (start > 0 && !all.holds(start)) {
      start = Math.max(0, start - LandingShares.STEP_MPS);
    }
    double lost = all.firstLost(start, mostMps);
    if (lost >= mostMps && all.holds(mostMps)) {
      return new Case.FieldLimit(new Speed(mostMps), Optional.empty());
    }
    double limit = all.crossing(Math.max(0, lost - LandingShares.STEP_MPS), lost);
    return new Case.FieldLimit(new Speed(limit), all.mostLost(lost));
  }
}
