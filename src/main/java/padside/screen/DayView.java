package padside.screen;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.flight.Weather;
import padside.plan.Plan;
import padside.report.DayTally;
import padside.units.Notations;
import padside.units.UnitSystem;

/** Draws the day: weather, cards, tally. */
final class DayView {
  private static final int LEFT = 2;
  private static final int LIST_TOP = 5;
  private static final int ROOMY = 24;

  private DayView() {}

  static void draw(Canvas canvas, DayScreen screen, World world) {
    Optional<Day> day = DayScreen.day(world);
    if (day.isEmpty()) {
      welcome(canvas);
      return;
    }
    weather(canvas, day.get(), world);
    ground(canvas, day.get(), world);
    int top = windAndSun(canvas, day.get(), world);
    int last = canvas.size().rows() - 3;
    List<Flight> inOrder = world.log().flightsOf(day.get().id());
    if (inOrder.isEmpty()) {
      canvas.put(LEFT, top, "No card yet. n begins one.", Style.PLAIN);
    } else {
      DayCrowd crowd = DayCrowd.of(inOrder, day);
      int index =
          screen.marked(world).map(marked -> places(crowd.flights()).get(marked.id())).orElse(0);
      ListPane.draw(
          canvas,
          headings(crowd),
          items(crowd, inOrder, world),
          index,
          new ListPane.Rows(top, last - 3).apart(world));
    }
    next(canvas, last - 2, world);
    List<String> tally =
        DayTally.of(inOrder, world.outcomes()).lines(world.log(), world.settings().units());
    for (int i = 0; i < tally.size(); i++) {
      String line = Paragraph.cut(tally.get(i), canvas.size().columns() - 2 * LEFT);
      canvas.put(LEFT, last - 1 + i, line, i == 0 ? Style.STRONG : Style.PLAIN);
    }
  }

  /** How long nobody goes near after a misfire; else whose turn it is by the plan. */
  private static void next(Canvas canvas, int row, World world) {
    Optional<MisfireWait> wait = MisfireWait.longest(world);
    if (wait.isPresent()) {
      String text = Paragraph.cut(wait.get().words(world), canvas.size().columns() - 2 * LEFT);
      canvas.put(LEFT, row, text, Style.OBJECTION);
      return;
    }
    DayScreen.next(world)
        .map(flight -> "next: " + FlightText.name(flight, world))
        .ifPresent(
            text ->
                canvas.put(
                    LEFT,
                    row,
                    Paragraph.cut(text, canvas.size().columns() - 2 * LEFT),
                    Style.STRONG));
  }

  /**
   * Where both go, on the day itself; on any other that it is another. Returns the row of the list,
   * one lower where these need it and the terminal has it.
   */
  private static int windAndSun(Canvas canvas, Day day, World world) {
    if (!day.date().equals(Optional.of(DayScreen.today(world)))) {
      canvas.put(LEFT, 3, notToday(day, world, canvas.size().columns()), Style.OBJECTION);
      return LIST_TOP;
    }
    List<Line> lines =
        Stream.of(
                ByWire.beside(day, world),
                TrendText.of(day, world).map(Line::plain),
                SunText.of(day, world).map(Line::plain))
            .flatMap(Optional::stream)
            .toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = Paragraph.cut(lines.get(i).text(), canvas.size().columns() - 2 * LEFT);
      canvas.put(LEFT, 3 + i, line, lines.get(i).style());
    }
    int more = Math.max(0, lines.size() - 2);
    boolean roomy = lines.size() > 1 && canvas.size().rows() >= ROOMY;
    return LIST_TOP + more + (roomy ? 1 : 0);
  }

  private static List<ListPane.Heading> headings(DayCrowd crowd) {
    List<ListPane.Heading> headings = new ArrayList<>();
    headings.add(ListPane.Heading.ofNumbers("#"));
    headings.addAll(crowd.headings());
    headings.addAll(
        List.of(
            ListPane.Heading.of("Rocket"),
            ListPane.Heading.of("Motor").whole(),
            ListPane.Heading.of("Status").orBriefly("State").whole(),
            ListPane.Heading.of("Check").whole(),
            ListPane.Heading.ofNumbers("Altitude").orBriefly("Alt.").spare(),
            ListPane.Heading.of("Outcome")));
    return headings;
  }

  /** A line for each card of the day, numbered in the day's order. */
  static List<ListPane.Item> items(World world) {
    List<Flight> inOrder = DayScreen.flights(world);
    return items(DayCrowd.of(inOrder, DayScreen.day(world)), inOrder, world);
  }

  private static List<ListPane.Item> items(DayCrowd crowd, List<Flight> inOrder, World world) {
    List<ListPane.Item> items = new ArrayList<>();
    Map<RecordId, Integer> places = places(inOrder);
    for (Flight flight : crowd.flights()) {
      List<String> cells = new ArrayList<>();
      cells.add(Integer.toString(places.get(flight.id()) + 1));
      cells.addAll(crowd.cells(flight));
      cells.addAll(cells(flight, world));
      items.add(new ListPane.Item(flight.id(), cells));
    }
    return items;
  }

  private static List<String> cells(Flight flight, World world) {
    UnitSystem units = world.settings().units();
    String rocket =
        flight.rocket().flatMap(world.log()::rocket).map(Rocket::name).orElse("no rocket yet");
    String verdict = flight.verdict().map(Ruling.Verdict::word).orElse("");
    return List.of(
        rocket,
        FlightText.motors(flight).orElse(""),
        flight.status().words(),
        verdict,
        flight.altitude().map(Notations.altitude(units)::show).orElse(""),
        outcome(flight, world));
  }

  private static String outcome(Flight flight, World world) {
    return switch (flight.status()) {
      case DRAFT, SCRUBBED -> "";
      case PLANNED -> lacks(flight, world);
      case CARD ->
          MisfireText.attempt(flight, world).map(nth -> nth + " · ").orElse("")
              + flight.facts().get(Flight.REASON).orElse("");
      case FLOWN ->
          flight.awaitsDebrief() ? waits(flight, world) : world.outcomes().told(flight.facts());
    };
  }

  /** Where each flight stands, from 0 on. To compare whole flights would take long. */
  private static Map<RecordId, Integer> places(List<Flight> flights) {
    Map<RecordId, Integer> places = new HashMap<>();
    flights.forEach(flight -> places.put(flight.id(), places.size()));
    return places;
  }

  private static String waits(Flight flown, World world) {
    return MarkScreen.isInTheAir(flown, world) ? "in the air" : "debrief waits";
  }

  private static String lacks(Flight planned, World world) {
    return DayScreen.day(world)
        .map(day -> Plan.of(day, world.log()))
        .flatMap(plan -> plan.indexOf(planned.id()).map(index -> plan.lines().get(index).lacks()))
        .map(texts -> String.join(" · ", texts))
        .orElse("");
  }

  private static void weather(Canvas canvas, Day day, World world) {
    Optional<Weather> latest = world.log().latestWeather(day.id());
    String air = latest.map(read -> air(read, world)).orElse("");
    if (ByWire.isOn(day, world)) {
      Line wire = ByWire.line("Wind ", world);
      inOrder(canvas, wire, Line.plain(air));
      return;
    }
    if (latest.isEmpty()) {
      canvas.put(LEFT, 1, "No weather read yet. w reads it.", Style.OBJECTION);
      return;
    }
    Optional<Duration> age = Ages.since(latest.get(), world);
    boolean old = age.map(Ages::isOldWind).orElse(true);
    String when = " · read " + age.map(Ages::words).orElse("at an unknown time");
    inOrder(
        canvas,
        Line.strong(
            ByWire.shown(latest.get().facts(), world).map("Wind "::concat).orElse("No wind read")),
        new Line(when, old ? Style.OBJECTION : Style.PLAIN),
        Line.plain(air));
  }

  private static void inOrder(Canvas canvas, Line... parts) {
    int column = LEFT;
    for (Line part : parts) {
      int room = Math.max(0, canvas.size().columns() - column - 1);
      canvas.put(column, 1, Paragraph.cut(part.text(), room), part.style());
      column += part.text().length();
    }
  }

  private static String air(Weather read, World world) {
    return Stream.of(
            read.temperature().map(Notations.temperature(world.settings().units())::show),
            read.facts().get(Weather.SKY))
        .flatMap(Optional::stream)
        .map(" · "::concat)
        .collect(Collectors.joining());
  }

  /** What holds for the day's field, and at the end of the line what is to be chosen from. */
  private static void ground(Canvas canvas, Day day, World world) {
    int width = canvas.size().columns() - 2 * LEFT;
    String open = ConflictScreen.notice(world).orElse("");
    int room = open.isEmpty() ? width : width - open.length() - LEFT;
    canvas.put(LEFT, 2, Paragraph.cut(ground(day), room), Style.STRONG);
    canvas.put(LEFT + width - open.length(), 2, open, Style.OBJECTION);
  }

  private static String ground(Day day) {
    List<String> parts = new ArrayList<>();
    day.fireBan().filter(ban -> ban).ifPresent(ban -> parts.add("FIRE BAN"));
    day.permission().ifPresent(given -> parts.add(given ? "Permission given" : "NO PERMISSION"));
    day.facts().get(Day.NOTE).filter(note -> !note.isBlank()).ifPresent(parts::add);
    return String.join(" · ", parts);
  }

  private static String notToday(Day day, World world, int columns) {
    String today = DayWords.of(DayScreen.today(world));
    if (DayScreen.isAhead(day, world)) {
      return Paragraph.cut(
          "Not today (" + today + "); t plans it, o opens today.", columns - 2 * LEFT);
    }
    String sentence =
        "This is the last day, not today. No day is open for " + today + "; o opens one.";
    return sentence.length() <= columns - 2 * LEFT
        ? sentence
        : "The last day, not today (" + today + "); o opens today.";
  }

  private static void welcome(Canvas canvas) {
    int row = Paragraph.draw(canvas, 2, "No day is open yet.", Style.STRONG) + 1;
    for (String line :
        List.of(
            "p  first describe the field: edges paced from the pad",
            "f  then the rockets you bring",
            "b  and the range box: motors, parachutes, altimeters",
            "o  then open the day")) {
      canvas.put(LEFT, row++, line, Style.PLAIN);
    }
  }
}
