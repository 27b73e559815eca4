package padside.app;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.report.Sheet;
import padside.screen.Ease;
import padside.screen.Sync;
import padside.screen.World;
import padside.units.Reading;
import padside.wire.WireWind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Brings flights from a spreadsheet into the log: shown first, written when asked to. */
@Command(
    name = "import",
    description =
        "Reads flights from a spreadsheet's CSV file; nothing is written without --write.",
    footer = {
      "",
      "Example: padside import flights.csv --column 'Peak=altitude'",
      "Rockets, days, fields, lots, devices and altimeters the log lacks are made; rows that are in"
          + " it already are left out. All that comes comes at once or not at all.",
      "Exit status: 0 done, 1 the log or the file failed, 2 wrong input."
    })
final class ImportCommand implements Callable<Integer> {
  private static final int MOST_TOLD = 50;

  @ParentCommand private RootCommand root;
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "CSV in UTF-8, parted by comma, ; or tab")
  private Path file;

  @Option(
      names = "--column",
      paramLabel = "HEADER=WORD",
      description = "what a column means, such as 'Peak ft=altitude'; repeat for more")
  private List<String> told = List.of();

  @Option(
      names = "--dates",
      paramLabel = "ORDER",
      description = "day-first or month-first, for dates like 03/04/2026")
  private String order;

  @Option(names = "--write", description = "write the flights into the log")
  private boolean write;

  @Option(names = "--skip-bad", description = "leave out the rows that cannot be read")
  private boolean skipBad;

  @Override
  public Integer call() throws Fault {
    Spreadsheet sheet = value(Spreadsheet.read(file));
    try (FlightLog log = write ? root.openLog() : root.openLogToRead()) {
      return imported(sheet, log);
    }
  }

  private int imported(Spreadsheet sheet, FlightLog log) throws Fault {
    World world = world(Logbook.read(log, Shipped.motors()));
    ImportColumns columns = new ImportColumns(world);
    List<ImportColumns.Match> matches = matches(sheet, columns);
    ImportRow reader =
        new ImportRow(
            columns, dates(), world.log().motors(), world.outcomes(), sheet.hasDecimalComma());
    List<ImportRow.Read> rows =
        sheet.rows().stream().map(row -> reader.read(row, matches)).toList();
    List<ImportRow.Read> bad = rows.stream().filter(row -> !row.objections().isEmpty()).toList();
    ImportedNames names = new ImportedNames(world.log());
    Incoming incoming = new Incoming();
    List<Stored> there = new ArrayList<>(log.list(Kind.FLIGHT));
    List<Integer> known = new ArrayList<>();
    Map<String, Facts> fresh = new LinkedHashMap<>();
    for (ImportRow.Read row : rows) {
      if (row.objections().isEmpty()) {
        Facts flight = ImportRow.referring(row, names);
        if (took(there, flight)) {
          known.add(row.number());
        } else {
          fresh.put("row " + row.number(), flight);
        }
      }
    }
    if (!fresh.isEmpty()) {
      names.fresh().forEach((name, made) -> incoming.add(name, made.kind(), made.facts()));
    }
    fresh.forEach((name, flight) -> incoming.add(name, Kind.FLIGHT, flight));
    return ended(new Found(bad, known, names, fresh.size(), incoming), log);
  }

  /** What is to be done with the rows. */
  private record Found(
      List<ImportRow.Read> bad,
      List<Integer> known,
      ImportedNames names,
      int flights,
      Incoming incoming) {}

  private int ended(Found found, FlightLog log) throws Fault {
    tellBad(found.bad);
    if (!found.known.isEmpty()) {
      root.say("Already in the log: row " + numbers(found.known) + ".");
    }
    if (found.flights > 0) {
      found
          .names
          .fresh()
          .values()
          .forEach(made -> root.say("New " + made.kind().code() + ": " + made.name() + "."));
    }
    String flights = found.flights == 1 ? "1 flight" : found.flights + " flights";
    boolean refused = !found.bad.isEmpty() && !skipBad;
    if (!write) {
      root.say(flights + " would come. Nothing was written; --write does it.");
      return Exit.DONE;
    }
    if (refused) {
      throw refused(
          "Nothing was written: "
              + found.bad.size()
              + " of the rows cannot be read. Mend them, or leave them out with --skip-bad.");
    }
    found.incoming.save(log, "import " + flights);
    root.say(flights + " written.");
    return Exit.DONE;
  }

  private void tellBad(List<ImportRow.Read> bad) {
    bad.stream()
        .limit(MOST_TOLD)
        .forEach(
            row -> root.say("Row " + row.number() + ": " + String.join(" ", row.objections())));
    if (bad.size() > MOST_TOLD) {
      root.say("... and " + (bad.size() - MOST_TOLD) + " more rows that cannot be read.");
    }
  }

  private static String numbers(List<Integer> rows) {
    String all = String.join(", ", rows.stream().map(String::valueOf).toList());
    return rows.size() <= MOST_TOLD ? all : rows.get(0) + " to " + rows.get(rows.size() - 1);
  }

  /** Takes the flight out that says all a row says, so that equal rows need as many flights. */
  private static boolean took(List<Stored> there, Facts flight) {
    for (Iterator<Stored> each = there.iterator(); each.hasNext(); ) {
      Facts known = each.next().facts();
      if (flight.cells().entrySet().stream()
          .allMatch(cell -> isSame(cell.getValue(), known.cells().get(cell.getKey())))) {
        each.remove();
        return true;
      }
    }
    return false;
  }

  private static boolean isSame(Facts.Cell one, Facts.Cell other) {
    return other != null && plain(one.value()).equals(plain(other.value()));
  }

  private static Optional<Object> plain(Optional<Object> value) {
    return value.map(each -> each instanceof Number n ? (Object) n.doubleValue() : each);
  }

  private List<ImportColumns.Match> matches(Spreadsheet sheet, ImportColumns columns) {
    Map<String, String> wanted = wanted(sheet);
    List<ImportColumns.Match> matches = new ArrayList<>();
    for (int i = 0; i < sheet.header().size(); i++) {
      String header = sheet.header().get(i);
      String told = wanted.get(header);
      Optional<ImportColumns.Match> match =
          told == null
              ? columns.match(i, header)
              : Optional.of(value(columns.told(i, header, told)));
      match.ifPresent(found -> once(matches, found));
      match.ifPresent(matches::add);
      String unit = match.map(ImportColumns.Match::unit).orElse("");
      root.say(
          "\"%s\": %s"
              .formatted(
                  header,
                  match.map(ImportColumns.Match::name).orElse("left out")
                      + (unit.isEmpty() ? "" : " in " + unit)));
    }
    for (String needed : List.of(Sheet.DATE, Flight.ROCKET.name())) {
      if (matches.stream().noneMatch(match -> match.name().equals(needed))) {
        throw refused(
            "No column is called "
                + needed
                + "; say which it is: --column 'HEADER="
                + needed
                + "'.");
      }
    }
    return matches;
  }

  private void once(List<ImportColumns.Match> before, ImportColumns.Match match) {
    for (ImportColumns.Match each : before) {
      if (each.name().equals(match.name())) {
        throw refused(
            "\"%s\" and \"%s\" both mean %s; rename one, or say with --column what it is."
                .formatted(each.header(), match.header(), match.name()));
      }
    }
  }

  private Map<String, String> wanted(Spreadsheet sheet) {
    Map<String, String> wanted = new LinkedHashMap<>();
    for (String each : told) {
      int at = each.lastIndexOf('=');
      String header = at < 0 ? each : each.substring(0, at).strip();
      if (at < 0 || !sheet.header().contains(header)) {
        throw refused(
            "--column \"" + each + "\" names no header of the file; write it 'HEADER=WORD'.");
      }
      wanted.put(header, each.substring(at + 1));
    }
    return wanted;
  }

  private TypedDates dates() {
    Optional<String> wanted = Optional.ofNullable(order);
    List<TypedDates.Order> known = List.of(TypedDates.Order.values());
    if (wanted.isPresent() && known.stream().noneMatch(o -> o.toString().equals(order))) {
      throw refused("--dates is \"" + order + "\"; write day-first or month-first.");
    }
    return new TypedDates(known.stream().filter(o -> o.toString().equals(order)).findFirst());
  }

  private World world(Logbook book) {
    SettingsFile settings = root.settings();
    return new World(
        new ThisMachine().moment(),
        ZoneId.systemDefault(),
        settings.settings(),
        book,
        Shipped.outcomes(),
        Shipped.checklist(),
        Shipped.packing(),
        false,
        Ease.usual(),
        Optional.empty(),
        Sync.none(),
        WireWind.none(),
        0);
  }

  private <T> T value(Reading<T> reading) {
    return reading.value().orElseThrow(() -> refused(reading.objection().orElseThrow()));
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
