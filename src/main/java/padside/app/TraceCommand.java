package padside.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Rocket;
import padside.insight.Traced;
import padside.screen.TraceWords;
import padside.trace.TraceFile;
import padside.trace.TraceFinding;
import padside.trace.Wanted;
import padside.units.Notations;
import padside.units.Reading;
import padside.units.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Reads an altimeter's file, tells what happened and offers it to a flight. */
@Command(
    name = "trace",
    description =
        "Reads an altimeter's CSV file of times and heights or pressures, tells what happened and"
            + " offers it to a flight; nothing is written without --write.",
    footer = {
      "",
      "Example: padside trace flight7.csv --columns time=1s,height=3ft --write",
      "What you typed yourself stays unless --over names it; what was marked by a key gives way.",
      "Exit status: 0 done, 1 the log failed, 2 wrong input."
    })
final class TraceCommand implements Callable<Integer> {
  private static final String LAST = "last";

  @ParentCommand private RootCommand root;
  @Spec private CommandSpec spec;
  @Mixin private Output output;

  @Parameters(paramLabel = "FILE", description = "CSV of times and heights or pressures")
  private Path file;

  @Option(
      names = "--flight",
      paramLabel = "ID",
      defaultValue = LAST,
      description = "which flight of the log: its id, or last, the last one flown (last)")
  private String flight;

  @Option(
      names = "--part",
      paramLabel = "NUMBER",
      description = "which flight of the file where it holds several (the last)")
  private Integer part;

  @Option(
      names = "--columns",
      paramLabel = "COLUMNS",
      description = "which columns to read, such as time=1s,height=3ft or pressure=2hPa")
  private String columns;

  @Option(
      names = "--over",
      paramLabel = "FIELD",
      split = ",",
      description = "typed values that give way: altitude, ejection, delay, touchdown")
  private List<String> over = List.of();

  @Option(names = "--write", description = "put what was found into the flight")
  private boolean write;

  @Override
  public Integer call() throws Fault {
    Set<String> giving = giving();
    UnitSystem units = root.settings().settings().units();
    Wanted wanted = columns == null ? Wanted.nothing(units) : value(Wanted.of(columns, units));
    TraceFile read = value(TraceFile.read(file, wanted));
    try (FlightLog log = write ? root.openLog() : root.openLogToRead()) {
      Logbook book = Logbook.read(log, Shipped.motors());
      Flight flown = flight(log);
      int number = part == null ? read.flights().size() : part;
      TraceFinding found = value(read.find(number, Traced.air(flown, book)));
      Traced traced = Traced.of(found, flown.facts(), book.motors());
      List<String> told = new ArrayList<>();
      several(read, number, units).ifPresent(told::add);
      told.add(about(flown, book));
      told.addAll(lines(found, traced, units));
      told.addAll(ended(flown, traced, giving, log));
      output.print(TraceJson.of(found, traced), () -> told);
    }
    return Exit.DONE;
  }

  private Set<String> giving() {
    Set<String> columns = new TreeSet<>();
    for (String word : over) {
      Column<?> column =
          switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "altitude" -> Flight.ALTITUDE;
            case "ejection" -> Flight.EJECTION_MARK;
            case "delay" -> Flight.MEASURED_DELAY;
            case "touchdown" -> Flight.TOUCHDOWN_MARK;
            default ->
                throw refused(
                    "--over "
                        + Reading.echo(word)
                        + " is no field of it; choose altitude, ejection, delay or touchdown.");
          };
      columns.add(column.name());
    }
    return columns;
  }

  private Flight flight(FlightLog log) throws Fault {
    if (!flight.equals(LAST)) {
      return log.find(Kind.FLIGHT, new RecordId(flight))
          .map(stored -> new Flight(stored.id(), stored.facts()))
          .filter(each -> each.status() == Flight.Status.FLOWN)
          .orElseThrow(
              () ->
                  refused(
                      "There is no flown flight "
                          + Reading.echo(flight)
                          + " in this log; padside flights --json tells the ids."));
    }
    return log.flights(FlightLog.FlightQuery.newest(Integer.MAX_VALUE)).stream()
        .map(stored -> new Flight(stored.id(), stored.facts()))
        .filter(each -> each.status() == Flight.Status.FLOWN)
        .findFirst()
        .orElseThrow(() -> refused("No flight in this log was flown yet; name one with --flight."));
  }

  private static Optional<String> several(TraceFile read, int number, UnitSystem units) {
    String heights =
        read.flights().stream()
            .map(each -> Notations.altitude(units).show(each.height()))
            .collect(Collectors.joining(", "));
    return read.flights().size() == 1
        ? Optional.empty()
        : Optional.of(
            "The file holds "
                + read.flights().size()
                + " flights, up to "
                + heights
                + "; this is number "
                + number
                + ", --part takes another.");
  }

  private static String about(Flight flown, Logbook book) {
    return "Beside "
        + flown.rocket().flatMap(book::rocket).map(Rocket::name).orElse("a flight")
        + flown.motor().map(motor -> " on " + motor).orElse("")
        + flown
            .day()
            .flatMap(book::day)
            .flatMap(day -> day.date())
            .map(date -> ", " + date)
            .orElse("")
        + ":";
  }

  private static List<String> lines(TraceFinding found, Traced traced, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    for (TraceWords.Row row : TraceWords.rows(found, traced, units)) {
      lines.add("  " + row.line());
    }
    lines.addAll(TraceWords.remarks(found, units));
    return lines;
  }

  private List<String> ended(Flight flown, Traced traced, Set<String> giving, FlightLog log)
      throws Fault {
    List<String> standing =
        traced.standing().stream()
            .map(Column::name)
            .filter(name -> !giving.contains(name))
            .toList();
    List<String> lines = new ArrayList<>();
    if (!standing.isEmpty()) {
      lines.add(
          "What you typed stays: "
              + String.join(", ", standing)
              + "; --over takes the trace's value instead.");
    }
    if (!write) {
      lines.add("Nothing was written; --write does it.");
      return lines;
    }
    Facts taken = traced.taken(giving);
    log.save(
        Action.change("take trace", Kind.FLIGHT, flown.id(), taken.changedSince(flown.facts())));
    lines.add("Written; the flight's history (h) takes it back.");
    return lines;
  }

  private <T> T value(Reading<T> reading) {
    return reading.value().orElseThrow(() -> refused(reading.objection().orElseThrow()));
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
