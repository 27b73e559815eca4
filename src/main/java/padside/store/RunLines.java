package padside.store;

import java.io.IOException;
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

  private static final String DEVICES =
      "SELECT DISTINCT raw ->> '$.head.dev' FROM"
          + RunHeaders.ALL
          + "WHERE raw ->> '$.head.dev' IS NOT NULL LIMIT 2";

  private final Machine machine;
  private final DeviceFile file;
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

  RunLines(Machine machine, DeviceFile file) {
    this.machine = machine;
    this.file = file;
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
    if (LogTables.meta(database, DEVICE).isEmpty() && devices(database).isEmpty()) {
      LogTables.setMeta(database, DEVICE, device(database));
    }
  }

  /** Notes that this run is now the last one; within the transaction that takes in its header. */
  void noteBegun(Database database) throws SQLException {
    LogTables.setMeta(database, BEFORE, run);
    try {
      noteDevice(database);
    } catch (IOException e) {
      return; // the database holds it too; the next run tries again
    }
  }

  /** Notes what this machine goes by, where headers of others cannot hide it. */
  void noteDevice(Database database) throws SQLException, IOException {
    String device = device(database);
    LogTables.setMeta(database, DEVICE, device);
    file.write(device);
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

  /** What people call this machine. */
  String label() {
    return machine.identity().label();
  }

  /**
   * What this machine goes by. Where neither its file nor the database says it, the journals do as
   * far as one device wrote all of them; else it begins with this run.
   */
  String device(Database database) throws SQLException {
    Optional<String> noted = file.read();
    noted = noted.isPresent() ? noted : LogTables.meta(database, DEVICE);
    if (noted.isPresent()) {
      return noted.get();
    }
    List<String> devices = devices(database);
    return devices.size() == 1 ? devices.get(0) : run;
  }

  /** Gives this machine another name, from its next header on. */
  void rename(Database database) throws SQLException, IOException {
    String fresh = machine.freshRun();
    file.write(fresh);
    LogTables.setMeta(database, DEVICE, fresh);
  }

  /** Two of them at most. */
  private static List<String> devices(Database database) throws SQLException {
    return database.list(row -> row.getString(1), DEVICES);
  }

  /**
   * The run before: a header may have been kept in the journal and not noted, and those of other
   * machines count only where none is this one's.
   */
  private Optional<String> before(Database database) throws SQLException {
    Optional<String> own =
        database.first(
            row -> row.getString(1),
            "SELECT run.name FROM"
                + RunHeaders.ALL
                + "WHERE raw ->> '$.head.dev' = ?1 ORDER BY t DESC, run.name DESC LIMIT 1",
            device(database));
    return own.isPresent() ? own : LogTables.meta(database, BEFORE);
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
