package padside.page;

import java.util.ArrayList;
import java.util.List;
import padside.units.PrintableText;

/** A page in lines of letters, for a screen or a printer that knows nothing else. */
public final class TextPage {
  /** What a sheet of paper and a terminal hold. */
  public static final int USUAL_WIDTH = 80;

  private static final int LEAST_BAR = 10;

  /** Labels longer than this share of a line have one of their own. */
  private static final int PAIRED = 3;

  private final int width;
  private final List<TextLine> lines = new ArrayList<>();

  private TextPage(int width) {
    this.width = width;
  }

  /** No line is wider, unless a table has too many columns for that. */
  public static List<TextLine> lines(Page page, int width) {
    TextPage text = new TextPage(width);
    text.strong(page.title());
    text.strong("=".repeat(Math.min(width, shown(page.title()).length())));
    text.plain(page.about());
    page.sections().forEach(text::section);
    return List.copyOf(text.lines);
  }

  static String shown(String text) {
    return PrintableText.of(text);
  }

  private void section(Page.Section section) {
    if (!section.title().isBlank()) {
      lines.add(TextLine.plain(""));
      strong(section.title());
      strong("-".repeat(Math.min(width, shown(section.title()).length())));
    }
    section.blocks().forEach(this::block);
  }

  private void block(Block block) {
    lines.add(TextLine.plain(""));
    if (block instanceof Prose prose) {
      prose(prose);
    } else if (block instanceof Table table) {
      strong(table.caption());
      lines.addAll(TableText.lines(table, width));
    } else if (block instanceof Form form) {
      form(form);
    } else if (block instanceof Plot plot) {
      strong(plot.title());
      plain(plot.words());
      PlotText.lines(plot, width).forEach(line -> lines.add(TextLine.plain(shown(line))));
    } else if (block instanceof Bars bars) {
      strong(bars.title());
      plain(bars.words());
      bars(bars);
    } else if (block instanceof Intervals intervals) {
      strong(intervals.title());
      plain(intervals.words());
      intervals(intervals);
    } else if (block instanceof Keys keys) {
      keys.groups().forEach(this::keys);
    }
  }

  private void keys(Keys.Group group) {
    strong(group.screen());
    int room = group.keys().stream().mapToInt(each -> each.key().length()).max().orElse(0) + 2;
    for (Keys.Key each : group.keys()) {
      String head = "  " + shown(each.key()) + " ".repeat(room - each.key().length());
      Wrapped.hanging(head, shown(each.does()), width)
          .forEach(line -> lines.add(TextLine.plain(line)));
    }
  }

  private void prose(Prose prose) {
    if (prose.weight() == Prose.Weight.NOTICE) {
      Wrapped.hanging("! ", shown(prose.text()), width)
          .forEach(line -> lines.add(TextLine.strong(line)));
    } else {
      plain(prose.text());
    }
  }

  private void strong(String text) {
    Wrapped.lines(shown(text), width).forEach(line -> lines.add(TextLine.strong(line)));
  }

  private void plain(String text) {
    if (!text.isBlank()) {
      Wrapped.lines(shown(text), width).forEach(line -> lines.add(TextLine.plain(line)));
    }
  }

  /** Each part of a bar in a letter of its own. */
  private void bars(Bars bars) {
    int label = bars.bars().stream().mapToInt(bar -> bar.label().length()).max().orElse(0);
    int room = Math.max(LEAST_BAR, width - label - 12);
    for (Bars.Bar bar : bars.bars()) {
      StringBuilder line = new StringBuilder(shown(bar.label()));
      line.append(" ".repeat(label - bar.label().length() + 2));
      for (int i = 0; i < bar.sizes().size(); i++) {
        line.append(letter(i).repeat(length(bar.sizes().get(i), bars.longest(), room)));
      }
      lines.add(
          TextLine.plain(
              line
                  + " "
                  + bar.sizes().stream()
                      .map(String::valueOf)
                      .collect(java.util.stream.Collectors.joining(" + "))));
    }
    List<String> legend = new ArrayList<>();
    for (int i = 0; i < bars.parts().size(); i++) {
      legend.add(letter(i) + " " + bars.parts().get(i));
    }
    plain(String.join(" · ", legend));
  }

  /** What is there at all is seen. */
  private static int length(int size, int longest, int room) {
    return size == 0 ? 0 : Math.max(1, (int) Math.round((double) size * room / longest));
  }

  private static String letter(int part) {
    return part == 0 ? "#" : part == 1 ? "x" : "o";
  }

  private void intervals(Intervals chart) {
    int label = chart.intervals().stream().mapToInt(each -> each.label().length()).max().orElse(0);
    int told = chart.intervals().stream().mapToInt(each -> each.told().length()).max().orElse(0);
    int room = Math.max(LEAST_BAR, width - label - told - 6);
    for (Intervals.Interval each : chart.intervals()) {
      char[] axis = " ".repeat(room).toCharArray();
      int low = at(chart.share(each.low()), room);
      int high = at(chart.share(each.high()), room);
      java.util.Arrays.fill(axis, low, high + 1, '-');
      axis[low] = '|';
      axis[high] = '|';
      axis[at(chart.share(each.middle()), room)] = 'o';
      String head = shown(each.label()) + " ".repeat(label - each.label().length() + 2);
      lines.add(TextLine.plain(head + new String(axis) + "  " + shown(each.told())));
    }
    String least = Extent.tick(chart.least());
    String most = Extent.tick(chart.most());
    int between = Math.max(1, room - least.length() - most.length());
    lines.add(TextLine.plain(" ".repeat(label + 2) + least + " ".repeat(between) + most));
    plain("from | to |, o middle: " + chart.axis().words());
  }

  private static int at(double share, int room) {
    return (int) Math.round(share * (room - 1));
  }

  /** Two labels a line where they need no whole one. */
  private void form(Form form) {
    strong(form.title());
    String waiting = "";
    for (Form.Entry entry : form.entries()) {
      boolean half =
          !entry.wide() && entry.value().length() + entry.label().length() < width / PAIRED + 3;
      if (!half || !form.cut()) {
        waiting = flushed(waiting);
        entry(entry);
      } else if (waiting.isEmpty()) {
        waiting = ruled(entry, (width - 2) / 2);
      } else {
        lines.add(TextLine.plain(waiting + "  " + ruled(entry, (width - 2) / 2)));
        waiting = "";
      }
    }
    flushed(waiting);
    if (form.cut()) {
      lines.add(TextLine.plain("- ".repeat(width / 2).strip()));
    }
  }

  private String flushed(String waiting) {
    if (!waiting.isEmpty()) {
      lines.add(TextLine.plain(waiting));
    }
    return "";
  }

  private void entry(Form.Entry entry) {
    if (entry.value().isBlank() && entry.label().length() + LEAST_BAR > width) {
      plain(entry.label() + ":");
      lines.add(TextLine.plain("_".repeat(width)));
    } else if (entry.value().isBlank()) {
      lines.add(TextLine.plain(ruled(entry, width)));
    } else {
      Wrapped.hanging(shown(entry.label()) + ": ", shown(entry.value()), width)
          .forEach(line -> lines.add(TextLine.plain(line)));
    }
  }

  /** A line to write on behind what is printed. */
  private static String ruled(Form.Entry entry, int width) {
    String text = shown(entry.label() + ": " + entry.value());
    return text + "_".repeat(Math.max(0, width - text.length()));
  }
}
