package padside.store;

import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Kind;
import padside.flight.Operation;

/** What was done to a record, read from the lines and cells that are kept of it. */
final class History {
  private static final String DONE =
      """
      SELECT op.raw FROM op JOIN run ON run.id = op.run WHERE (op.run, op.n) IN (
        SELECT cell.run, cell.n FROM cell JOIN record ON record.id = cell.record
          WHERE record.name = ?1 AND record.kind = ?2
        UNION SELECT run.id, ?4 FROM run WHERE run.name = ?3)
      ORDER BY op.t, run.name""";

  private static final String CELLS =
      """
      SELECT field, run.name, n, value, typed, head FROM cell
      JOIN record ON record.id = cell.record JOIN run ON run.id = cell.run
      WHERE record.name = ?1 ORDER BY cell.t, run.name""";

  private static final String HEADER =
      "SELECT raw FROM op JOIN run ON run.id = op.run WHERE run.name = ?1 AND n = 0";

  private final Database database;
  private final Map<String, List<Written>> cells = new HashMap<>();
  private final Map<String, String> machines = new HashMap<>();

  /** A cell as an operation wrote it; head while nobody has replaced it. */
  private record Written(String field, OpId op, Facts.Cell cell, boolean head) {}

  History(Database database) {
    this.database = database;
  }

  /** Oldest first. */
  List<Operation> of(Kind kind, RecordId id) throws SQLException {
    Optional<OpId> maker = maker(id);
    List<Operation> history = new ArrayList<>();
    for (String raw :
        database.list(
            row -> row.getString(1),
            DONE,
            id.text(),
            kind.code(),
            maker.map(OpId::run).orElse(""),
            maker.map(OpId::n).orElse(0L))) {
      Optional<JournalLine> line = LineForm.read(raw).value();
      if (line.isPresent()) {
        history.add(operation(line.get()));
      }
    }
    return history;
  }

  /** The operation a record is named for, which may have written no cell of it. */
  private static Optional<OpId> maker(RecordId id) {
    String[] parts = id.text().split("\\.", 3);
    return parts.length < 2 ? Optional.empty() : OpId.read(parts[0] + "." + parts[1]);
  }

  private Operation operation(JournalLine line) throws SQLException {
    RecordId id = new RecordId(line.op().toString());
    Operation bare =
        new Operation(
            id,
            line.label(),
            Instant.ofEpochMilli(line.wall()),
            machine(line.op().run()),
            List.of());
    List<Operation.Changed> changes = new ArrayList<>();
    Set<String> made = new HashSet<>();
    for (JournalLine.CellChange change : line.changes()) {
      Optional<Kind> kind = Kind.find(change.kind());
      if (kind.isEmpty()) {
        continue; // of a newer version
      }
      RecordId record = new RecordId(change.record());
      if (bare.made(record) && made.add(change.record())) {
        Facts.Cell removed = shown(change.record(), Kind.REMOVED.name());
        changes.add(Operation.Changed.made(kind.get(), record, removed));
      }
      if (change.field().isPresent()) {
        changes.add(changed(kind.get(), line.op(), change));
      }
    }
    return new Operation(id, bare.label(), bare.when(), bare.machine(), changes);
  }

  private Operation.Changed changed(Kind kind, OpId op, JournalLine.CellChange change)
      throws SQLException {
    String field = change.field().orElseThrow();
    List<Written> all = written(change.record(), field);
    List<Written> heads = all.stream().filter(Written::head).toList();
    Optional<Written> replaced =
        last(all.stream().filter(each -> change.replaces().contains(each.op)).toList());
    boolean stands = last(heads).filter(each -> each.op.equals(op)).isPresent();
    Optional<Written> beside =
        last(heads.stream().filter(each -> stands && !each.op.equals(op)).toList());
    Facts.Cell before = cell(replaced);
    return new Operation.Changed(
        kind,
        new RecordId(change.record()),
        field,
        before,
        replaced.map(each -> new RecordId(each.op.toString())),
        change.cell(),
        cell(last(heads)),
        stands,
        beside.map(Written::cell).orElse(before));
  }

  private Facts.Cell shown(String record, String field) throws SQLException {
    return cell(last(written(record, field).stream().filter(Written::head).toList()));
  }

  /** Of several cells the one with the highest (t, run). */
  private static Optional<Written> last(List<Written> cells) {
    return cells.isEmpty() ? Optional.empty() : Optional.of(cells.get(cells.size() - 1));
  }

  private static Facts.Cell cell(Optional<Written> written) {
    return written.map(Written::cell).orElse(Facts.Cell.emptied());
  }

  /** By (t, run). */
  private List<Written> written(String record, String field) throws SQLException {
    List<Written> all = cells.get(record);
    if (all == null) {
      all = database.list(History::read, CELLS, record);
      cells.put(record, all);
    }
    return all.stream().filter(each -> each.field.equals(field)).toList();
  }

  private static Written read(ResultSet row) throws SQLException {
    String value = row.getString(4);
    try {
      return new Written(
          row.getString(1),
          new OpId(row.getString(2), row.getLong(3)),
          new Facts.Cell(
              value == null ? Optional.empty() : Optional.of(Json.read(value)),
              Optional.ofNullable(row.getString(5))),
          row.getBoolean(6));
    } catch (IOException e) {
      throw new SQLException("a cell that is no JSON", e);
    }
  }

  private String machine(String run) throws SQLException {
    String known = machines.get(run);
    if (known == null) {
      known =
          database
              .first(row -> row.getString(1), HEADER, run)
              .flatMap(raw -> LineForm.read(raw).value())
              .map(line -> line.head().get("label") instanceof String label ? label : "")
              .orElse("");
      machines.put(run, known);
    }
    return known;
  }
}
