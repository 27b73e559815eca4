package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import padside.flight.Day;
import padside.plan.Plan;
import padside.preflight.Answer;

/** Draws a plan: counts, the flights, and the marked one whole below them. */
final class PlanView {
  private static final int LEFT = 2;
  private static final int LIST_TOP = 3;
  private static final int DETAIL_ROWS = 4;

  /** As wide as recovery and altimeter need besides. */
  private static final int WIDE = 110;

  private static final List<ListPane.Heading> HEADINGS =
      List.of(
          ListPane.Heading.ofNumbers("#"),
          ListPane.Heading.of("Rocket"),
          ListPane.Heading.of("Motor").whole(),
          ListPane.Heading.of("Limit").whole(),
          ListPane.Heading.of("To see to"));

  private static final List<ListPane.Heading> WIDE_HEADINGS =
      List.of(
          ListPane.Heading.ofNumbers("#"),
          ListPane.Heading.of("Rocket"),
          ListPane.Heading.of("Motor").whole(),
          ListPane.Heading.of("Recovery"),
          ListPane.Heading.of("Altimeter"),
          ListPane.Heading.of("Limit").whole(),
          ListPane.Heading.of("To see to"));

  private PlanView() {}

  static void draw(Canvas canvas, PlanScreen screen, World world) {
    Optional<Plan> plan = screen.plan(world);
    if (plan.isEmpty()) {
      Paragraph.draw(canvas, 2, "No day to plan for. o opens one: date and field.", Style.PLAIN);
      return;
    }
    head(canvas, screen, plan.get(), world);
    int last = canvas.size().rows() - 2;
    if (plan.get().lines().isEmpty()) {
      Paragraph.draw(canvas, LIST_TOP, "Nothing planned yet. n adds a flight.", Style.PLAIN);
    } else {
      flights(canvas, screen, plan.get(), world);
    }
    if (screen.asked().isPresent()) {
      canvas.put(LEFT, last, question(screen, plan.get()), Style.STRONG);
    }
  }

  private static void head(Canvas canvas, PlanScreen screen, Plan plan, World world) {
    screen
        .packing(world)
        .ifPresent(packing -> canvas.put(LEFT, 1, PlanText.counts(plan, packing), Style.STRONG));
    if (isPast(plan.day(), world)) {
      canvas.put(LEFT, 2, "This day has passed; e gives the plan another date.", Style.OBJECTION);
    }
  }

  private static boolean isPast(Day day, World world) {
    return day.date().filter(date -> date.isBefore(DayScreen.today(world))).isPresent();
  }

  private static void flights(Canvas canvas, PlanScreen screen, Plan plan, World world) {
    boolean wide = canvas.size().columns() >= WIDE;
    List<ListPane.Item> items = items(screen, plan, world, wide);
    int index = screen.cursor().index(items);
    int bottom = canvas.size().rows() - 2 - DETAIL_ROWS;
    ListPane.draw(
        canvas,
        wide ? WIDE_HEADINGS : HEADINGS,
        items,
        index,
        new ListPane.Rows(LIST_TOP, bottom - 1).apart(world));
    Plan.Line line = plan.lines().get(index);
    int width = canvas.size().columns() - 2 * LEFT;
    List<Line> detail = new ArrayList<>();
    Paragraph.hanging("", "With " + PlanText.with(line, world.log()), width)
        .forEach(text -> detail.add(Line.plain(text)));
    PlanText.amiss(line, screen.checks().of(line.flight())).stream()
        .flatMap(text -> Paragraph.hanging("! ", text, width).stream())
        .forEach(text -> detail.add(new Line(text, Style.OBJECTION)));
    for (int i = 0; i < Math.min(detail.size(), DETAIL_ROWS); i++) {
      canvas.put(LEFT, bottom + i, detail.get(i).text(), detail.get(i).style());
    }
  }

  /** A line for each planned flight. */
  static List<ListPane.Item> items(PlanScreen screen, World world) {
    return screen.plan(world).map(plan -> items(screen, plan, world, false)).orElse(List.of());
  }

  private static List<ListPane.Item> items(
      PlanScreen screen, Plan plan, World world, boolean wide) {
    List<ListPane.Item> items = new ArrayList<>();
    for (Plan.Line line : plan.lines()) {
      Optional<Answer> answer = screen.checks().of(line.flight());
      List<String> cells = new ArrayList<>();
      cells.add(Integer.toString(items.size() + 1));
      cells.add(line.rocket().map(rocket -> rocket.name()).orElse("no rocket yet"));
      cells.add(FlightText.motors(line.flight()).orElse(""));
      if (wide) {
        cells.add(PlanText.recovery(line.flight(), world.log()).orElse(""));
        cells.add(PlanText.altimeter(line.flight(), world.log()).orElse(""));
      }
      cells.add(answer.map(each -> PlanText.stands(each, world.settings().units())).orElse("…"));
      cells.add(PlanText.amiss(line, answer).stream().collect(Collectors.joining(" · ")));
      items.add(new ListPane.Item(line.flight().id(), cells));
    }
    return items;
  }

  private static String question(PlanScreen screen, Plan plan) {
    String name =
        screen
            .asked()
            .flatMap(plan::indexOf)
            .map(index -> PlanText.name(plan.lines().get(index)))
            .orElse("it");
    return "Take " + name + " out? x does, any other key keeps it.";
  }
}
