package padside.preflight;

import padside.physics.Draws;
import padside.physics.Scatter;
import padside.safety.RuleSets;
import padside.safety.ScatterSizes;

/**
 * How flights differ from the plan: the sizes that come with the program, drawn the same for every
 * card, so that the same card gets the same answer and two cards differ by what differs between
 * them.
 */
record Scattering(Scatter sizes, Draws draws) {
  /** How many flights are drawn. */
  static final int FLIGHTS = 1000;

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
        Draws.of(FLIGHTS, SEED));
  }
}
