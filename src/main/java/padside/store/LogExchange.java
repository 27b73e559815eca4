package padside.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import padside.fact.Fault;
import padside.units.Reading;

/**
 * The exchange of a log that is open. Lines that come in go into one journal of this run, {@code
 * RUN-received.jsonl}, before they are acknowledged, so that the database can be built without
 * those who gave them.
 */
final class LogExchange implements Exchange {
  static final String RECEIVED = "-received";
  private static final String DIFFERING = "-differing";

  private static final String SPANS =
      """
      SELECT run.name, min(n), max(n) FROM (
        SELECT run, n, n - row_number() OVER (PARTITION BY run ORDER BY n) AS span FROM op)
      JOIN run ON run.id = run GROUP BY run, span""";

  private static final String DEVICES =
      "SELECT raw ->> '$.head.dev', raw ->> '$.head.label' FROM"
          + RunHeaders.ALL
          + "ORDER BY t, run.name";

  private static final String LINES =
      """
      SELECT raw FROM op JOIN run ON run.id = op.run
      WHERE run.name = ?1 AND n BETWEEN ?2 AND ?3 ORDER BY n""";

  /** Runs of one device that went on from the same one after different starts of a machine. */
  private static final String TWICE =
      "SELECT count(DISTINCT raw ->> '$.head.boot') FROM"
          + RunHeaders.ALL
          + "WHERE raw ->> '$.head.dev' = ?1"
          + " GROUP BY raw ->> '$.head.before' HAVING count(DISTINCT raw ->> '$.head.boot') > 1";

  private final Path folder;
  private final RunLines lines;
  private final LogDatabase database;
  private final OwnJournal received;
  private final OwnJournal differing;
  private final Medium medium;
  private final Writable writable;

  /** Says why nothing can be written to the log now. */
  interface Writable {
    void check() throws Fault;
  }

  LogExchange(Path folder, Medium medium, RunLines lines, LogDatabase database, Writable writable) {
    this.folder = folder;
    this.medium = medium;
    this.lines = lines;
    this.database = database;
    this.writable = writable;
    this.received = journal(Opening.JOURNALS, RECEIVED);
    this.differing = journal(SetAside.FOLDER, DIFFERING);
  }

  private OwnJournal journal(String within, String ending) {
    return new OwnJournal(
        folder.resolve(within), medium, lines.run() + ending, OwnJournal.Forced.AT_ONCE);
  }

  /** What came in one batch, sorted out. */
  private static final class Sorted {
    private final Map<OpId, String> raws = new LinkedHashMap<>();
    private final List<JournalLine> fresh = new ArrayList<>();
    private final List<String> refused = new ArrayList<>();
    private final List<String> other = new ArrayList<>();
    private int known;

    private Taken taken() {
      int later = (int) fresh.stream().filter(JournalLine::fromNewerVersion).count();
      return new Taken(fresh.size(), known, later, refused);
    }

    private String text() {
      StringBuilder text = new StringBuilder();
      raws.values().forEach(raw -> text.append(raw).append('\n'));
      return text.toString();
    }
  }

  @Override
  public Device self() throws Fault {
    return database.with(log -> new Device(lines.device(log.database()), lines.label()));
  }

  @Override
  public Map<String, Device> devices() throws Fault {
    return database.with(
        log -> {
          Map<String, Device> devices = new TreeMap<>();
          log.database().list(LogExchange::device, DEVICES).stream()
              .filter(device -> !device.id().isEmpty())
              .forEach(device -> devices.put(device.id(), device));
          return devices;
        });
  }

  private static Device device(ResultSet row) throws SQLException {
    return new Device(
        Optional.ofNullable(row.getString(1)).orElse(""),
        Optional.ofNullable(row.getString(2)).orElse(""));
  }

  @Override
  public Holdings holdings() throws Fault {
    return database.with(
        log -> {
          Map<String, List<Holdings.Span>> runs = new TreeMap<>();
          log.database()
              .list(
                  row ->
                      runs.computeIfAbsent(row.getString(1), run -> new ArrayList<>())
                          .add(new Holdings.Span(row.getLong(2), row.getLong(3))),
                  SPANS);
          return new Holdings(runs);
        });
  }

  @Override
  public List<String> lines(String run, Holdings.Span span) throws Fault {
    return database.with(
        log -> log.database().list(row -> row.getString(1), LINES, run, span.first(), span.last()));
  }

  @Override
  public Taken take(List<String> raws) throws Fault {
    writable.check();
    return database.with(
        log -> {
          Sorted sorted = sorted(log.database(), raws);
          try {
            if (!sorted.fresh.isEmpty()) {
              keep(log, sorted);
            }
            setAside(sorted.other);
          } catch (IOException e) {
            throw LogFaults.notTaken(folder, e);
          }
          return sorted.taken();
        });
  }

  /** The tables first, which know what they cannot hold; the journal makes it last. */
  private void keep(Opening.Opened log, Sorted sorted) throws SQLException, IOException {
    boolean within = database.begin(log);
    try {
      lines.noteDevice(log.database()); // before a header of another machine is in the tables
      for (JournalLine line : sorted.fresh) {
        log.tables().take(line, sorted.raws.get(line.op()));
      }
      log.tables().show();
      LogTables.setMeta(log.database(), Opening.CLEAN, "0");
      database.commit(received.append(sorted.text()));
    } catch (IOException e) {
      database.takeBack(within);
      throw e;
    }
  }

  private void setAside(List<String> raws) throws IOException {
    if (!raws.isEmpty()) {
      medium.folder(folder.resolve(SetAside.FOLDER));
      differing.append(String.join("\n", raws) + "\n");
    }
  }

  private Sorted sorted(Database tables, List<String> raws) throws SQLException {
    Sorted sorted = new Sorted();
    List<Reading<JournalLine>> readings = raws.parallelStream().map(LogExchange::read).toList();
    for (int i = 0; i < raws.size(); i++) {
      String raw = raws.get(i);
      Reading<JournalLine> reading = readings.get(i);
      if (reading.value().isEmpty()) {
        sorted.refused.add(
            "A line that is no line of a journal: " + reading.objection().orElseThrow() + ".");
        continue;
      }
      JournalLine line = reading.value().get();
      Optional<String> ours = ours(tables, line.op(), sorted);
      if (ours.isEmpty() && line.op().run().equals(lines.run())) {
        sorted.refused.add("Line " + line.op() + ", which this program itself has yet to write.");
      } else if (ours.isEmpty()) {
        sorted.raws.put(line.op(), raw);
        sorted.fresh.add(line);
      } else if (ours.get().equals(raw)) {
        sorted.known++;
      } else {
        sorted.other.add(raw);
        sorted.refused.add(
            "Line "
                + line.op()
                + " says otherwise than the log's own line of that name, which stays; the other"
                + " text is kept in the folder aside.");
      }
    }
    return sorted;
  }

  private static Optional<String> ours(Database tables, OpId op, Sorted sorted)
      throws SQLException {
    Optional<String> came = Optional.ofNullable(sorted.raws.get(op));
    return came.isPresent() ? came : LogTables.raw(tables, op);
  }

  private static Reading<JournalLine> read(String raw) {
    return raw.indexOf('\n') >= 0
        ? Reading.refused("a line end within it")
        : LineForm.read(StandardCharsets.UTF_8.encode(raw));
  }

  @Override
  public List<String> settle() throws Fault {
    writable.check();
    return database.with(
        log -> {
          String device = lines.device(log.database());
          if (log.database().first(row -> row.getInt(1), TWICE, device).isEmpty()) {
            return List.of();
          }
          try {
            lines.rename(log.database());
          } catch (IOException e) {
            throw LogFaults.notTaken(folder, e);
          }
          return List.of(
              "This log was gone on with on two machines that were one before (a copied card, or a"
                  + " restored backup). All of it is kept; this machine is called by a name of its"
                  + " own from the next start on.");
        });
  }

  void close() throws IOException {
    received.close();
    differing.close();
  }
}
