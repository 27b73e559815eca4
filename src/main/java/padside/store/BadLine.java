package padside.store;

import java.nio.ByteBuffer;
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
  /** Why a line is bad at which its journal ends. */
  static final String TORN = "cut off before its end, as when the power fails while writing";

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

  static BadLine of(String file, long at, String why, ByteBuffer bytes) {
    ByteBuffer first = bytes.slice(0, Math.min(bytes.limit(), TEXT));
    String text = StandardCharsets.ISO_8859_1.decode(first).toString();
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

  /** Where it stands, for the middle of a sentence. */
  String place() {
    return "journal " + file + ", byte " + at;
  }

  /** Whether its journal ends within it. */
  boolean isTorn() {
    return why.equals(TORN);
  }

  /** Notes it in a database; false when it was noted there before. */
  boolean note(Database database) throws SQLException {
    return database.run(
            "INSERT OR IGNORE INTO bad_line (file, at, why) VALUES (?1, ?2, ?3)", file, at, why)
        > 0;
  }

  /** Those noted in a database; what is healed is noted no more. */
  static List<BadLine> noted(Database database) throws SQLException {
    return database.list(
        row ->
            new BadLine(row.getString(1), row.getLong(2), row.getString(3), "", Optional.empty()),
        "SELECT file, at, why FROM bad_line");
  }

  /** Notes no more what is whole elsewhere; within the caller's transaction. */
  static List<BadLine> settled(List<BadLine> bad, Database database) throws SQLException {
    List<BadLine> lost = lost(bad, database);
    for (BadLine line : bad) {
      if (!lost.contains(line)) {
        database.run("DELETE FROM bad_line WHERE file = ?1 AND at = ?2", line.file(), line.at());
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
