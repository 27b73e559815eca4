package padside.screen;

import java.util.ArrayList;
import java.util.List;
import padside.preflight.Answer;

/**
 * Draws what the check says beside or above a form, the verdict first; what does not fit is cut.
 */
final class CheckPane {
  private CheckPane() {}

  /** Draws verdict, reasons, limits and outlook into an area, the caution at its foot. */
  static void draw(Canvas canvas, LiveCheck check, World world, FormPane.Area area) {
    if (LargeCheck.fits(canvas.size())) {
      FormPane.Area band =
          new FormPane.Area(area.left(), area.top(), area.width(), LargeCheck.rows(canvas.size()));
      int below = LargeCheck.row(canvas, check, world, band);
      below(canvas, check, world, area.from(below));
    } else {
      sections(canvas, check, world, area, verdict(canvas, check, area));
    }
  }

  /** The same where the verdict stands in large figures already. */
  static void below(Canvas canvas, LiveCheck check, World world, FormPane.Area area) {
    int row = area.top();
    List<Line> told = CheckText.verdict(check, area.width());
    for (Line line : told.subList(1, told.size())) {
      canvas.put(area.left(), row++, fit(line.text(), area), Style.STRONG);
    }
    sections(canvas, check, world, area, row);
  }

  private static void sections(
      Canvas canvas, LiveCheck check, World world, FormPane.Area area, int top) {
    List<String> caution = Paragraph.lines(CheckText.CAUTION, area.width());
    int room = area.top() + area.height() - caution.size() - top;
    List<Line> lines = joined(check, CheckText.brief(check, area.width(), world), room);
    boolean current = check.current().isPresent();
    boolean cut = lines.size() > room;
    List<Line> shown = cut ? lines.subList(0, Math.max(0, room - 1)) : lines;
    for (int i = 0; i < shown.size(); i++) {
      Line line = shown.get(i);
      canvas.put(
          area.left(), top + i, fit(line.text(), area), current ? line.style() : Style.LABEL);
    }
    if (cut) {
      canvas.put(area.left(), top + Math.max(0, room - 1), Line.more("F3"));
    }
    for (int i = 0; i < caution.size(); i++) {
      canvas.put(
          area.left(),
          area.top() + area.height() - caution.size() + i,
          caution.get(i),
          Style.LABEL);
    }
  }

  /** Draws the verdict as a band over the width of the area; returns the row below it. */
  static int verdict(Canvas canvas, LiveCheck check, FormPane.Area area) {
    int row = area.top();
    for (Line line : CheckText.verdict(check, area.width())) {
      canvas.fill(area.left(), row, area.width(), line.style());
      canvas.put(area.left(), row++, fit(line.text(), area), line.style());
    }
    return row;
  }

  /**
   * The sections below each other; a blank row between them where all fit that way and none will
   * grow.
   */
  private static List<Line> joined(LiveCheck check, List<List<Line>> sections, int room) {
    int rows = sections.stream().mapToInt(List::size).sum();
    boolean grows = check.answer().filter(Answer::mayBeHelped).isPresent();
    boolean blanks = !grows && rows + sections.size() <= room;
    List<Line> lines = new ArrayList<>();
    for (List<Line> section : sections) {
      if (blanks) {
        lines.add(Line.blank());
      }
      lines.addAll(section);
    }
    return lines;
  }

  private static String fit(String text, FormPane.Area area) {
    return text.substring(0, Math.min(text.length(), area.width()));
  }
}
