package padside.page;

import static j2html.TagCreator.tag;

import j2html.tags.ContainerTag;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A plot as a drawing within a page. */
final class PlotPicture {
  private static final double WIDTH = 640;
  private static final double LEFT = 62;
  private static final double RIGHT = 14;
  private static final double TOP = 26;
  private static final double BOTTOM = 44;
  private static final double LEGEND = 20;
  private static final double PLAIN_HEIGHT = 260;
  private static final double MAP_HEIGHT = 460;
  private static final double ARM = 4.5;

  /** Further right a label goes to the left of its point. */
  private static final double ROOM_FOR_WORDS = 0.8;

  /** From so many on, points that cannot be told apart are drawn once. */
  private static final int CROWD = 600;

  private final Plot plot;
  private final double inner = WIDTH - LEFT - RIGHT;
  private final double high;
  private final Extent extent;

  private PlotPicture(Plot plot) {
    this.plot = plot;
    this.high = plot.toScale() ? MAP_HEIGHT : PLAIN_HEIGHT;
    this.extent = Extent.of(plot, inner / high);
  }

  static ContainerTag<?> of(Plot plot) {
    return new PlotPicture(plot).drawn();
  }

  private ContainerTag<?> drawn() {
    List<Plot.Series> told = plot.legend();
    double height = TOP + high + BOTTOM + LEGEND * told.size();
    ContainerTag<?> svg = Markup.picture(plot.title(), plot.words(), WIDTH, height);
    axes(svg);
    plot.series().stream().filter(each -> each.mark().isJoined()).forEach(each -> join(svg, each));
    plot.series().stream().filter(each -> !each.mark().isJoined()).forEach(each -> dots(svg, each));
    double y = TOP + high + BOTTOM + 4;
    for (Plot.Series each : told) {
      sample(svg, each, y);
      svg.with(Markup.text(LEFT + 34, y + 4, "start", each.name()));
      y += LEGEND;
    }
    return svg;
  }

  private void axes(ContainerTag<?> svg) {
    svg.with(Markup.text(4, 14, "start", plot.up().words()));
    svg.with(Markup.text(WIDTH - RIGHT, TOP + high + 36, "end", plot.across().words()));
    for (double tick : Extent.ticks(extent.bottom(), extent.top())) {
      double y = y(tick);
      svg.with(Markup.line(LEFT, y, WIDTH - RIGHT, y, "grid"));
      svg.with(Markup.text(LEFT - 6, y + 4, "end", Extent.tick(tick)));
    }
    for (double tick : Extent.ticks(extent.left(), extent.right())) {
      double x = x(tick);
      svg.with(Markup.line(x, TOP, x, TOP + high, "grid"));
      svg.with(Markup.text(x, TOP + high + 17, "middle", Extent.tick(tick)));
    }
    svg.with(Markup.rectangle(LEFT, TOP, inner, high, "frame"));
  }

  private double x(double value) {
    return LEFT + extent.acrossShare(value) * inner;
  }

  private double y(double value) {
    return TOP + (1 - extent.upShare(value)) * high;
  }

  private void sample(ContainerTag<?> svg, Plot.Series series, double y) {
    if (series.mark().isJoined()) {
      svg.with(Markup.line(LEFT, y, LEFT + 28, y, look(series.mark())));
    } else {
      svg.with(Markup.path(shape(series.mark(), LEFT + 14, y), look(series.mark())));
    }
  }

  private void join(ContainerTag<?> svg, Plot.Series series) {
    StringBuilder way = new StringBuilder();
    for (Plot.Point point : series.points()) {
      way.append(way.length() == 0 ? "M" : "L");
      way.append(Markup.number(x(point.x()))).append(' ').append(Markup.number(y(point.y())));
    }
    svg.with(Markup.path(way.toString(), look(series.mark())));
    labels(svg, series);
  }

  private void dots(ContainerTag<?> svg, Plot.Series series) {
    boolean crowded = series.points().size() > CROWD;
    Set<String> drawn = new HashSet<>();
    ContainerTag<?> group = tag("g");
    for (Plot.Point point : series.points()) {
      double x = crowded ? Math.rint(x(point.x()) / ARM) * ARM : x(point.x());
      double y = crowded ? Math.rint(y(point.y()) / ARM) * ARM : y(point.y());
      if (drawn.add(Markup.number(x) + " " + Markup.number(y))) {
        group.with(Markup.path(shape(series.mark(), x, y), look(series.mark())));
      }
    }
    svg.with(group);
    labels(svg, series);
  }

  private void labels(ContainerTag<?> svg, Plot.Series series) {
    boolean left = false;
    for (Plot.Point point : series.points()) {
      if (!point.label().isBlank()) {
        left = !left; // neighbours in time often are neighbours in place
        boolean right = !left || extent.acrossShare(point.x()) > ROOM_FOR_WORDS;
        svg.with(
            Markup.text(
                x(point.x()) + (right ? -7 : 7),
                y(point.y()) - 5,
                right ? "end" : "start",
                point.label()));
      }
    }
  }

  /** Each mark has a shape of its own. */
  private static String shape(Plot.Mark mark, double x, double y) {
    return switch (mark) {
      case DOT, LINE, DASHES, OUTLINE -> round(x, y, ARM - 1);
      case CROSS ->
          "M%s %sl%s %sm0 -%sl-%s %s"
              .formatted(at(x - ARM), at(y - ARM), two(), two(), two(), two(), two());
      case PAD -> round(x, y, ARM + 2) + round(x, y, 1.5);
      case HAZARD ->
          "M%s %sl%s %sh-%sz"
              .formatted(at(x), at(y - ARM - 2), at(ARM + 1), at(2 * ARM + 1), at(2 * ARM + 2));
    };
  }

  private static String round(double x, double y, double r) {
    return "M%s %sa%s %s 0 1 0 %s 0a%s %s 0 1 0 -%s 0"
        .formatted(at(x - r), at(y), at(r), at(r), at(2 * r), at(r), at(r), at(2 * r));
  }

  private static String two() {
    return at(2 * ARM);
  }

  private static String at(double value) {
    return Markup.number(value);
  }

  private static String look(Plot.Mark mark) {
    return switch (mark) {
      case DOT -> "dot";
      case CROSS -> "cross";
      case PAD -> "pad";
      case HAZARD -> "hazard";
      case LINE -> "trace";
      case DASHES -> "dashes";
      case OUTLINE -> "outline";
    };
  }
}
