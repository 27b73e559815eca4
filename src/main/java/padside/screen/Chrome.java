package padside.screen;

import java.util.ArrayList;
import java.util.List;

/** Title bar, footer and the notice line around every screen. */
final class Chrome {
  private static final String NAME = "Padside";

  private Chrome() {}

  static Frame draw(Session session, Size size) {
    if (!size.holds(Size.SMALLEST)) {
      return tooSmall(size);
    }
    return GuideText.of(session.top(), session.world())
        .map(words -> led(session, size, words))
        .orElseGet(() -> whole(session, size));
  }

  /** The guide's words between the screen, made as much lower, and its footer. */
  private static Frame led(Session session, Size size, String words) {
    List<String> lines = Paragraph.lines(words, size.columns() - 2);
    Canvas guide = new Canvas(new Size(size.columns(), lines.size()));
    for (int i = 0; i < lines.size(); i++) {
      guide.fill(0, i, size.columns(), Style.LABEL);
      guide.put(1, i, lines.get(i), Style.LABEL);
    }
    Frame screen = whole(session, new Size(size.columns(), size.rows() - lines.size()));
    List<Frame.Row> rows = new ArrayList<>(screen.rows());
    rows.addAll(rows.size() - 1, guide.frame().rows());
    return new Frame(size, rows, screen.cursor());
  }

  private static Frame whole(Session session, Size size) {
    Canvas canvas = new Canvas(size);
    Screen top = session.top();
    top.draw(canvas, session.world());
    int last = size.rows() - 1;
    canvas.fill(0, 0, size.columns(), Style.BAR);
    canvas.put(1, 0, title(session), Style.BAR);
    if (session.world().refused().isEmpty()) {
      canvas.put(size.columns() - NAME.length() - 1, 0, NAME, Style.BAR);
    }
    canvas.fill(0, last, size.columns(), Style.BAR);
    canvas.put(1, last, footer(top.bindings(), size.columns() - 2), Style.BAR);
    session.notice().ifPresent(text -> notice(canvas, text));
    return canvas.frame();
  }

  /** What screen it is; while nothing is saved that instead, for it must not be overlooked. */
  private static String title(Session session) {
    Screen top = session.top();
    return session
        .world()
        .refused()
        .filter(refused -> !(top instanceof RefusedScreen))
        .map(Refused::banner)
        .orElseGet(() -> top.title(session.world()));
  }

  /** On the rows above the footer, as many as it takes. */
  private static void notice(Canvas canvas, String text) {
    List<String> lines = Paragraph.lines(text, canvas.size().columns() - 2);
    int row = Math.max(1, canvas.size().rows() - 1 - lines.size());
    for (String line : lines.subList(0, Math.min(lines.size(), canvas.size().rows() - 1 - row))) {
      canvas.fill(0, row, canvas.size().columns(), Style.STRONG);
      canvas.put(1, row++, line, Style.STRONG);
    }
  }

  /** As many bindings as fit whole, then how to see the rest. */
  private static String footer(List<Binding> bindings, int width) {
    String help = "F1 keys";
    StringBuilder footer = new StringBuilder();
    for (Binding binding : bindings) {
      String item = binding.shownKey() + " " + binding.label() + "  ";
      if (!binding.label().isEmpty() && footer.length() + item.length() + help.length() <= width) {
        footer.append(item);
      }
    }
    return footer + help;
  }

  private static Frame tooSmall(Size size) {
    Canvas canvas = new Canvas(size);
    String sentence =
        String.format(
            "This terminal is %d × %d; Padside needs %d × %d. Make the window larger or the"
                + " letters smaller. Nothing is lost meanwhile.",
            size.columns(), size.rows(), Size.SMALLEST.columns(), Size.SMALLEST.rows());
    int row = 0;
    for (String line : Paragraph.lines(sentence, Math.max(1, size.columns()))) {
      canvas.put(0, row++, line, Style.STRONG);
    }
    return canvas.frame();
  }
}
