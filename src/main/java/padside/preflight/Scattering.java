package padside.preflight;

import padside.physics.Draws;
import padside.physics.Scatter;
import padside.safety.RuleSets;
import padside.safety.ScatterSizes;

/**
 * How flights differ from the plan: the sizes that come with the program, drawn the same for every
 * card, so that the same card gets the same answer and two cards differ by what differs between
 * them.
 *
 * @param roughDraws very few, for a first look
 */
record Scattering(Scatter sizes, Draws draws, Draws roughDraws) {
  /** How many flights are drawn; powers of two lie evenest. */
  static final int FLIGHTS = 1024;

  /** How many compare one change of a card with another. */
  private static final int FEW_FLIGHTS = 256;

  /** How many tell where to look for a limit. */
  private static final int ROUGH_FLIGHTS = 32;

  private static final long SEED = 1;

  /** The program's own. */
  static Scattering shipped() {
    ScatterSizes sizes = RuleSets.scatter();
    return new Scattering(
        new Scatter(
            sizes.impulseShare().value(),
            sizes.dragShare().value(),
            sizes.canopyDragShare().value(),
            sizes.delayShare().value(),
            sizes.leastDelay().value(),
            sizes.windShare().value(),
            sizes.windDirection().value(),
            sizes.gustDeviations().value(),
            sizes.rodTilt().value()),
        Draws.of(FLIGHTS, SEED),
        Draws.of(ROUGH_FLIGHTS, SEED));
  }

  /** The same with fewer flights. */
  Scattering few() {
    return new Scattering(sizes, Draws.of(FEW_FLIGHTS, SEED), roughDraws);
  }
}
