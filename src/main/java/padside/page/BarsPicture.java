package padside.page;

import static j2html.TagCreator.tag;

import j2html.tags.ContainerTag;
import java.util.stream.Collectors;

/** Bars as a drawing within a page. */
final class BarsPicture {
  private static final double WIDTH = 640;
  private static final double ROW = 24;
  private static final double HEAD = 26;
  private static final double LETTER = 7.5;
  private static final double NUMBERS = 90;

  private final Bars bars;
  private final double left;

  private BarsPicture(Bars bars) {
    this.bars = bars;
    int longest = bars.bars().stream().mapToInt(bar -> bar.label().length()).max().orElse(1);
    this.left = Math.min(WIDTH / 3, 12 + longest * LETTER);
  }

  static ContainerTag<?> of(Bars bars) {
    return new BarsPicture(bars).drawn();
  }

  private ContainerTag<?> drawn() {
    double height = HEAD + ROW * bars.bars().size() + 8;
    ContainerTag<?> svg = Markup.picture(bars.title(), bars.words(), WIDTH, height);
    legend(svg);
    double y = HEAD;
    for (Bars.Bar bar : bars.bars()) {
      bar(svg, bar, y);
      y += ROW;
    }
    return svg;
  }

  private void legend(ContainerTag<?> svg) {
    double x = left;
    for (int i = 0; i < bars.parts().size(); i++) {
      part(svg, i, x, 4, 22);
      svg.with(Markup.text(x + 28, 16, "start", bars.parts().get(i)));
      x += 50 + bars.parts().get(i).length() * LETTER;
    }
  }

  private void bar(ContainerTag<?> svg, Bars.Bar bar, double y) {
    svg.with(Markup.text(left - 8, y + 15, "end", bar.label()));
    double x = left;
    for (int i = 0; i < bar.sizes().size(); i++) {
      double width = bar.sizes().get(i) * (WIDTH - left - NUMBERS) / bars.longest();
      if (width > 0) {
        part(svg, i, x, y + 2, width);
      }
      x += width;
    }
    String numbers = bar.sizes().stream().map(String::valueOf).collect(Collectors.joining(" + "));
    svg.with(Markup.text(x + 6, y + 15, "start", numbers));
  }

  /** The first part is filled, the second crossed out, a third empty. */
  private static void part(ContainerTag<?> svg, int part, double x, double y, double width) {
    svg.with(
        Markup.rectangle(
            x, y, width, ROW - 8, part == 0 ? "filled" : part == 1 ? "open" : "faint"));
    if (part == 1) {
      ContainerTag<?> lines = tag("g");
      for (double at = 4; at < width; at += 6) {
        double up = Math.min(ROW - 8, at);
        lines.with(Markup.line(x + at, y, x + at - up, y + up, "hatch"));
      }
      svg.with(lines);
    }
  }
}
