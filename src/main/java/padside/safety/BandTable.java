package padside.safety;

import java.util.List;
import java.util.Optional;
import padside.flight.Ruling.Verdict;

/**
 * A table of a rule file.
 *
 * @param origin where it comes from; its value is empty
 * @param complexOrigin where its distances for clusters and stages come from when from elsewhere
 * @param past the verdict when the table's demand is not met; information when absent
 */
record BandTable(
    List<Band> byImpulse,
    List<Band> byApogee,
    Sourced<String> origin,
    Optional<Sourced<String>> complexOrigin,
    Optional<Verdict> past) {
  BandTable {
    byImpulse = List.copyOf(byImpulse);
    byApogee = List.copyOf(byApogee);
  }

  boolean asksApogee() {
    return !byApogee.isEmpty();
  }
}
