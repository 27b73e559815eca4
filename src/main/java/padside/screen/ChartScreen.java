package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.preflight.Answer;
import padside.preflight.Outlook;

/**
 * Where the rocket of a card would land, from above, and its height over time: both where the
 * terminal is tall, else one of them.
 *
 * @param profile true while the height has the whole screen
 */
record ChartScreen(LiveCheck check, boolean profile) implements Screen {
  static final Binding CHART =
      Binding.of("<f4>", "chart", "the landing chart and the height over time");

  private static final Binding BACK = Binding.of("<esc><f4>q", "back", "back to the card");
  private static final Binding TO_HEIGHT = turn("height");
  private static final Binding TO_CHART = turn("chart");

  private static final String NOTHING = "There is no flight to draw.";
  private static final int TALL = 34;
  private static final double CHART_SHARE = 0.6;

  private static Binding turn(String label) {
    return Binding.of("<tab> ", label, "height over time and landing chart in turn");
  }

  static ChartScreen of(LiveCheck check) {
    return new ChartScreen(check, false);
  }

  @Override
  public Step on(Event event, World world) {
    if (!(event instanceof Event.Pressed pressed)) {
      return Step.stay(new ChartScreen(check.on(event), profile));
    }
    if (BACK.has(pressed.key())) {
      return Step.close();
    }
    if (CheckScreen.CHECK.has(pressed.key())) {
      return Step.close().open(CheckScreen.of(check));
    }
    return Step.stay(new ChartScreen(check, profile != TO_HEIGHT.has(pressed.key())));
  }

  @Override
  public void draw(Canvas canvas, World world) {
    Size size = canvas.size();
    Optional<Outlook> outlook = check.answer().flatMap(Answer::outlook);
    if (profile) {
      int top = CheckPane.verdict(canvas, check, new FormPane.Area(0, 1, size.columns(), 3));
      FormPane.Area area = new FormPane.Area(1, top + 1, size.columns() - 2, size.rows() - top - 2);
      outlook
          .filter(flight -> !flight.path().isEmpty())
          .ifPresentOrElse(
              flight -> ProfileChart.draw(canvas, area, flight, world),
              () -> canvas.put(area.left() + 1, area.top(), NOTHING, Style.PLAIN));
      return;
    }
    int side = side(size);
    int divider = size.columns() - side - 3;
    for (int row = 1; row < size.rows() - 1; row++) {
      canvas.put(divider, row, "│", Style.LABEL);
    }
    notes(canvas, new FormPane.Area(divider + 2, 1, side, size.rows() - 2), world);
    int rows = size.rows() - 2;
    boolean both = size.rows() >= TALL && outlook.filter(f -> !f.path().isEmpty()).isPresent();
    int chart = both ? (int) (rows * CHART_SHARE) : rows;
    LandingChart.draw(canvas, new FormPane.Area(1, 1, divider - 2, chart), check, world);
    if (both) {
      FormPane.Area below = new FormPane.Area(1, chart + 2, divider - 2, rows - chart - 1);
      ProfileChart.draw(canvas, below, outlook.get(), world);
    }
  }

  private static int side(Size size) {
    return size.columns() >= 110 ? 36 : size.columns() >= 76 ? 26 : 22;
  }

  private void notes(Canvas canvas, FormPane.Area area, World world) {
    List<Line> legend = ChartNotes.legend(check, world.braille());
    int row = CheckPane.verdict(canvas, check, area);
    int room = area.top() + area.height() - legend.size() - row;
    List<Line> lines =
        new ArrayList<>(ChartNotes.of(check, area.width(), world.settings().units()));
    if (lines.size() > room) {
      lines.subList(Math.max(0, room - 1), lines.size()).clear();
      lines.add(Line.more("F3"));
    }
    while (lines.size() < room) {
      lines.add(Line.blank());
    }
    lines.addAll(legend);
    for (Line line : lines) {
      canvas.put(area.left(), row++, line.text(), line.style());
    }
  }

  @Override
  public String title(World world) {
    return (profile ? "Height · " : "Landing chart · ") + CheckText.of(check);
  }

  @Override
  public String purpose() {
    return "Where flights like this one come down on the field, or how high they are when. "
        + "The same picture as the card's check, drawn.";
  }

  @Override
  public List<Binding> bindings() {
    return List.of(BACK, profile ? TO_CHART : TO_HEIGHT, CheckScreen.CHECK);
  }
}
