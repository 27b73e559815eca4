package padside.page;

import java.util.List;

/**
 * Labels with what is known behind them, and a line to write on where nothing is.
 *
 * @param cut whether it is cut out of the page along a dashed line
 */
public record Form(String title, List<Entry> entries, boolean cut) implements Block {
  /**
   * One label.
   *
   * @param value blank where it is to be filled in by pen
   * @param wide whether it wants a whole line
   */
  public record Entry(String label, String value, boolean wide) {
    public static Entry of(String label, String value) {
      return new Entry(label, value, false);
    }

    public static Entry wide(String label, String value) {
      return new Entry(label, value, true);
    }
  }

  /** Keeps its own list. */
  public Form {
    entries = List.copyOf(entries);
  }

  /** What is filled in; a form to be cut out has nothing to compute with. */
  @Override
  public List<Table> tables() {
    return cut
        ? List.of()
        : List.of(
            new Table(
                title,
                List.of(Table.Column.of("What"), Table.Column.of("Told")),
                entries.stream().map(entry -> List.of(entry.label(), entry.value())).toList()));
  }
}
