package padside.sync;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padside.store.Holdings;

/** Lines met one by one, in any order. */
final class HoldingsFound {
  private final Map<String, List<Holdings.Span>> runs = new HashMap<>();

  void add(JournalName name) {
    List<Holdings.Span> spans = runs.computeIfAbsent(name.run(), run -> new ArrayList<>());
    int last = spans.size() - 1;
    if (last >= 0 && spans.get(last).last() + 1 == name.n()) {
      spans.set(last, new Holdings.Span(spans.get(last).first(), name.n()));
    } else {
      spans.add(new Holdings.Span(name.n(), name.n()));
    }
  }

  Holdings all() {
    return new Holdings(runs);
  }
}
