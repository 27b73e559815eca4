package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How wide the columns of a list are and how far apart; one that is left out has no width. */
record ListColumns(List<Integer> widths, int gap) {
  private static final int OUT = -1;
  private static final int NARROWEST = 5;

  /** How much of a long text in the last column is worth its place. */
  private static final int ENOUGH = 20;

  /** How much of it does before another column is left out for it. */
  private static final int LEAST = 14;

  /** Keeps its own list. */
  ListColumns {
    widths = List.copyOf(widths);
  }

  /**
   * As wide as their longest cell, the last one narrower where enough of it stays. Where that is
   * not enough the columns move together, then headings are told briefly, then columns are left out
   * that others can do without, and at last the widest of those gives way whose cells may be cut.
   */
  static ListColumns of(List<ListPane.Heading> headings, List<ListPane.Item> items, int room) {
    List<Integer> whole = widest(headings, items, ListPane.Heading::text);
    List<Integer> brief = widest(headings, items, ListPane.Heading::brief);
    ListColumns least = without(headings, brief, headings.size());
    return Stream.concat(
            Stream.of(
                new ListColumns(whole, 2).withLastCut(room, ENOUGH),
                new ListColumns(whole, 1).withLastCut(room, ENOUGH),
                new ListColumns(brief, 1).withLastCut(room, ENOUGH)),
            IntStream.rangeClosed(0, headings.size())
                .mapToObj(n -> without(headings, brief, n).withLastCut(room, LEAST)))
        .filter(columns -> columns.total() <= room)
        .findFirst()
        .orElseGet(() -> least.within(headings, room));
  }

  /** With so many of the spare columns left out, the last first. */
  private static ListColumns without(
      List<ListPane.Heading> headings, List<Integer> widths, int count) {
    List<Integer> fewer = new ArrayList<>(widths);
    IntStream.range(0, widths.size())
        .map(i -> widths.size() - 1 - i)
        .filter(i -> headings.get(i).fit() == ListPane.Heading.Fit.SPARE)
        .limit(count)
        .forEach(i -> fewer.set(i, OUT));
    return new ListColumns(fewer, 1);
  }

  private static List<Integer> widest(
      List<ListPane.Heading> headings,
      List<ListPane.Item> items,
      Function<ListPane.Heading, String> words) {
    return IntStream.range(0, headings.size())
        .map(
            i ->
                items.stream()
                    .mapToInt(item -> item.cells().get(i).length())
                    .reduce(words.apply(headings.get(i)).length(), Math::max))
        .boxed()
        .toList();
  }

  private ListColumns withLastCut(int room, int worth) {
    List<Integer> narrower = new ArrayList<>(widths);
    int last = widths.size() - 1;
    int enough = Math.min(widths.get(last), worth);
    narrower.set(last, Math.max(enough, widths.get(last) - Math.max(0, total() - room)));
    return new ListColumns(narrower, gap);
  }

  private ListColumns within(List<ListPane.Heading> headings, int room) {
    List<Integer> narrower = new ArrayList<>(widths);
    for (int over = total() - room; over > 0; over--) {
      Optional<Integer> widest =
          IntStream.range(0, narrower.size())
              .filter(i -> headings.get(i).fit() == ListPane.Heading.Fit.CUT)
              .filter(i -> narrower.get(i) > NARROWEST)
              .boxed()
              .reduce((a, b) -> narrower.get(b) > narrower.get(a) ? b : a);
      widest.ifPresent(i -> narrower.set(i, narrower.get(i) - 1));
    }
    return new ListColumns(narrower, gap);
  }

  /** Whether a column is left out. */
  boolean isOut(int column) {
    return widths.get(column) == OUT;
  }

  private int total() {
    int shown = (int) IntStream.range(0, widths.size()).filter(i -> !isOut(i)).count();
    int cells = widths.stream().filter(width -> width != OUT).mapToInt(Integer::intValue).sum();
    return cells + gap * (shown - 1);
  }

  int last() {
    return widths.get(widths.size() - 1);
  }
}
