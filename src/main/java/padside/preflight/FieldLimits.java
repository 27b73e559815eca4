package padside.preflight;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import padside.physics.Draws;
import padside.physics.LandingFan;
import padside.physics.Launch;
import padside.physics.Scatter;
import padside.safety.Case;
import padside.site.FieldShape;
import padside.units.Angle;
import padside.units.Speed;

/**
 * The largest wind up to which nine of ten landings, the share of the house rules, lie inside the
 * field, the wind's direction and its ratio of gust to mean kept. Where nobody noted a direction,
 * the worst of sixteen is taken.
 *
 * <p>All winds are flown with the same draws, so that the limit is the same for the same card and
 * moves smoothly with what is on it. A few draws find where to look, and in which direction.
 */
final class FieldLimits {
  /** Winds are searched up to here, twice what any code here allows. */
  static final Speed SEARCHED_TO = new Speed(20);

  private static final int DIRECTIONS = 16;

  /**
   * By so much over the square root of how many draws there are the limit in one direction may be
   * larger than in the worst, and by {@link #CLOSE_STEPS}, and still be the worst by more draws.
   */
  private static final double CLOSE_SHARE = 1.4;

  private static final int CLOSE_STEPS = 16;

  /** 256 draws tell a limit up to some 3 % higher than 1,024 do, as measured. */
  private static final double CAUTION = 0.95;

  private final Launch launch;
  private final FieldShape field;
  private final Scatter sizes;
  private final double inside;
  private final BooleanSupplier abandoned;

  /** A direction of the wind, as turned from the launch's own, and about where its limit is. */
  private record Aim(Angle turn, int step) {}

  private FieldLimits(
      Launch launch, FieldShape field, Scattering scattering, BooleanSupplier abandoned) {
    this.launch = launch;
    this.field = field;
    this.sizes = scattering.sizes();
    this.inside = scattering.inside();
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
    List<Draws> stages = scattering.stages();
    List<Aim> aims = limits.aims();
    for (Draws draws : stages.subList(0, stages.size() - 1)) {
      if (aims.size() > 1 || draws == stages.get(0)) {
        aims = close(limits.aimed(aims, draws), draws.flights());
      }
    }
    return limits.worst(aims, scattering.draws());
  }

  /** As {@link #of} with few draws, and so much lower that all of them tell no less. */
  static Case.FieldLimit cautious(
      Launch launch, FieldShape field, Scattering few, BooleanSupplier abandoned) {
    Case.FieldLimit limit = of(launch, field, few, abandoned);
    return new Case.FieldLimit(new Speed(CAUTION * limit.wind().metresPerSecond()), limit.bound());
  }

  /** Every direction to look in, from calm. */
  private List<Aim> aims() {
    int directions = launch.wind().wind().from().isPresent() ? 1 : DIRECTIONS;
    return IntStream.range(0, directions)
        .mapToObj(i -> new Aim(Angle.ofDegrees(360.0 * i / DIRECTIONS), 0))
        .toList();
  }

  private List<Aim> aimed(List<Aim> aims, Draws draws) {
    LandingFan fan = fan(draws);
    return aims.stream()
        .map(aim -> new Aim(aim.turn(), shares(fan, aim).limit(aim.step())))
        .toList();
  }

  /** Those that may be the worst, by so many draws. */
  private static List<Aim> close(List<Aim> aims, int draws) {
    int least = aims.stream().mapToInt(Aim::step).min().orElseThrow();
    double most = least * (1 + CLOSE_SHARE / Math.sqrt(draws)) + CLOSE_STEPS;
    return aims.stream().filter(aim -> aim.step() <= most).toList();
  }

  /** The least of these limits. */
  private Case.FieldLimit worst(List<Aim> aims, Draws draws) {
    LandingFan fan = fan(draws);
    LandingShares worst = shares(fan, aims.get(0));
    int least = LandingShares.LAST_STEP;
    for (Aim aim : aims) {
      LandingShares shares = shares(fan, aim);
      int step = shares.limit(aim.step());
      worst = step < least ? shares : worst;
      least = Math.min(step, least);
    }
    return least == LandingShares.LAST_STEP
        ? new Case.FieldLimit(SEARCHED_TO, Optional.empty())
        : new Case.FieldLimit(new Speed(least * LandingShares.STEP_MPS), worst.mostLost(least + 1));
  }

  private LandingFan fan(Draws draws) {
    return LandingFan.of(launch, sizes, draws, abandoned);
  }

  private LandingShares shares(LandingFan fan, Aim aim) {
    LandingFan turned = aim.turn().radians() == 0 ? fan : fan.turnedBy(aim.turn());
    return new LandingShares(turned, field, inside);
  }
}
