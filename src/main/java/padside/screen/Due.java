package padside.screen;

import java.util.ArrayList;
import java.util.List;
import padside.clock.Moment;
import padside.units.TimeSpan;

/** What is due while the world moves on, whatever screen is looked at. */
final class Due {
  /** How often the medium is tried again while it takes nothing. */
  static final TimeSpan TRYING_AGAIN = new TimeSpan(5);

  private Due() {}

  /** A bell when the wait after a misfire ends, and another try where the medium takes nothing. */
  static List<Effect> by(Moment later, World world) {
    List<Effect> due = new ArrayList<>();
    if (MisfireWait.endsBetween(world, later)) {
      due.add(new Effect.Bell());
    }
    if (world.refused().isPresent() && tries(later) > tries(world.moment())) {
      due.add(new Effect.TryAgain());
    }
    return due;
  }

  /** How many tries would have been made since the machine was started. */
  private static long tries(Moment moment) {
    return (long) (moment.up().seconds() / TRYING_AGAIN.seconds());
  }
}
