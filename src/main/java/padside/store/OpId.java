package padside.store;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names one operation: the run of the program that wrote it and its count in that run. */
record OpId(String run, long n) {
  private static final Pattern TEXT = Pattern.compile("([0-9a-f]{20})\\.([0-9]{1,15})");

  static Optional<OpId> read(String text) {
    Matcher matcher = TEXT.matcher(text);
    return matcher.matches()
        ? Optional.of(new OpId(matcher.group(1), Long.parseLong(matcher.group(2))))
        : Optional.empty();
  }

  @Override
  public String toString() {
    return run + "." + n;
  }
}
