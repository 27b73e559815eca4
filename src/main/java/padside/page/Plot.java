package padside.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Points and lines over two axes, in the units the axes name.
 *
 * @param words what is to be seen in it, for who cannot see it
 * @param toScale whether both axes have one scale, as a map wants it
 */
public record Plot(
    String title, String words, Axis across, Axis up, boolean toScale, List<Series> series)
    implements Block {
  /** What an axis measures. */
  public record Axis(String label, String unit) {
    /** {@code predicted, ft}. */
    public String words() {
      return unit.isEmpty() ? label : label + ", " + unit;
    }
  }

  /**
   * One point.
   *
   * @param label written beside it; mostly blank
   */
  public record Point(double x, double y, String label) {
    public static Point of(double x, double y) {
      return new Point(x, y, "");
    }
  }

  /** How the points of a series are told from those of another, without colour. */
  public enum Mark {
    DOT("o"),
    CROSS("x"),
    PAD("@"),
    HAZARD("!"),
    LINE("."),
    DASHES("-"),
    OUTLINE("#");

    private final String letter;

    Mark(String letter) {
      this.letter = letter;
    }

    /** What stands for it among letters. */
    public String letter() {
      return letter;
    }

    /** Whether its points are joined. */
    public boolean isJoined() {
      return this == LINE || this == DASHES || this == OUTLINE;
    }
  }

  /** What belongs together. */
  public record Series(String name, Mark mark, List<Point> points) {
    /** Keeps its own list, without what lies nowhere. */
    public Series {
      points =
          points.stream()
              .filter(point -> Double.isFinite(point.x) && Double.isFinite(point.y))
              .toList();
    }
  }

  /** Keeps its own list, without what has no points. */
  public Plot {
    series = series.stream().filter(each -> !each.points().isEmpty()).toList();
  }

  /** Its series without those that are called and drawn like one before. */
  List<Series> legend() {
    return series.stream()
        .collect(
            Collectors.toMap(
                each -> each.name() + each.mark(),
                each -> each,
                (first, second) -> first,
                LinkedHashMap::new))
        .values()
        .stream()
        .toList();
  }

  /** Every point of every series. */
  Stream<Point> points() {
    return series.stream().flatMap(each -> each.points().stream());
  }

  @Override
  public List<Table> tables() {
    List<List<String>> rows = new ArrayList<>();
    for (Series each : series) {
      each.points()
          .forEach(
              point ->
                  rows.add(List.of(each.name(), number(point.x), number(point.y), point.label())));
    }
    List<Table.Column> columns =
        List.of(
            Table.Column.of("Series"),
            Table.Column.ofNumbers(across.words()),
            Table.Column.ofNumbers(up.words()),
            Table.Column.of("Label"));
    return List.of(new Table(title, columns, rows).withoutBlankColumns());
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value + 0.0);
  }
}
