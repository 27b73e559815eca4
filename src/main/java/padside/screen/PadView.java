package padside.screen;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import padside.flight.Flight;
import padside.form.Form;
import padside.units.Notations;

/**
 * Draws the checklist under the verdict, with the whole check beside it where both fit; and what
 * other screens at the pad have in common.
 */
final class PadView {
  private static final int LEFT = 2;
  private static final int PART_WIDTH = 7;
  private static final int WIDE = 110;
  private static final int LIST_WIDTH = 62;
  private static final int TYPED_WIDTH = 18;
  private static final int WIRE_WIDTH = 27;
  private static final int VERY_WIDE = 160;
  private static final int WIDEST_LIST = 90;

  private PadView() {}

  static void draw(Canvas canvas, PadScreen pad, Flight card, World world) {
    Size size = canvas.size();
    if (pad.mode() == PadScreen.Mode.LARGE) {
      FormPane.Area whole = new FormPane.Area(LEFT, 2, size.columns() - 2 * LEFT, size.rows() - 3);
      LargeCheck.fill(canvas, pad.check(), world, whole);
      if (ByWire.isOn(card.facts(), world)) {
        byWire(canvas, new FormPane.Area(0, 1, size.columns(), 1), world);
      }
      return;
    }
    boolean wide = size.columns() >= WIDE;
    int width = wide ? listWidth(size) : size.columns();
    int top =
        wide
            ? beside(canvas, pad, world)
            : CheckPane.verdict(canvas, pad.check(), new FormPane.Area(0, 1, width, 3));
    int row = wind(canvas, new FormPane.Area(0, top, width, 1), pad, card, world);
    PadList list = pad.list(card, world);
    lines(
        canvas,
        list,
        list.index(pad.at()),
        new FormPane.Area(0, row, width, size.rows() - 3 - row),
        world.ease().step());
    foot(canvas, pad, list, world);
  }

  private static int listWidth(Size size) {
    return size.columns() >= VERY_WIDE ? WIDEST_LIST : LIST_WIDTH;
  }

  /** The check beside the list, in large figures above both where there is room; the list's row. */
  private static int beside(Canvas canvas, PadScreen pad, World world) {
    Size size = canvas.size();
    boolean large = LargeCheck.fits(size);
    FormPane.Area band =
        new FormPane.Area(LEFT, 2, size.columns() - 2 * LEFT, LargeCheck.rows(size));
    int top = large ? LargeCheck.row(canvas, pad.check(), world, band) + 1 : 1;
    for (int row = top; row < size.rows() - 1; row++) {
      canvas.put(listWidth(size), row, "│", Style.LABEL);
    }
    int left = listWidth(size) + 2;
    int height = size.rows() - 2 - top;
    FormPane.Area area = new FormPane.Area(left, top, size.columns() - left - 1, height);
    if (large) {
      CheckPane.below(canvas, pad.check(), world, area);
    } else {
      CheckPane.draw(canvas, pad.check(), world, area);
    }
    return top;
  }

  /** The wind the check looks at and how old it is, or the wind being typed; the row below. */
  private static int wind(
      Canvas canvas, FormPane.Area area, PadScreen pad, Flight card, World world) {
    int row = area.top();
    int width = area.width();
    if (pad.wind().isPresent()) {
      return typing(canvas, row, pad.wind().get());
    }
    if (ByWire.isOn(card.facts(), world)) {
      byWire(canvas, area, world);
      return row + 1;
    }
    int next = typed(canvas, row, card, world);
    Optional<Line> beside = ByWire.beside(card.facts(), world);
    beside.ifPresent(
        line -> canvas.put(LEFT, next, Paragraph.cut(line.text(), width - LEFT), line.style()));
    return next + (beside.isPresent() ? 1 : 0);
  }

  private static void byWire(Canvas canvas, FormPane.Area area, World world) {
    Line line = ByWire.line("", world);
    canvas.put(LEFT, area.top(), Paragraph.cut(line.text(), area.width() - LEFT), line.style());
  }

  private static int typed(Canvas canvas, int row, Flight card, World world) {
    String wind =
        card.wind().map(Notations.wind(world.settings().units())::show).orElse("no wind read");
    Optional<Duration> age =
        card.day().flatMap(world.log()::latestWeather).flatMap(read -> Ages.since(read, world));
    boolean old = age.map(Ages::isOldWind).orElse(true);
    String when = age.map(Ages::words).map(" · read "::concat).orElse("");
    canvas.put(LEFT, row, wind, Style.STRONG);
    canvas.put(
        LEFT + wind.length(),
        row,
        when + (old ? ": w reads it anew" : ""),
        old ? Style.OBJECTION : Style.PLAIN);
    return row + 1;
  }

  private static int typing(Canvas canvas, int row, Form form) {
    int width = Math.max(TYPED_WIDTH, Math.min(WIRE_WIDTH, form.entry().typed().length() + 1));
    String label = "Wind ";
    canvas.put(LEFT, row, label, Style.LABEL);
    canvas.fill(LEFT + label.length(), row, width, Style.FOCUS);
    canvas.put(LEFT + label.length(), row, form.entry().typed(), Style.FOCUS);
    canvas.cursorAt(LEFT + label.length() + form.entry().cursor(), row);
    Optional<String> objection = form.entry().fresh() ? Optional.empty() : form.objection(0);
    String beside =
        objection.or(() -> form.understood(0).map("= "::concat)).orElse(form.field().hint());
    List<String> told =
        Paragraph.lines(beside, canvas.size().columns() - LEFT - label.length() - width - 2);
    for (int i = 0; i < Math.min(2, told.size()); i++) {
      canvas.put(
          LEFT + label.length() + width + 1,
          row + i,
          told.get(i),
          objection.isPresent() ? Style.OBJECTION : Style.LABEL);
    }
    return row + 2;
  }

  private static void lines(Canvas canvas, PadList list, int index, FormPane.Area area, int step) {
    int height = (area.height() + step - 1) / step;
    int first = Math.max(0, Math.min(index - height / 2, list.lines().size() - height));
    for (int i = first; i < list.lines().size() && i - first < height; i++) {
      PadLine line = list.lines().get(i);
      int row = area.top() + (i - first) * step;
      boolean here = i == index;
      boolean heads = i == first || list.lines().get(i - 1).part() != line.part();
      Style style = here ? Style.FOCUS : line.warns() ? Style.OBJECTION : Style.PLAIN;
      if (here) {
        canvas.fill(0, row, area.width(), style);
        canvas.put(0, row, ">", style);
      }
      canvas.put(LEFT, row, heads ? line.part().words() : "", here ? style : Style.LABEL);
      String text = text(list, line);
      int width = area.width() - LEFT - PART_WIDTH - 1;
      canvas.put(LEFT + PART_WIDTH, row, Paragraph.cut(text, width), style);
      if (here && text.length() > width) {
        canvas.put(
            LEFT,
            area.top() + area.height(),
            Paragraph.cut(line.text(), area.width() - LEFT),
            Style.LABEL);
      }
    }
  }

  private static String text(PadList list, PadLine line) {
    return (list.isTicked(line) ? "[x] " : "[ ] ") + (line.warns() ? "! " : "") + line.text();
  }

  private static void foot(Canvas canvas, PadScreen pad, PadList list, World world) {
    int row = canvas.size().rows() - 2;
    Optional<MisfireWait> wait = MisfireWait.of(pad.flight(), world);
    if (wait.isPresent()) {
      canvas.fill(0, row - 1, canvas.size().columns(), Style.PLAIN);
      canvas.put(LEFT, row - 1, wait.get().words(world), Style.OBJECTION);
    }
    int open = list.open().size();
    String left = open == 0 ? "All ticked: a goes on to the count" : open + " to tick";
    String told = (pad.mode() == PadScreen.Mode.ARMING) ? "checking… the count follows" : left;
    canvas.put(LEFT, row, told, Style.STRONG);
    String kept = pad.sending().words(world);
    int edge = canvas.size().columns() >= WIDE ? listWidth(canvas.size()) : canvas.size().columns();
    canvas.put(edge - kept.length() - LEFT, row, kept, Style.LABEL);
  }

  /** Draws a text in the middle of a row. */
  static void middle(Canvas canvas, int row, String text, Style style) {
    canvas.put(Math.max(0, (canvas.size().columns() - text.length()) / 2), row, text, style);
  }
}
