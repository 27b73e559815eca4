package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.form.Choices;
import padside.form.Entry;
import padside.form.Form;

/**
 * Draws a form into a stretch of the canvas: a row a field, the open list over what is below it.
 */
final class FormPane {
  private static final int LONGEST_LIST = 6;
  private static final int UNDERSTOOD_FROM = 10;
  private static final int HINT_ROWS = 2;
  private static final String MORE = "…";

  private final Canvas canvas;
  private final Area area;
  private final int labelWidth;

  private FormPane(Canvas canvas, Area area, int labelWidth) {
    this.canvas = canvas;
    this.area = area;
    this.labelWidth = labelWidth;
  }

  /** A rectangle of cells. */
  record Area(int left, int top, int width, int height) {
    /** What is left of it from a row on. */
    Area from(int row) {
      return new Area(left, row, width, top + height - row);
    }
  }

  /**
   * Draws the form; the hint or the objection of the field below the fields and the open list, at
   * the foot of the area where they leave no more room.
   */
  static void draw(Canvas canvas, Form form, Area area) {
    int longest = form.fields().stream().mapToInt(field -> field.label().length()).max().orElse(0);
    FormPane pane = new FormPane(canvas, area, longest + 1);
    int rows = Math.min(area.height() - HINT_ROWS, form.fields().size());
    int first = Math.max(0, form.at() - rows + 1);
    for (int i = first; i - first < rows; i++) {
      pane.field(form, i, area.top() + i - first);
    }
    pane.goingOn(form, first, rows);
    int below = area.top() + rows;
    if (form.listOpen() || form.entry().typed().isEmpty()) {
      below = Math.max(below, pane.list(form, area.top() + form.at() - first));
    }
    pane.tell(form, below);
  }

  /** That there are fields above the first row and below the last. */
  private void goingOn(Form form, int first, int rows) {
    if (first > 0 && mark(form, first).isBlank()) {
      canvas.put(area.left(), area.top(), MORE, Style.LABEL);
    }
    int last = first + rows - 1;
    if (last < form.fields().size() - 1 && mark(form, last).isBlank()) {
      canvas.put(area.left(), area.top() + rows - 1, MORE, Style.LABEL);
    }
  }

  private void field(Form form, int index, int row) {
    Entry entry = form.entries().get(index);
    boolean here = index == form.at();
    int left = area.left() + labelWidth + 2;
    int width = area.width() - labelWidth - 2;
    canvas.put(area.left(), row, mark(form, index), Style.OBJECTION);
    canvas.put(area.left() + 2, row, form.fields().get(index).label(), Style.LABEL);
    canvas.fill(left, row, width, here ? Style.FOCUS : Style.FIELD);
    int cut = here ? Math.max(0, entry.cursor() - width + 1) : 0;
    String shown = entry.typed().substring(Math.min(cut, entry.typed().length()));
    canvas.put(
        left,
        row,
        shown.substring(0, Math.min(shown.length(), width)),
        here ? Style.FOCUS : Style.FIELD);
    form.understood(index)
        .map(meaning -> "= " + meaning)
        .filter(meaning -> entry.typed().length() + 2 + meaning.length() <= width)
        .ifPresent(
            meaning -> {
              int column = Math.max(UNDERSTOOD_FROM, entry.typed().length() + 2);
              canvas.put(
                  left + Math.min(column, width - meaning.length()),
                  row,
                  meaning,
                  here ? Style.FOCUS : Style.FIELD);
            });
    if (here) {
      canvas.cursorAt(left + entry.cursor() - cut, row);
    }
  }

  private static String mark(Form form, int index) {
    if (objection(form, index).isPresent()) {
      return "!";
    }
    if (form.doubt(index).isPresent()) {
      return "?";
    }
    return index == form.at() ? ">" : " ";
  }

  /** Nothing to object to while an option of the open list stands for what is typed. */
  private static Optional<String> objection(Form form, int index) {
    boolean picking = index == form.at() && form.listOpen();
    return picking ? Optional.empty() : form.objection(index);
  }

  /** A text that is longer than its box, in lines. */
  private List<String> whole(Form form) {
    int width = area.width() - labelWidth - 2;
    return form.entry().typed().length() < width
        ? List.of()
        : Paragraph.lines(form.entry().typed(), area.width() - 4);
  }

  /**
   * What is to be known of the field, and its text where that is longer than its box: from one row
   * below what is drawn on, or next to it at the foot. Nothing where a list needs all the rows:
   * half a sentence beside it says nothing.
   */
  private void tell(Form form, int below) {
    String doubt = objection(form, form.at()).or(() -> form.doubt(form.at())).orElse("");
    Style style = doubt.isEmpty() ? Style.PLAIN : Style.OBJECTION;
    List<String> lines = Paragraph.lines(doubt.isEmpty() ? hint(form) : doubt, area.width());
    int end = area.top() + area.height();
    if (below > end - HINT_ROWS) {
      return;
    }
    int shown = Math.min(end - below, lines.size());
    int row = Math.min(below + 1, end - Math.max(HINT_ROWS, shown));
    for (int i = 0; i < shown; i++) {
      canvas.put(area.left(), row + i, lines.get(i), style);
    }
    int at = row + Math.max(HINT_ROWS, shown);
    for (String line : whole(form)) {
      if (at < end) {
        canvas.put(area.left() + 2, at++, line, Style.PLAIN);
      }
    }
  }

  /** With the key that opens the list, where the field's own words don't tell it. */
  private static String hint(Form form) {
    String hint = form.field().hint();
    boolean closed = !form.listOpen() && !form.suggestions().isEmpty();
    return closed && !hint.contains("Down") ? hint + " Down picks." : hint;
  }

  /**
   * Below its field, or above it where more of the list fits there; over the rows of the hint only
   * where it would be cut otherwise. Returns the row below it.
   */
  private int list(Form form, int fieldRow) {
    List<? extends Choices.Option<?>> options = form.suggestions();
    int wanted = Math.min(LONGEST_LIST, options.size());
    int end = area.top() + area.height();
    int above = Math.min(wanted, fieldRow - area.top());
    boolean apart = Math.max(end - HINT_ROWS - fieldRow - 1, above) >= wanted;
    int below = Math.min(wanted, end - (apart ? HINT_ROWS : 0) - fieldRow - 1);
    int room = Math.max(below, above);
    int row = below >= above ? fieldRow + 1 : fieldRow - above;
    int first = Math.max(0, form.pickedOption() - room + 1);
    int left = area.left() + labelWidth + 2;
    int width = area.width() - labelWidth - 2;
    for (int i = first; i < options.size() && i - first < room; i++) {
      boolean picked = form.listOpen() && i == form.pickedOption();
      Choices.Option<?> option = options.get(i);
      String line = (picked ? "> " : "  ") + option.text() + "  " + option.note();
      Style style = picked ? Style.FOCUS : Style.FIELD;
      canvas.fill(left, row + i - first, width, style);
      canvas.put(left, row + i - first, Paragraph.cut(line.stripTrailing(), width), style);
    }
    return row + room;
  }
}
