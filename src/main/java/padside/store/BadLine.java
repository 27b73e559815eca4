package padside.store;

import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A journal line that cannot be read.
 *
 * @param file its journal
 * @param at its first byte
 * @param why what is wrong with it
 * @param text its first bytes, each as one character
 * @param held the operations that stood there, where that can be told
 */
record BadLine(String file, long at, String why, String text, Optional<Held> held) {
  private static final int TEXT = 4096;
  private static final Pattern NAME =
      Pattern.compile("\"run\":\"([0-9a-f]{20})\",\"n\":([0-9]{1,15})[,}]");

  /**
   * Operations of one run.
   *
   * @param read true when the line itself still says it, false when its neighbours do
   */
  record Held(String run, long first, long last, boolean read) {
    /** How many they are. */
    long count() {
      return last - first + 1;
    }
  }

  static BadLine of(String file, long at, String why, byte[] bytes) {
    String text = new String(bytes, 0, Math.min(bytes.length, TEXT), StandardCharsets.ISO_8859_1);
    Matcher name = NAME.matcher(text);
    return new BadLine(
        file,
        at,
        why,
        text,
        name.find()
            ? Optional.of(held(name.group(1), Long.parseLong(name.group(2))))
            : Optional.empty());
  }

  private static Held held(String run, long n) {
    return new Held(run, n, n, true);
  }

  /**
   * As told by the sound lines around it: what it says itself counts only if it fits between them.
   *
   * @param before the line before, {@code n} -1 at the beginning of a journal
   */
  BadLine between(Optional<OpId> before, Optional<OpId> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return this;
    }
    long first = before.get().n() + 1;
    long last = after.get().n() - 1;
    boolean fits =
        held.isPresent()
            && held.get().run().equals(after.get().run())
            && held.get().first() >= first
            && held.get().last() <= last;
    boolean one = before.get().n() < 0 || before.get().run().equals(after.get().run());
    if (fits || !one || first > last) {
      return this;
    }
    return new BadLine(
        file, at, why, text, Optional.of(new Held(after.get().run(), first, last, false)));
  }

  /** Those of them whose operations the tables do not have whole from elsewhere. */
  static List<BadLine> lost(List<BadLine> bad, Database database) throws SQLException {
    List<BadLine> lost = new ArrayList<>();
    for (BadLine line : bad) {
      if (!line.isKnown(database)) {
        lost.add(line);
      }
    }
    return lost;
  }

  private boolean isKnown(Database database) throws SQLException {
    if (held.isEmpty()) {
      return false;
    }
    List<String> raws =
        database.list(
            row -> row.getString(1),
            "SELECT raw FROM op JOIN run ON run.id = op.run"
                + " WHERE run.name = ?1 AND n BETWEEN ?2 AND ?3",
            held.get().run(),
            held.get().first(),
            held.get().last());
    return raws.size() == held.get().count() && (!held.get().read() || resembles(raws.get(0)));
  }

  /** A damaged number may name another operation: at least half the bytes must be the same. */
  private boolean resembles(String raw) {
    String sound = new String(raw.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    int same = 0;
    for (int i = 0; i < Math.min(text.length(), sound.length()); i++) {
      same += text.charAt(i) == sound.charAt(i) ? 1 : 0;
    }
    return 2 * same >= text.length();
  }
}
