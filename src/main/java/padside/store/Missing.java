package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/**
 * Operations no line is left of: those that kept lines speak of, and mere gaps in the count of a
 * run, which a save that the medium refused leaves too.
 */
final class Missing {
  /** Operations named one by one at most. */
  private static final int NAMED = 20;

  private static final String REPLACED =
      """
      SELECT run.name || '.' || replaced.n, record.name FROM replaced
      JOIN run ON run.id = replaced.run JOIN record ON record.id = replaced.record
      WHERE NOT EXISTS (SELECT 1 FROM op WHERE op.run = replaced.run AND op.n = replaced.n)
      ORDER BY run.name, replaced.n""";

  private static final String MAKERS =
      """
      SELECT made.op, made.name FROM (
        SELECT substr(name, 1, 20) AS maker, name, substr(name, 1, CASE
          WHEN instr(substr(name, 22), '.') > 0 THEN 20 + instr(substr(name, 22), '.')
          ELSE length(name) END) AS op
        FROM record WHERE name GLOB '[0-9a-f]*' AND substr(name, 21, 1) = '.') AS made
      WHERE NOT EXISTS (
        SELECT 1 FROM op JOIN run ON run.id = op.run
        WHERE run.name = made.maker AND op.n = CAST(substr(made.op, 22) AS INTEGER))
      ORDER BY made.op""";

  private static final String RUNS_BEFORE =
      """
      SELECT DISTINCT raw ->> '$.head.before' FROM\
      """
          + RunHeaders.ALL
          + """
            WHERE raw ->> '$.head.before' IS NOT NULL
            AND NOT EXISTS (SELECT 1 FROM op AS o JOIN run AS r ON r.id = o.run
              WHERE r.name = op.raw ->> '$.head.before')""";

  private static final String GAPPED =
      """
      SELECT run.name, max(op.n), count(*), min(op.n) FROM op JOIN run ON run.id = op.run
      GROUP BY run.id HAVING count(*) <= max(op.n) ORDER BY run.name""";

  private record Run(String name, long last, long count, long first) {}

  private record Named(String op, String record) {}

  private final Database database;
  private final RecordWords words;

  Missing(Database database) {
    this.database = database;
    this.words = new RecordWords(database);
  }

  /** Operations and runs that lines still kept speak of, in plain words. */
  List<String> spokenOf() throws SQLException {
    TreeMap<String, Set<String>> records = new TreeMap<>();
    for (String sql : List.of(REPLACED, MAKERS)) {
      for (Named named : database.list(row -> new Named(row.getString(1), row.getString(2)), sql)) {
        records.computeIfAbsent(named.op(), op -> new LinkedHashSet<>()).add(named.record());
      }
    }
    List<String> told = new ArrayList<>();
    for (var entry : records.entrySet()) {
      told.add(
          "operation "
              + entry.getKey()
              + " ("
              + words.of(List.copyOf(entry.getValue()))
              + "), which other lines speak of");
    }
    for (String run : database.list(row -> row.getString(1), RUNS_BEFORE)) {
      told.add("every line of run " + run + ", which came before another");
    }
    return told.size() <= NAMED ? told : cut(told);
  }

  private static List<String> cut(List<String> told) {
    List<String> some = new ArrayList<>(told.subList(0, NAMED));
    some.add("and " + (told.size() - NAMED) + " more operations");
    return some;
  }

  /** Gaps in the count of a run, in plain words. */
  List<String> gaps() throws SQLException {
    List<String> told = new ArrayList<>();
    for (Run run :
        database.list(
            row -> new Run(row.getString(1), row.getLong(2), row.getLong(3), row.getLong(4)),
            GAPPED)) {
      long gaps = run.last() + 1 - run.count();
      told.add(
          "Run "
              + run.name()
              + " counts to "
              + run.last()
              + " and has "
              + run.count()
              + " lines: "
              + gaps
              + " missing"
              + (run.first() > 0 ? ", its header among them" : "")
              + ". A save the medium refused leaves such a gap too.");
    }
    return told;
  }
}
