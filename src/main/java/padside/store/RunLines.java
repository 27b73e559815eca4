package padside.store;

import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.units.Reading;

/** The lines one run of the program writes: its header, then one line an action. */
final class RunLines {
  /** Meta key: the device, named by its first run. */
  private static final String DEVICE = "device";

  /** Meta key: the last run that wrote to this log. */
  private static final String BEFORE = "before";

  private final Machine machine;
  private final String run;
  private Optional<Entry> header = Optional.empty();
  private long written;
  private long largestT;

  /**
   * A line to be kept.
   *
   * @param line as it reads back: what goes into the tables is what a rebuild will read
   * @param ids the records in the order of the action's changes
   */
  record Entry(String raw, JournalLine line, List<RecordId> ids) {
    Entry {
      ids = List.copyOf(ids);
    }
  }

  RunLines(Machine machine) {
    this.machine = machine;
    this.run = machine.freshRun();
  }

  String run() {
    return run;
  }

  /** The next line. Its number is used up even if the line is never kept. */
  Entry next(LogTables tables, Action action) throws SQLException, Fault {
    written++;
    largestT = Math.max(largestT, tables.largestT()) + 1;
    OpId op = new OpId(run, written);
    LineComposer.Composed composed = new LineComposer(tables, op).compose(action);
    return entry(
        new JournalLine(
            JournalLine.VERSION,
            op,
            largestT,
            machine.uptimeSeconds(),
            machine.wallMillis(),
            action.label(),
            composed.changes(),
            Map.of()),
        composed.ids());
  }

  /** Line 0, the same however often it is asked for. */
  Entry header(Database database, LogTables tables) throws SQLException, Fault {
    if (header.isEmpty()) {
      header =
          Optional.of(
              entry(
                  new JournalLine(
                      JournalLine.VERSION,
                      new OpId(run, 0),
                      tables.largestT(),
                      machine.uptimeSeconds(),
                      machine.wallMillis(),
                      "",
                      List.of(),
                      head(database)),
                  List.of()));
    }
    return header.get();
  }

  /** A log nobody has written to is this device's own, whatever journals are put beside it. */
  void claim(Database database) throws SQLException {
    if (LogTables.meta(database, DEVICE).isEmpty() && lastHeader(database).isEmpty()) {
      LogTables.setMeta(database, DEVICE, run);
    }
  }

  /** Notes that this run is now the last one; within the transaction that takes in its header. */
  void noteBegun(Database database) throws SQLException {
    LogTables.setMeta(database, DEVICE, device(database));
    LogTables.setMeta(database, BEFORE, run);
  }

  private Map<String, Object> head(Database database) throws SQLException {
    Machine.Identity identity = machine.identity();
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("dev", device(database));
    head.put("label", identity.label());
    head.put("boot", identity.bootId());
    head.put("zone", identity.zone());
    head.put("clock", identity.uptimeSource());
    head.put("program", identity.programVersion());
    before(database).ifPresent(before -> head.put("before", before));
    return head;
  }

  private String device(Database database) throws SQLException {
    Optional<String> noted = LogTables.meta(database, DEVICE);
    return noted.isPresent()
        ? noted.get()
        : lastHeader(database)
            .flatMap(line -> Optional.ofNullable(line.head().get("dev")))
            .map(String::valueOf)
            .orElse(run);
  }

  private static Optional<String> before(Database database) throws SQLException {
    Optional<String> noted = LogTables.meta(database, BEFORE);
    return noted.isPresent() ? noted : lastHeader(database).map(line -> line.op().run());
  }

  /** A database built anew has only the journals to tell whose log it is. */
  private static Optional<JournalLine> lastHeader(Database database) throws SQLException {
    return database
        .first(
            row -> row.getString(1),
            "SELECT raw FROM op JOIN run ON run.id = op.run WHERE n = 0"
                + " ORDER BY t DESC, run.name DESC LIMIT 1")
        .flatMap(raw -> LineForm.read(raw).value());
  }

  private static Entry entry(JournalLine line, List<RecordId> ids) throws Fault {
    String raw = LineForm.write(line);
    Reading<JournalLine> reading = LineForm.read(raw);
    if (reading.value().isEmpty()) {
      throw new Fault(
          "log-line",
          "NOT SAVED: what was entered does not fit into the log: "
              + reading.objection().orElseThrow()
              + ".",
          "Shorten long texts (at most " + Json.MAX_TEXT + " characters each), then save again.");
    }
    return new Entry(raw, reading.value().get(), ids);
  }
}
