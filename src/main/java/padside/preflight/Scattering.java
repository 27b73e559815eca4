package padside.preflight;

import java.util.List;
import java.util.stream.Stream;
import padside.physics.Draws;
import padside.physics.Scatter;
import padside.safety.RuleSets;
import padside.safety.ScatterSizes;

/**
 * How flights differ from the plan: the sizes that come with the program, drawn the same for every
 * card, so that the same card gets the same answer and two cards differ by what differs between
 * them.
 *
 * @param inside the share of landings that has to lie inside the field, from 0 to 1
 * @param stages more and more draws, the fewest to find where to look; the last are the draws
 */
record Scattering(Scatter sizes, double inside, List<Draws> stages) {
  Scattering {
    stages = List.copyOf(stages);
  }

  /** How many flights are drawn; powers of two lie evenest. */
  static final int FLIGHTS = 1024;

  /** How many compare one change of a card with another. */
  private static final int FEW_FLIGHTS = 256;

  /** How many tell where to look for a limit. */
  private static final int ROUGH_FLIGHTS = 32;

  /** Nothing is drawn from further apart. */
  static final double MOST_SHARE = 0.5;

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
        RuleSets.house().landingsInsideShare(),
        Stream.of(ROUGH_FLIGHTS, FEW_FLIGHTS, FLIGHTS).map(n -> Draws.of(n, SEED)).toList());
  }

  /** The same for a rocket whose drag differs by another share. */
  Scattering withDragShare(double share) {
    return new Scattering(sizes.withDragShare(share), inside, stages);
  }

  /** The same with fewer flights. */
  Scattering few() {
    return new Scattering(sizes, inside, stages.subList(0, stages.size() - 1));
  }

  /** Those that count. */
  Draws draws() {
    return stages.get(stages.size() - 1);
  }
}
