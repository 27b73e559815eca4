package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import padside.fact.RecordId;
import padside.flight.Rocket;
import padside.insight.Confidence;
import padside.insight.Scores;

/**
 * How good predictions were, as they stood before each flight: a line for all rockets and one for
 * each, and a chart of predicted against measured altitude. Both where the terminal is tall, else
 * in turn.
 *
 * @param index the line under the cursor; the chart shows its flights
 */
record ForetoldScreen(int index, boolean chart) implements Screen {
  static final Binding OPEN =
      Binding.of("g", "how good", "how good the predictions were, by rocket");

  private static final Binding BACK = Binding.of("<esc>q", "back", "back to the log");
  private static final Binding TURN = Binding.of("<tab> ", "chart", "table and chart in turn");
  private static final Binding UP = Binding.of("<up>k", "up", "one line up");
  private static final Binding DOWN = Binding.of("<down>j", "down", "one line down");
  private static final int TALL = 30;
  private static final int TABLE_SHARE = 3;
  private static final RecordId ALL = new RecordId("all");

  private static final String NOTHING =
      "No flight yet with something predicted and measured: keep its card, note its altitude.";
  private static final String LEGEND =
      "Half of the errors are within; in brackets which way. Held: by what was told to hold ";

  static ForetoldScreen open() {
    return new ForetoldScreen(0, false);
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(this);
    }
    if (BACK.has(pressed.key())) {
      return Step.close();
    }
    int last = Math.max(0, items(world).size() - 1);
    int moved = index + (DOWN.has(pressed.key()) ? 1 : UP.has(pressed.key()) ? -1 : 0);
    int next = Math.max(0, Math.min(last, moved));
    return Step.stay(new ForetoldScreen(next, chart != TURN.has(pressed.key())));
  }

  private static Scores scores(World world) {
    return Scores.of(world.log().flights(), world.log().motors());
  }

  /** All together, then every rocket with something to tell. */
  private static List<ListPane.Item> items(World world) {
    Scores all = scores(world);
    List<ListPane.Item> items = new ArrayList<>();
    if (!all.flights().isEmpty()) {
      items.add(item(ALL, "All rockets", all));
    }
    for (Rocket rocket : world.log().rockets()) {
      Scores own = all.of(rocket.id());
      if (!own.flights().isEmpty()) {
        items.add(item(rocket.id(), rocket.name(), own));
      }
    }
    return items;
  }

  private static ListPane.Item item(RecordId id, String name, Scores scores) {
    return new ListPane.Item(
        id,
        List.of(
            name,
            told(scores, Scores.Scored::altitude),
            held(scores, Scores.Scored::altitude),
            told(scores, Scores.Scored::delay),
            told(scores, Scores.Scored::descent),
            held(scores, Scores.Scored::landing),
            String.valueOf(scores.flights().size())));
  }

  private static List<ListPane.Heading> headings() {
    return List.of(
        ListPane.Heading.of("Rocket"),
        ListPane.Heading.ofNumbers("Altitude"),
        ListPane.Heading.ofNumbers("held"),
        ListPane.Heading.ofNumbers("Delay"),
        ListPane.Heading.ofNumbers("Descent").orBriefly("Down"),
        ListPane.Heading.ofNumbers("Landed in").orBriefly("Landed"),
        ListPane.Heading.ofNumbers("Flights").orBriefly("Flown"));
  }

  /** {@code 4% (-2)}. */
  private static String told(Scores scores, Function<Scores.Scored, Optional<Scores.Miss>> kind) {
    return scores
        .summary(kind)
        .map(each -> percent(each.median()) + "% (" + signed(percent(each.bias())) + ")")
        .orElse("");
  }

  private static String held(Scores scores, Function<Scores.Scored, Optional<Scores.Miss>> kind) {
    return scores
        .summary(kind)
        .filter(each -> !each.told().isEmpty())
        .map(each -> each.held() + " of " + each.told().size())
        .orElse("");
  }

  /** With what intervals were to hold when they were told, however often that was set anew. */
  private static String legend(Scores scores) {
    String shares =
        scores.toldToHold().stream()
            .map(share -> String.valueOf(percent(share)))
            .collect(Collectors.joining(" or "));
    return LEGEND + (shares.isEmpty() ? Confidence.usual().percent() : shares) + " in 100.";
  }

  private static long percent(double share) {
    return Math.round(100 * share);
  }

  private static String signed(long whole) {
    return whole > 0 ? "+" + whole : String.valueOf(whole);
  }

  @Override
  public void draw(Canvas canvas, World world) {
    List<ListPane.Item> items = items(world);
    Size size = canvas.size();
    if (items.isEmpty()) {
      Paragraph.draw(canvas, 2, NOTHING, Style.PLAIN);
      return;
    }
    int at = Math.min(index, items.size() - 1);
    boolean both = size.rows() >= TALL;
    int top = 1;
    if (both || !chart) {
      int foot = both ? Math.min(items.size() + 3, size.rows() / TABLE_SHARE) : size.rows() - 5;
      ListPane.draw(canvas, headings(), items, at, new ListPane.Rows(1, foot).apart(world));
      top = Paragraph.draw(canvas, foot + 1, legend(scores(world)), Style.LABEL) + 1;
    }
    if (both || chart) {
      FormPane.Area area = new FormPane.Area(1, top, size.columns() - 2, size.rows() - top - 1);
      RecordId id = items.get(at).id();
      Scores shown = id.equals(ALL) ? scores(world) : scores(world).of(id);
      ForetoldChart.draw(canvas, area, shown, world);
    }
  }

  @Override
  public Optional<Bookmark> bookmark() {
    return Optional.of(Bookmark.of(Bookmarks.FORETOLD));
  }

  @Override
  public String title(World world) {
    List<ListPane.Item> items = items(world);
    String of = items.isEmpty() ? "" : items.get(Math.min(index, items.size() - 1)).cells().get(0);
    return "How good the predictions were" + (chart && !of.isEmpty() ? " · " + of : "");
  }

  @Override
  public String purpose() {
    return "How good the predictions were: measured altitudes beside those foretold, over "
        + "all flights that have both.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(BACK, UP, DOWN, TURN);
  }
}
