package padside.flight;

import padside.fact.Fault;
import padside.flight.FlightLog.Stored;
import padside.search.Found;
import padside.search.Search;

/** What of the log looks for flights. */
interface Searched {
  /**
   * Looks for flights that are not removed, drafts and planned ones included, among what {@link
   * #lookThrough} has done.
   *
   * @param outcomes whose words may be looked for
   */
  Found<Stored> found(Search search, OutcomeTable outcomes, int most) throws Fault;

  /**
   * Looks through a part of what was kept since the last search, some hundredths of a second; false
   * once nothing is left.
   */
  default boolean lookThrough(OutcomeTable outcomes) throws Fault {
    return false;
  }

  /** Looks through all there is, some seconds for the first time in a large log, and finds. */
  default Found<Stored> foundAmongAll(Search search, OutcomeTable outcomes, int most) throws Fault {
    while (lookThrough(outcomes)) {
      // a part at a time
    }
    return found(search, outcomes, most);
  }
}
