package padside.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import padside.fact.RecordId;
import padside.flight.Lot;

/**
 * The motors of one stage of a planned flight as the range box gives them out.
 *
 * @param motor designation with its delay
 * @param count how many are wanted
 * @param lot the lot the flight names, if it is still there
 * @param draws what they come from, the lot named first; none while no lot was ever entered
 * @param lacking how many the box does not hold
 */
public record Taken(String motor, int count, Optional<Lot> lot, List<Draw> draws, int lacking) {
  /** So many motors of one lot. */
  public record Draw(Lot lot, int count) {}

  /** Keeps its own list. */
  public Taken {
    draws = List.copyOf(draws);
  }

  /** What is amiss in few words: {@code short 1 C6-5}, or that another lot has to stand in. */
  Optional<String> amiss() {
    if (lacking > 0) {
      return Optional.of("short " + lacking + " " + motor);
    }
    String others =
        draws.stream()
            .map(Draw::lot)
            .filter(each -> !named(each.id()))
            .map(Lot::code)
            .collect(Collectors.joining(", "));
    return lot.filter(any -> !others.isEmpty())
        .map(any -> "lot " + any.code() + " runs out, take " + others);
  }

  private boolean named(RecordId id) {
    return lot.map(Lot::id).equals(Optional.of(id));
  }
}
