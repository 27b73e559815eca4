package padside.preflight;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.flight.Field;
import padside.site.FieldShape;
import padside.site.Loss;
import padside.units.UnitSystem;

/** Landings outside of a field counted by what they are lost to. */
final class Losses {
  /**
   * What landings are lost to.
   *
   * @param bound of the first of them
   */
  private record Lost(Field.Bound bound, int count) {
    Lost andOneMore() {
      return new Lost(bound, count + 1);
    }
  }

  private final FieldShape field;
  private final UnitSystem units;
  private final Map<String, Lost> byWords = new LinkedHashMap<>();
  private int landings;

  Losses(FieldShape field, UnitSystem units) {
    this.field = field;
    this.units = units;
  }

  /** Counts a landing so many metres east and north of the pad. */
  void count(double eastM, double northM) {
    landings++;
    field
        .lossAt(eastM, northM)
        .map(Loss::bound)
        .ifPresent(
            bound ->
                byWords.compute(
                    bound.whole(units),
                    (words, lost) -> lost == null ? new Lost(bound, 1) : lost.andOneMore()));
  }

  /** Share of the landings inside, from 0 to 1. */
  double inside() {
    int lost = byWords.values().stream().mapToInt(Lost::count).sum();
    return 1 - lost / (double) landings;
  }

  /** Where the others go, the largest share first. */
  List<Spread.Past> past() {
    return byWords.entrySet().stream()
        .map(each -> new Spread.Past(each.getKey(), each.getValue().count / (double) landings))
        .sorted(Comparator.comparingDouble(Spread.Past::share).reversed())
        .toList();
  }

  /** What most are lost to. */
  Optional<Field.Bound> most() {
    return byWords.values().stream().max(Comparator.comparingInt(Lost::count)).map(Lost::bound);
  }
}
