package padside.sync;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.store.Exchange;
import padside.store.Holdings;

/** Which line of a journal bytes say they are; whether they are sound is another question. */
record JournalName(String run, long n) {
  private static final int START = 120;
  private static final Pattern NAME =
      Pattern.compile("\"run\":\"([0-9a-f]{20})\",\"n\":([0-9]{1,15})[,}]");

  static Optional<JournalName> of(byte[] line) {
    Matcher matcher =
        NAME.matcher(
            new String(line, 0, Math.min(line.length, START), StandardCharsets.ISO_8859_1));
    return matcher.find()
        ? Optional.of(new JournalName(matcher.group(1), Long.parseLong(matcher.group(2))))
        : Optional.empty();
  }

  /** Of a sound line. */
  static Optional<JournalName> of(Map<?, ?> line) {
    return line.get("run") instanceof String run
            && Holdings.isRun(run)
            && line.get("n") instanceof Long n
            && n >= 0
        ? Optional.of(new JournalName(run, n))
        : Optional.empty();
  }

  /** The machine a header names; nothing where a line is none. */
  static Optional<Exchange.Device> device(Map<?, ?> line) {
    if (line.get("head") instanceof Map<?, ?> head
        && head.get("dev") instanceof String dev
        && Holdings.isRun(dev)) {
      return Optional.of(
          new Exchange.Device(dev, head.get("label") instanceof String label ? label : ""));
    }
    return Optional.empty();
  }
}
