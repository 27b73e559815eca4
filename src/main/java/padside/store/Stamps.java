package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.FlightLog.Stamp;
import padside.flight.Kind;
import padside.store.WrittenCells.Written;

/** The times that one start of a machine put into the log. */
final class Stamps {
  private static final String LINES =
      """
      SELECT raw FROM op JOIN run ON run.id = op.run
      WHERE run.name = ?1 AND n > 0 AND state = 'applied' ORDER BY n""";

  private final Database database;
  private final RunHeaders headers;
  private final WrittenCells cells;
  private final Map<OpId, JournalLine> lines = new LinkedHashMap<>();

  /** One field of one record. */
  private record Spot(Kind kind, String record, String field) {
    boolean isOf(JournalLine.CellChange change) {
      return change.record().equals(record) && change.field().equals(Optional.of(field));
    }
  }

  Stamps(Database database) {
    this.database = database;
    this.headers = new RunHeaders(database);
    this.cells = new WrittenCells(database);
  }

  List<Stamp> of(String boot) throws SQLException {
    for (String run : headers.runs(boot)) {
      for (String raw : database.list(row -> row.getString(1), LINES, run)) {
        LineForm.read(raw).value().ifPresent(line -> lines.put(line.op(), line));
      }
    }
    List<Stamp> stamps = new ArrayList<>();
    for (Spot spot : spots()) {
      if (!isRemoved(spot)) {
        stamp(spot).ifPresent(stamps::add);
      }
    }
    return stamps;
  }

  private Set<Spot> spots() {
    Set<Spot> spots = new LinkedHashSet<>();
    for (JournalLine line : lines.values()) {
      for (JournalLine.CellChange change : line.changes()) {
        Kind.find(change.kind())
            .flatMap(kind -> change.field().map(field -> new Spot(kind, change.record(), field)))
            .filter(spot -> Stamp.isIn(spot.kind, spot.field))
            .ifPresent(spots::add);
      }
    }
    return spots;
  }

  /** An edit its removal had not seen would bring a record back. */
  private boolean isRemoved(Spot spot) throws SQLException {
    return database.number("SELECT removed FROM record WHERE name = ?1", spot.record) == 1;
  }

  private Optional<Stamp> stamp(Spot spot) throws SQLException {
    List<Written> all = cells.of(spot.record, spot.field);
    Optional<Written> shown = WrittenCells.last(all.stream().filter(Written::head).toList());
    Optional<JournalLine> first = shown.flatMap(cell -> origin(cell, spot, all));
    return first.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Stamp(
                spot.kind,
                new RecordId(spot.record),
                spot.field,
                shown.get().cell(),
                facts(first.get(), spot),
                headers.moment(first.get()),
                headers.zone(first.get().op().run())));
  }

  /**
   * What wrote a cell first: an undo only brought it back, and behind a correction stands what it
   * corrected. Absent when that was done elsewhere.
   */
  private Optional<JournalLine> origin(Written cell, Spot spot, List<Written> all) {
    Optional<JournalLine> line =
        all.stream()
            .filter(each -> each.cell().equals(cell.cell()))
            .findFirst()
            .map(each -> lines.get(each.op()));
    if (line.isEmpty() || !isCorrection(line.get())) {
      return line;
    }
    List<OpId> replaced =
        line.get().changes().stream()
            .filter(spot::isOf)
            .flatMap(change -> change.replaces().stream())
            .toList();
    List<Written> earlier =
        all.subList(0, all.indexOf(cell)).stream()
            .filter(each -> replaced.contains(each.op()))
            .toList();
    return WrittenCells.last(earlier).flatMap(each -> origin(each, spot, all));
  }

  private static boolean isCorrection(JournalLine line) {
    return line.changes().stream().anyMatch(change -> change.kind().equals(Kind.CLOCK.code()));
  }

  /** All that a line wrote into the record. */
  private static Facts facts(JournalLine line, Spot spot) {
    Facts facts = Facts.none();
    for (JournalLine.CellChange change : line.changes()) {
      if (change.record().equals(spot.record) && change.field().isPresent()) {
        facts = facts.with(change.field().get(), change.cell());
      }
    }
    return facts;
  }
}
