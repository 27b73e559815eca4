package padside.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A table in lines of letters: columns as wide as they need, the widest broken where they must. */
final class TableText {
  private static final int GAP = 2;

  /** A column of words is not made narrower than this, nor than its longest word. */
  private static final int LEAST = 14;

  private final Table table;
  private final int width;
  private final List<Integer> beside = new ArrayList<>();
  private final List<Integer> below = new ArrayList<>();
  private final List<Integer> widths = new ArrayList<>();

  private TableText(Table table, int width) {
    this.table = table;
    this.width = width;
    IntStream.range(0, table.columns().size()).forEach(beside::add);
    while (beside.size() > 1 && needed(beside) > width) {
      Integer longest = longest();
      beside.remove(longest);
      below.add(longest);
    }
    below.sort(null);
    beside.forEach(column -> widths.add(natural(column)));
    shrink();
  }

  static List<TextLine> lines(Table table, int width) {
    TableText text = new TableText(table, width);
    List<TextLine> lines = new ArrayList<>();
    List<String> headings = table.columns().stream().map(Table.Column::heading).toList();
    text.line(headings).forEach(line -> lines.add(TextLine.strong(line)));
    lines.add(TextLine.plain(text.rule()));
    for (List<String> row : table.rows()) {
      List<String> cells = row.stream().map(TextPage::shown).toList();
      text.line(cells).forEach(line -> lines.add(TextLine.plain(line)));
      text.hanging(cells).forEach(line -> lines.add(TextLine.plain(line)));
    }
    return lines;
  }

  /** The column with the longest texts hangs below its line where not all fit beside each other. */
  private Integer longest() {
    return beside.stream().skip(1).max(Comparator.comparing(this::natural)).orElseThrow();
  }

  private int needed(List<Integer> columns) {
    return columns.stream().mapToInt(this::least).sum() + GAP * (columns.size() - 1);
  }

  private int least(int column) {
    int natural = natural(column);
    return table.columns().get(column).numbers()
        ? natural
        : Math.min(natural, Math.max(LEAST, longestWord(column)));
  }

  private int natural(int column) {
    return Math.max(headingWidth(column), longest(column, text -> text.length()));
  }

  private int longestWord(int column) {
    return Math.max(
        headingWidth(column), Math.min(width / 3, longest(column, TableText::longestWord)));
  }

  private int headingWidth(int column) {
    return longestWord(table.columns().get(column).heading());
  }

  private int longest(int column, ToIntFunction<String> length) {
    return table.rows().stream().map(row -> row.get(column)).mapToInt(length).max().orElse(0);
  }

  private static int longestWord(String text) {
    return Stream.of(text.split(" ", -1)).mapToInt(String::length).max().orElse(1);
  }

  private void shrink() {
    int over =
        widths.stream().mapToInt(Integer::intValue).sum() + GAP * (widths.size() - 1) - width;
    for (; over > 0; over--) {
      int widest =
          IntStream.range(0, widths.size())
              .boxed()
              .max(Comparator.comparing(i -> widths.get(i) - least(beside.get(i))))
              .orElseThrow();
      widths.set(widest, Math.max(1, widths.get(widest) - 1));
    }
  }

  private String rule() {
    return widths.stream().map("-"::repeat).collect(Collectors.joining(" ".repeat(GAP)));
  }

  private List<String> line(List<String> cells) {
    List<List<String>> broken = new ArrayList<>();
    for (int i = 0; i < beside.size(); i++) {
      broken.add(Wrapped.lines(cells.get(beside.get(i)), widths.get(i)));
    }
    int height = broken.stream().mapToInt(List::size).max().orElse(1);
    return IntStream.range(0, height).mapToObj(row -> row(broken, row)).toList();
  }

  private List<String> hanging(List<String> cells) {
    return below.stream()
        .filter(column -> !cells.get(column).isBlank())
        .flatMap(
            column ->
                Wrapped.hanging(
                    "    " + table.columns().get(column).heading() + ": ", cells.get(column), width)
                    .stream())
        .toList();
  }

  private String row(List<List<String>> cells, int row) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String text = row < cells.get(i).size() ? cells.get(i).get(row) : "";
      String blanks = " ".repeat(Math.max(0, widths.get(i) - text.length()));
      boolean numbers = table.columns().get(beside.get(i)).numbers();
      line.append(numbers ? blanks + text : text + blanks).append(" ".repeat(GAP));
    }
    return line.toString().stripTrailing();
  }
}
