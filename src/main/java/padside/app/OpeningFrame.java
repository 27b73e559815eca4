package padside.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.screen.Frame;
import padside.screen.Size;
import padside.screen.Style;

/** What is shown while the log is being opened. */
final class OpeningFrame {
  private static final String LINE = " Padside: opening the log";

  private OpeningFrame() {}

  static Frame of(Size size) {
    List<Frame.Row> rows = new ArrayList<>();
    rows.add(row(LINE, size, Style.BAR));
    for (int i = 1; i < size.rows(); i++) {
      rows.add(row("", size, Style.PLAIN));
    }
    return new Frame(size, rows, Optional.empty());
  }

  private static Frame.Row row(String text, Size size, Style style) {
    String padded = text + " ".repeat(Math.max(0, size.columns() - text.length()));
    return new Frame.Row(List.of(new Frame.Span(padded.substring(0, size.columns()), style)));
  }
}
