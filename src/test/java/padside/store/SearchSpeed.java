package padside.store;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.FlightLog.FlightQuery;
import padside.flight.Kind;
import padside.flight.OutcomeTable;
import padside.search.Found;
import padside.search.Search;

/**
 * A program that says how long searches of a large log take, and what looking it through for them
 * costs. Named: a folder with a log, which is made of a hundred thousand flights where there is
 * none; how many flights instead.
 */
public final class SearchSpeed {
  private static final int TIMES = 15;
  private static final int PAGE = 100;

  private static final List<String> LINES =
      List.of(
          "",
          "t",
          "z",
          "nominal",
          "tree",
          "hailstorm",
          "swan's",
          "nowhere",
          "2022",
          "heron",
          "heron tree late",
          "\"tied down\" windy moth 2021",
          "rocket:kestrel",
          "motor:c6",
          "lot:l12",
          "field:moth",
          "on:2023-05",
          "from:2020 to:2021-06",
          "outcome:malfunction",
          "outcome:\"landed on tree\"",
          "open",
          "open rocket:tern outcome:late fin");

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final OutcomeTable outcomes = ClubOfFlights.outcomes();

  private SearchSpeed() {}

  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[0]);
    int flights = args.length > 1 ? Integer.parseInt(args[1]) : 100_000;
    SearchSpeed speed = new SearchSpeed();
    if (!Files.exists(folder.resolve("padside.sqlite"))) {
      speed.make(folder, flights);
    }
    speed.measure(folder);
  }

  private void make(Path folder, int flights) throws Fault {
    long begun = System.nanoTime();
    try (LogFolder log = LogFolder.openToFill(folder, new PretendMachine(1))) {
      new ClubOfFlights(log, new Random(20)).fly(flights);
    }
    tell("made " + flights + " flights", begun);
  }

  private void measure(Path folder) throws Fault {
    long begun = System.nanoTime();
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(System.nanoTime()))) {
      tell("opened", begun);
      lookThrough(log);
      for (String line : LINES) {
        ask(log, line);
      }
      keep(log);
    }
  }

  private void lookThrough(LogFolder log) throws Fault {
    long begun = System.nanoTime();
    int parts = 0;
    long longest = 0;
    boolean more = true;
    while (more) {
      long part = System.nanoTime();
      more = log.lookThrough(outcomes);
      longest = Math.max(longest, System.nanoTime() - part);
      parts++;
    }
    tell("looked through in " + parts + " parts, the longest " + millis(longest), begun);
  }

  private void ask(LogFolder log, String line) throws Fault {
    List<Long> took = new ArrayList<>();
    Found<FlightLog.Stored> found = new Found<>(List.of(), 0, true);
    for (int i = 0; i < TIMES; i++) {
      long begun = System.nanoTime();
      Search search = Search.read(line).value().orElseThrow();
      found = log.found(search, outcomes, PAGE);
      took.add(System.nanoTime() - begun);
    }
    long first = took.get(0);
    Collections.sort(took);
    out.printf(
        Locale.ROOT,
        "%-36s %7d found  first %9s  median %9s  longest %9s%n",
        line,
        found.count(),
        millis(first),
        millis(took.get(TIMES / 2)),
        millis(took.get(TIMES - 1)));
  }

  /** A change of one flight, and taking it up. */
  private void keep(LogFolder log) throws Fault {
    RecordId flight = log.flights(FlightQuery.newest(1)).get(0).id();
    for (int i = 0; i < 5; i++) {
      long begun = System.nanoTime();
      log.save(
          Action.change("note", Kind.FLIGHT, flight, Facts.none().with(Flight.NOTE, "note " + i)));
      tell("saved", begun);
      begun = System.nanoTime();
      while (log.lookThrough(outcomes)) {
        // a part
      }
      tell("taken up", begun);
    }
  }

  private void tell(String what, long begun) {
    out.printf(Locale.ROOT, "%s: %s%n", what, millis(System.nanoTime() - begun));
  }

  private static String millis(long nanos) {
    return String.format(Locale.ROOT, "%.1f ms", nanos / 1e6);
  }
}
