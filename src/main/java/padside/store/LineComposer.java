package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.store.JournalLine.CellChange;

/** Makes the changes of a journal line out of an action. */
final class LineComposer {
  /**
   * The changes with the records they are of.
   *
   * @param ids the records in the order of the action's changes
   */
  record Composed(List<CellChange> changes, List<RecordId> ids) {
    Composed {
      changes = List.copyOf(changes);
      ids = List.copyOf(ids);
    }
  }

  private record Target(Kind kind, RecordId id, boolean fresh) {}

  private final LogTables tables;
  private final OpId op;
  private int made;

  LineComposer(LogTables tables, OpId op) {
    this.tables = tables;
    this.op = op;
  }

  Composed compose(Action action) throws SQLException {
    Map<Target, Facts> facts = new LinkedHashMap<>();
    List<RecordId> ids = new ArrayList<>();
    for (Action.Change change : action.changes()) {
      Target target = target(change);
      ids.add(target.id());
      facts.merge(target, change.facts(), Facts::with); // of two changes to one cell the later
    }
    List<CellChange> changes = new ArrayList<>();
    for (Map.Entry<Target, Facts> entry : facts.entrySet()) {
      changes.addAll(cells(entry.getKey(), entry.getValue()));
    }
    return new Composed(changes, ids);
  }

  private Target target(Action.Change change) {
    if (change.record().isPresent()) {
      return new Target(change.kind(), change.record().get(), false);
    }
    made++;
    return new Target(
        change.kind(), new RecordId(made == 1 ? op.toString() : op + "." + made), true);
  }

  private List<CellChange> cells(Target target, Facts facts) throws SQLException {
    String kind = target.kind().code();
    String id = target.id().text();
    List<CellChange> cells = new ArrayList<>();
    for (Map.Entry<String, Facts.Cell> entry : facts.cells().entrySet()) {
      String field = entry.getKey();
      finite(field, entry.getValue().value().orElse(""));
      List<OpId> replaces = target.fresh() ? List.of() : seen(id, field);
      cells.add(new CellChange(kind, id, Optional.of(field), entry.getValue(), replaces));
    }
    if (cells.isEmpty()) {
      cells.add(new CellChange(kind, id, Optional.empty(), Facts.Cell.emptied(), List.of()));
    }
    return cells;
  }

  private List<OpId> seen(String id, String field) throws SQLException {
    return field.equals(Kind.REMOVED.name()) ? tables.heads(id) : tables.heads(id, field);
  }

  /** JSON has no word for what is not a number; it would come back as text. */
  private static void finite(String field, Object value) {
    if (value instanceof Number number && !Double.isFinite(number.doubleValue())) {
      throw new IllegalArgumentException(field + " is " + value + ", which cannot be kept");
    }
    if (value instanceof List<?> items) {
      items.forEach(item -> finite(field, item));
    }
    if (value instanceof Map<?, ?> entries) {
      entries.values().forEach(item -> finite(field, item));
    }
  }
}
