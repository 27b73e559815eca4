package padside.store;

import java.sql.SQLException;
import java.util.Optional;

/**
 * How much a database shows.
 *
 * @param first the earliest day's date as it stands in the log, with the latest
 */
record Contents(long lines, long flights, Optional<String> first, Optional<String> last) {
  static Contents of(Database database) throws SQLException {
    return database
        .first(
            row ->
                new Contents(
                    row.getLong(1),
                    row.getLong(2),
                    Optional.ofNullable(row.getString(3)),
                    Optional.ofNullable(row.getString(4))),
            """
            SELECT (SELECT count(*) FROM op),
              (SELECT count(*) FROM record WHERE kind = 'flight' AND removed = 0),
              min(doc ->> '$.date.v'), max(doc ->> '$.date.v')
            FROM record WHERE kind = 'day' AND removed = 0""")
        .orElseThrow();
  }

  /** For the middle of a sentence. */
  String words() {
    String dates =
        first.isEmpty()
            ? ""
            : first.equals(last)
                ? ", day " + first.get()
                : ", days " + first.get() + " to " + last.orElseThrow();
    return lines + " lines, " + flights + " flights" + dates;
  }
}
