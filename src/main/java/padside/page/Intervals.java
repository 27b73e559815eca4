package padside.page;

import java.util.List;

/**
 * What is known of each thing between bounds, all on one axis.
 *
 * @param words what is to be seen in it, for who cannot see it
 * @param noun over the labels, such as {@code Lot}
 * @param least where the axis begins
 * @param most where it ends
 */
public record Intervals(
    String title,
    String words,
    String noun,
    Plot.Axis axis,
    double least,
    double most,
    List<Interval> intervals)
    implements Block {
  /**
   * One of them.
   *
   * @param told the same in words, beside it
   */
  public record Interval(String label, double low, double middle, double high, String told) {}

  /** Keeps its own list. */
  public Intervals {
    intervals = List.copyOf(intervals);
  }

  /** Where a value lies along the axis, from 0 to 1; what lies beyond is drawn at the end. */
  double share(double value) {
    return Math.max(0, Math.min(1, (value - least) / (most - least)));
  }

  @Override
  public List<Table> tables() {
    return List.of(
        new Table(
            title,
            List.of(
                Table.Column.of(noun),
                Table.Column.ofNumbers("Low"),
                Table.Column.ofNumbers("Middle"),
                Table.Column.ofNumbers("High"),
                Table.Column.of("Told")),
            intervals.stream()
                .map(
                    each ->
                        List.of(
                            each.label(),
                            number(each.low()),
                            number(each.middle()),
                            number(each.high()),
                            each.told()))
                .toList()));
  }

  private static String number(double value) {
    return String.format(java.util.Locale.ROOT, "%.3f", value);
  }
}
