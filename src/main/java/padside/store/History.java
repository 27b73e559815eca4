package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padside.clock.Anchor;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Kind;
import padside.flight.Operation;
import padside.store.WrittenCells.Written;

/** What was done to a record, read from the lines and cells that are kept of it. */
final class History {
  private static final String DONE =
      """
      SELECT op.raw FROM op JOIN run ON run.id = op.run WHERE (op.run, op.n) IN (
        SELECT cell.run, cell.n FROM cell JOIN record ON record.id = cell.record
          WHERE record.name = ?1 AND record.kind = ?2
        UNION SELECT run.id, ?4 FROM run WHERE run.name = ?3)
      ORDER BY op.t, run.name""";

  private final Database database;
  private final WrittenCells cells;
  private final BareOperations bare;

  History(Database database, List<Anchor> anchors) {
    this.database = database;
    this.cells = new WrittenCells(database);
    this.bare = new BareOperations(database, anchors);
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
    Operation done = bare.of(line);
    List<Operation.Changed> changes = new ArrayList<>();
    Set<String> made = new HashSet<>();
    for (JournalLine.CellChange change : line.changes()) {
      Optional<Kind> kind = Kind.find(change.kind());
      if (kind.isEmpty()) {
        continue; // of a newer version
      }
      RecordId record = new RecordId(change.record());
      if (done.made(record) && made.add(change.record())) {
        Facts.Cell removed = shown(change.record(), Kind.REMOVED.name());
        changes.add(Operation.Changed.made(kind.get(), record, removed));
      }
      if (change.field().isPresent()) {
        changes.add(changed(kind.get(), line.op(), change));
      }
    }
    return new Operation(
        done.id(), done.label(), done.when(), done.timed(), done.machine(), changes);
  }

  private Operation.Changed changed(Kind kind, OpId op, JournalLine.CellChange change)
      throws SQLException {
    String field = change.field().orElseThrow();
    List<Written> all = cells.of(change.record(), field);
    List<Written> heads = all.stream().filter(Written::head).toList();
    Optional<Written> replaced =
        WrittenCells.last(
            all.stream().filter(each -> change.replaces().contains(each.op())).toList());
    boolean stands = WrittenCells.last(heads).filter(each -> each.op().equals(op)).isPresent();
    Optional<Written> beside =
        WrittenCells.last(heads.stream().filter(each -> stands && !each.op().equals(op)).toList());
    Facts.Cell before = cell(replaced);
    return new Operation.Changed(
        kind,
        new RecordId(change.record()),
        field,
        before,
        replaced.map(each -> new RecordId(each.op().toString())),
        change.cell(),
        cell(WrittenCells.last(heads)),
        stands,
        beside.map(Written::cell).orElse(before));
  }

  private Facts.Cell shown(String record, String field) throws SQLException {
    return cell(WrittenCells.last(cells.of(record, field).stream().filter(Written::head).toList()));
  }

  private static Facts.Cell cell(Optional<Written> written) {
    return written.map(Written::cell).orElse(Facts.Cell.emptied());
  }
}
