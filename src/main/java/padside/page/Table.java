package padside.page;

import java.util.List;

/**
 * A table with a heading over each column; the first cell of a line says what the line is about.
 *
 * @param caption what it holds, with the units its headings do not tell
 */
public record Table(String caption, List<Column> columns, List<List<String>> rows)
    implements Block {
  /**
   * One column.
   *
   * @param numbers whether they end below each other
   */
  public record Column(String heading, boolean numbers) {
    public static Column of(String heading) {
      return new Column(heading, false);
    }

    public static Column ofNumbers(String heading) {
      return new Column(heading, true);
    }
  }

  /** Keeps its own lists and refuses a line of another length. */
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(caption + ": " + row + " for " + columns.size());
      }
    }
  }

  @Override
  public List<Table> tables() {
    return List.of(this);
  }

  /** This, or what is said instead where it has no line. */
  public List<Block> or(Block... otherwise) {
    return rows.isEmpty() ? List.of(otherwise) : List.of(this);
  }

  /** The same without the columns, from the second on, that have nothing in any line. */
  public Table withoutBlankColumns() {
    List<Integer> kept =
        java.util.stream.IntStream.range(0, columns.size())
            .filter(i -> i == 0 || rows.stream().anyMatch(row -> !row.get(i).isBlank()))
            .boxed()
            .toList();
    return new Table(
        caption,
        kept.stream().map(columns::get).toList(),
        rows.stream().map(row -> kept.stream().map(row::get).toList()).toList());
  }
}
