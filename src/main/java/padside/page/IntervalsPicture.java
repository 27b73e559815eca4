package padside.page;

import j2html.tags.ContainerTag;

/** Intervals as a drawing within a page. */
final class IntervalsPicture {
  private static final double WIDTH = 640;
  private static final double ROW = 26;
  private static final double FOOT = 44;
  private static final double LETTER = 7.5;

  private final Intervals chart;
  private final double left;
  private final double right;

  private IntervalsPicture(Intervals chart) {
    this.chart = chart;
    int label = chart.intervals().stream().mapToInt(each -> each.label().length()).max().orElse(1);
    int told = chart.intervals().stream().mapToInt(each -> each.told().length()).max().orElse(1);
    this.left = Math.min(WIDTH / 3, 12 + label * LETTER);
    this.right = WIDTH - Math.min(WIDTH / 3, 16 + told * LETTER);
  }

  static ContainerTag<?> of(Intervals chart) {
    return new IntervalsPicture(chart).drawn();
  }

  private ContainerTag<?> drawn() {
    double bottom = ROW * chart.intervals().size() + 6;
    ContainerTag<?> svg = Markup.picture(chart.title(), chart.words(), WIDTH, bottom + FOOT);
    for (double tick : Extent.ticks(chart.least(), chart.most())) {
      double x = x(tick);
      svg.with(Markup.line(x, 0, x, bottom, "grid"));
      svg.with(Markup.text(x, bottom + 16, "middle", Extent.tick(tick)));
    }
    svg.with(Markup.text(right, bottom + 34, "end", chart.axis().words()));
    double y = ROW / 2 + 3;
    for (Intervals.Interval each : chart.intervals()) {
      interval(svg, each, y);
      y += ROW;
    }
    return svg;
  }

  private double x(double value) {
    return left + chart.share(value) * (right - left);
  }

  private void interval(ContainerTag<?> svg, Intervals.Interval each, double y) {
    svg.with(Markup.text(left - 8, y + 4, "end", each.label()));
    svg.with(Markup.line(x(each.low()), y, x(each.high()), y, "trace"));
    svg.with(Markup.line(x(each.low()), y - 5, x(each.low()), y + 5, "trace"));
    svg.with(Markup.line(x(each.high()), y - 5, x(each.high()), y + 5, "trace"));
    svg.with(Markup.rectangle(x(each.middle()) - 4, y - 4, 8, 8, "filled"));
    svg.with(Markup.text(right + 8, y + 4, "start", each.told()));
  }
}
