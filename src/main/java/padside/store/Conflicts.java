package padside.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.clock.Anchor;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.FlightLog.Conflict;
import padside.flight.FlightLog.Head;
import padside.flight.Kind;

/**
 * What several machines said differently. The records it is in are marked as lines are taken in, so
 * that a log with none is asked in no time.
 */
final class Conflicts {
  /** Cells that say the same, however typed, are none; nor is what a removal has seen all of. */
  private static final String MARK =
      """
      UPDATE record SET contested = CASE removed
        WHEN 0 THEN EXISTS (
            SELECT 1 FROM cell WHERE record = ?1 AND field = 'removed' AND head = 1
              AND value = 'true')
          OR EXISTS (
            SELECT 1 FROM cell WHERE record = ?1 AND field <> 'removed' AND head = 1 GROUP BY field
            HAVING count(DISTINCT ifnull(value, 'typed ' || ifnull(typed, ''))) > 1)
        ELSE EXISTS (
          SELECT 1 FROM cell WHERE record = ?1 AND field = 'removed' AND head = 1
            AND value IS NOT 'true')
        END
      WHERE id = ?1 AND (?2 OR contested = 1 OR EXISTS (
        SELECT 1 FROM cell WHERE record = ?1 AND field = 'removed' AND head = 1))""";

  private static final String CONTESTED =
      """
      SELECT id, name, kind, doc, removed FROM record INDEXED BY record_contested
      WHERE contested = 1 ORDER BY t DESC, run DESC, part DESC, name DESC LIMIT ?1""";

  private static final String HEADS =
      """
      SELECT field, value, typed, run.name, n FROM cell JOIN run ON run.id = cell.run
      WHERE record = ?1 AND head = 1 ORDER BY field, t, run.name""";

  private final Database database;
  private final BareOperations operations;
  private final Map<OpId, Optional<JournalLine>> lines = new HashMap<>();

  /** A record of which heads differ, as it shows. */
  private record Contested(long row, String name, String kind, Facts facts, boolean removed) {}

  private record Standing(String field, Facts.Cell cell, OpId op) {
    boolean isRemoval() {
      return field.equals(Kind.REMOVED.name());
    }

    boolean isRemoved() {
      return isRemoval() && cell.value().equals(Optional.of(true));
    }

    /** What it says, however that was typed. */
    Facts.Cell meaning() {
      return cell.value().map(Facts.Cell::of).orElse(cell);
    }
  }

  Conflicts(Database database, List<Anchor> anchors) {
    this.database = database;
    this.operations = new BareOperations(database, anchors);
  }

  /**
   * Marks a record whose heads differ, within the caller's transaction and once it shows.
   *
   * @param several whether any field of it has several heads
   */
  static void mark(Database database, long record, boolean several) throws SQLException {
    database.run(MARK, record, several);
  }

  /** Of so many records at most, the newest first. */
  List<Conflict> newest(int records) throws SQLException {
    List<Conflict> conflicts = new ArrayList<>();
    for (Contested each : database.list(Conflicts::record, CONTESTED, records)) {
      Optional<Kind> kind = Kind.find(each.kind());
      if (kind.isPresent()) {
        conflicts.addAll(of(kind.get(), each, database.list(Conflicts::head, HEADS, each.row())));
      }
    }
    return conflicts;
  }

  private List<Conflict> of(Kind kind, Contested record, List<Standing> heads) throws SQLException {
    List<Conflict> conflicts = new ArrayList<>();
    List<Standing> removal = removal(record, heads);
    if (!removal.isEmpty()) {
      conflicts.add(conflict(kind, record, removal));
    }
    if (record.removed()) {
      return conflicts; // nobody sees its fields
    }
    Map<String, List<Standing>> fields = new LinkedHashMap<>();
    heads.forEach(head -> fields.computeIfAbsent(head.field(), f -> new ArrayList<>()).add(head));
    fields.remove(Kind.REMOVED.name());
    for (List<Standing> field : fields.values()) {
      if (field.stream().map(Standing::meaning).distinct().count() > 1) {
        conflicts.add(conflict(kind, record, field));
      }
    }
    return conflicts;
  }

  /** The marks of a removal, then what stands against it; empty where nothing does. */
  private List<Standing> removal(Contested record, List<Standing> heads) throws SQLException {
    if (heads.stream().noneMatch(Standing::isRemoved)) {
      return List.of();
    }
    List<Standing> marks = new ArrayList<>(heads.stream().filter(Standing::isRemoved).toList());
    Set<OpId> seen = new HashSet<>();
    for (Standing mark : marks) {
      seen.add(mark.op());
      line(mark.op()).ifPresent(line -> seen.addAll(seen(line, record.name())));
    }
    List<Standing> against =
        heads.stream()
            .filter(head -> head.isRemoval() ? !head.isRemoved() : !seen.contains(head.op()))
            .filter(head -> head.isRemoval() || !record.removed())
            .toList();
    marks.addAll(against);
    return against.isEmpty() ? List.of() : marks;
  }

  private static List<OpId> seen(JournalLine line, String record) {
    return line.changes().stream()
        .filter(change -> change.record().equals(record))
        .filter(change -> change.field().equals(Optional.of(Kind.REMOVED.name())))
        .flatMap(change -> change.replaces().stream())
        .toList();
  }

  private Conflict conflict(Kind kind, Contested record, List<Standing> standing)
      throws SQLException {
    List<Head> heads = new ArrayList<>();
    for (Standing each : standing) {
      Optional<JournalLine> line = line(each.op());
      if (line.isPresent()) {
        heads.add(
            new Head(
                each.field(),
                each.cell(),
                operations.of(line.get()),
                operations.device(line.get())));
      }
    }
    return new Conflict(
        kind, new RecordId(record.name()), record.facts(), standing.get(0).field(), heads);
  }

  private Optional<JournalLine> line(OpId op) throws SQLException {
    Optional<JournalLine> line = lines.get(op);
    if (line == null) {
      line = LogTables.raw(database, op).flatMap(raw -> LineForm.read(raw).value());
      lines.put(op, line);
    }
    return line;
  }

  private static Contested record(ResultSet row) throws SQLException {
    return new Contested(
        row.getLong(1),
        row.getString(2),
        row.getString(3),
        Records.facts(row.getString(4)),
        row.getBoolean(5));
  }

  private static Standing head(ResultSet row) throws SQLException {
    return new Standing(
        row.getString(1),
        WrittenCells.cell(row.getString(2), row.getString(3)),
        new OpId(row.getString(4), row.getLong(5)));
  }
}
