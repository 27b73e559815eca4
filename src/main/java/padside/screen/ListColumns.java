package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How wide the columns of a list are and how far apart. */
record ListColumns(List<Integer> widths, int gap) {
  private static final int NARROWEST = 5;

  /** How much of a long text in the last column is worth its place. */
  private static final int ENOUGH = 20;

  /** Keeps its own list. */
  ListColumns {
    widths = List.copyOf(widths);
  }

  /**
   * As wide as their longest cell, the last one narrower where enough of it stays. Where that is
   * not enough the columns move together, then headings are cut, and then the widest gives way.
   */
  static ListColumns of(List<ListPane.Heading> headings, List<ListPane.Item> items, int room) {
    List<Integer> cells = widest(headings, items);
    List<Integer> full =
        IntStream.range(0, headings.size())
            .mapToObj(i -> Math.max(cells.get(i), headings.get(i).text().length()))
            .toList();
    return Stream.of(new ListColumns(full, 2), new ListColumns(full, 1), new ListColumns(cells, 1))
        .map(columns -> columns.withLastCut(room))
        .filter(columns -> columns.total() <= room)
        .findFirst()
        .orElseGet(() -> new ListColumns(cells, 1).within(room));
  }

  /** Wide enough for the cells and for the beginning of the heading. */
  private static List<Integer> widest(List<ListPane.Heading> headings, List<ListPane.Item> items) {
    return IntStream.range(0, headings.size())
        .map(
            i ->
                items.stream()
                    .mapToInt(item -> item.cells().get(i).length())
                    .reduce(Math.min(NARROWEST, headings.get(i).text().length()), Math::max))
        .boxed()
        .toList();
  }

  private ListColumns withLastCut(int room) {
    List<Integer> narrower = new ArrayList<>(widths);
    int last = widths.size() - 1;
    int enough = Math.min(widths.get(last), ENOUGH);
    narrower.set(last, Math.max(enough, widths.get(last) - Math.max(0, total() - room)));
    return new ListColumns(narrower, gap);
  }

  private ListColumns within(int room) {
    List<Integer> narrower = new ArrayList<>(widths);
    int over = total() - room;
    while (over > 0) {
      int widest =
          IntStream.range(0, narrower.size())
              .reduce((a, b) -> narrower.get(b) > narrower.get(a) ? b : a)
              .orElseThrow();
      if (narrower.get(widest) <= NARROWEST) {
        break;
      }
      narrower.set(widest, narrower.get(widest) - 1);
      over--;
    }
    return new ListColumns(narrower, gap);
  }

  private int total() {
    return widths.stream().mapToInt(Integer::intValue).sum() + gap * (widths.size() - 1);
  }

  int last() {
    return widths.get(widths.size() - 1);
  }
}
