package padside.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Rows that could not be read: the first of them by number and why, all of them counted. */
final class BadRows {
  private static final int NAMED = 3;

  /** More than these, and more than the share below, are no table of samples. */
  private static final int ALWAYS_BORNE = 20;

  private static final double BORNE_SHARE = 0.1;

  private final List<String> named = new ArrayList<>();
  private long count;

  void add(long number, String why) {
    count++;
    if (named.size() < NAMED) {
      named.add("line " + number + " " + why);
    }
  }

  /** Whether so many rows cannot be left out. */
  boolean areTooMany(long good) {
    return count > ALWAYS_BORNE && count > BORNE_SHARE * (good + count);
  }

  /** {@code 4 lines were left out: line 7 has no number, ...}. */
  Optional<String> told() {
    if (count == 0) {
      return Optional.empty();
    }
    String head =
        count == 1
            ? "1 line was left out: "
            : String.format(Locale.ROOT, "%,d lines were left out: ", count);
    return Optional.of(head + String.join(", ", named) + (count > NAMED ? " ..." : "."));
  }
}
