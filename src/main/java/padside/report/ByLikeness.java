package padside.report;

import java.util.IdentityHashMap;
import java.util.function.Function;
import padside.fact.Facts;

/** What was made of the facts that passing flights share, made once for each. */
final class ByLikeness<V> {
  /** More would fill the memory where no two flights are alike. */
  private static final int MOST = 1000;

  private final IdentityHashMap<Facts, V> made = new IdentityHashMap<>();
  private final Function<Facts, V> making;

  ByLikeness(Function<Facts, V> making) {
    this.making = making;
  }

  V of(Facts alike) {
    V known = made.get(alike);
    if (known == null) {
      if (made.size() == MOST) {
        made.clear();
      }
      known = making.apply(alike);
      made.put(alike, known);
    }
    return known;
  }
}
