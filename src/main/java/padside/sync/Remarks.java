package padside.sync;

import java.util.ArrayList;
import java.util.List;

/** What a side has to say at the end, no more than anybody reads. */
final class Remarks {
  private static final int MOST = 20;

  private final List<String> first = new ArrayList<>();
  private int count;

  void add(String sentence) {
    count++;
    if (first.size() < MOST) {
      first.add(sentence);
    }
  }

  List<String> all() {
    List<String> all = new ArrayList<>(first);
    if (count > first.size()) {
      all.add("And " + (count - first.size()) + " more of the kind.");
    }
    return all;
  }
}
