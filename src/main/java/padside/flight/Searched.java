package padside.flight;

import padside.fact.Fault;
import padside.flight.FlightLog.Stored;
import padside.search.Found;
import padside.search.Search;

/** What of the log looks for flights. */
interface Searched {
  /**
   * Looks for flights that are not removed, drafts and planned ones included. What was kept since
   * the last search is looked through first, which {@link #lookThrough} may have done.
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
}
