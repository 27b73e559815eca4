package padside.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.preflight.Settings;
import padside.search.Found;
import padside.search.Search;
import padside.units.Notations;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Lists flights. */
@Command(
    name = "flights",
    description = "Lists flights, newest first; those that are looked for.",
    footer = {"", "Exit status: 0 done, 1 the log failed, 2 wrong input."})
final class FlightsCommand implements Callable<Integer> {
  @Mixin private Output output;
  @ParentCommand private RootCommand root;
  @Spec private CommandSpec spec;

  @Mixin private SearchOptions wanted;

  @Option(
      names = "--limit",
      paramLabel = "NUMBER",
      defaultValue = "100",
      description = "at most so many (${DEFAULT-VALUE})")
  private int limit;

  @Override
  public Integer call() throws Fault {
    if (limit < 1) {
      throw refused("--limit is " + limit + "; give 1 or more.");
    }
    Search search = wanted.search();
    try (FlightLog open = root.openLogToRead()) {
      Logbook book = Logbook.read(open, Shipped.motors());
      wanted.refuseUnknown(book);
      Found<FlightLog.Stored> found = open.foundAmongAll(search, Shipped.outcomes(), limit);
      List<Flight> flights =
          found.newest().stream().map(stored -> new Flight(stored.id(), stored.facts())).toList();
      output.print(
          flights.stream().map(flight -> json(flight, book)).toList(),
          () -> {
            List<String> lines = new ArrayList<>(lines(flights, book));
            if (found.count() > flights.size()) {
              lines.add(
                  "The newest "
                      + flights.size()
                      + " of "
                      + found.count()
                      + "; --limit shows more.");
            }
            return lines;
          });
    }
    return Exit.DONE;
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  /** Every field of the record as it is stored, and what it refers to by name. */
  private static Map<String, Object> json(Flight flight, Logbook book) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", flight.id().text());
    json.put("date", date(flight, book).orElse(null));
    json.put("rocket_name", rocketName(flight, book));
    for (Map.Entry<String, Facts.Cell> cell : flight.facts().cells().entrySet()) {
      json.put(cell.getKey(), cell.getValue().value().orElse(null));
    }
    return json;
  }

  private List<String> lines(List<Flight> flights, Logbook book) {
    if (flights.isEmpty()) {
      return List.of("No flights.");
    }
    Settings settings = root.settings().settings();
    OutcomeTable outcomes = Shipped.outcomes();
    int longest = flights.stream().mapToInt(each -> motor(each).length()).max().orElse(0);
    String form = "%-10s  %-18s %-" + Math.max(7, longest) + "s %-9s %-9s %8s  %s";
    List<String> lines = new ArrayList<>();
    for (Flight flight : flights) {
      lines.add(
          String.format(
              Locale.ROOT,
              form,
              date(flight, book).orElse("no day"),
              rocketName(flight, book),
              motor(flight),
              flight.status().words(),
              flight.verdict().map(Ruling.Verdict::word).orElse("-"),
              flight.altitude().map(Notations.altitude(settings.units())::show).orElse("-"),
              outcomes.told(flight.facts())));
    }
    return lines;
  }

  private static String motor(Flight flight) {
    return flight.motor().orElse("-");
  }

  private static Optional<String> date(Flight flight, Logbook book) {
    return flight.day().flatMap(book::day).flatMap(Day::date).map(Object::toString);
  }

  private static String rocketName(Flight flight, Logbook book) {
    return flight.rocket().flatMap(book::rocket).map(Rocket::name).orElse("no rocket");
  }
}
