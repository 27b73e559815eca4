package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final Map<OpId, ReadyLine> fresh = new LinkedHashMap<>();
    private final List<String> refused = new ArrayList<>();
    private final List<String> other = new ArrayList<>();
    private int known;

    private Taken taken() {
      int later = (int) fresh.values().stream().filter(each -> each.later()).count();
      return new Taken(fresh.size(), known, later, refused);
    }

    private String text() {
      StringBuilder text = new StringBuilder();
      fresh.values().forEach(line -> text.append(line.raw()).append('\n'));
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
  public Taken take(Arrived arrived) throws Fault {
    writable.check();
    return database.with(
        log -> {
          Sorted sorted = sorted(log, arrived);
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
    database.beginFilling(log);
    boolean within = database.begin(log);
    try {
      lines.noteDevice(log.database()); // before a header of another machine is in the tables
      for (ReadyLine line : sorted.fresh.values()) {
        log.tables().take(line);
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

  private Sorted sorted(Opening.Opened log, Arrived arrived) throws SQLException {
    Sorted sorted = new Sorted();
    Set<OpId> had = had(log.tables(), arrived);
    for (Reading<ReadyLine> reading : arrived.lines()) {
      if (reading.value().isPresent()) {
        sort(reading.value().get(), sorted, had, log.database());
      } else {
        sorted.refused.add(
            "A line that is no line of a journal: " + reading.objection().orElseThrow() + ".");
      }
    }
    return sorted;
  }

  private void sort(ReadyLine line, Sorted sorted, Set<OpId> had, Database tables)
      throws SQLException {
    OpId op = line.op();
    Optional<String> ours = Optional.ofNullable(sorted.fresh.get(op)).map(ReadyLine::raw);
    if (ours.isEmpty() && had.contains(op)) {
      ours = LogTables.raw(tables, op);
    }
    if (ours.isEmpty() && op.run().equals(lines.run())) {
      sorted.refused.add("Line " + op + ", which this program itself has yet to write.");
    } else if (ours.isEmpty()) {
      sorted.fresh.put(op, line);
    } else if (ours.get().equals(line.raw())) {
      sorted.known++;
    } else {
      sorted.other.add(line.raw());
      sorted.refused.add(
          "Line "
              + op
              + " says otherwise than the log's own line of that name, which stays; the other"
              + " text is kept in the folder aside.");
    }
  }

  /** Operations the log has, those of the lines among them. */
  private static Set<OpId> had(LogTables tables, Arrived arrived) throws SQLException {
    Map<String, LongSummaryStatistics> runs = new HashMap<>();
    for (Reading<ReadyLine> reading : arrived.lines()) {
      reading
          .value()
          .map(ReadyLine::op)
          .ifPresent(
              op ->
                  runs.computeIfAbsent(op.run(), run -> new LongSummaryStatistics())
                      .accept(op.n()));
    }
    Set<OpId> had = new HashSet<>();
    for (Map.Entry<String, LongSummaryStatistics> run : runs.entrySet()) {
      had.addAll(tables.had(run.getKey(), run.getValue().getMin(), run.getValue().getMax()));
    }
    return had;
  }

  @Override
  public List<String> settle() throws Fault {
    writable.check();
    return database.with(
        log -> {
          database.endFilling(log);
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
