package padside.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** One whole picture of the terminal: as many rows as it is high, each as wide as it is. */
public record Frame(Size size, List<Row> rows, Optional<Spot> cursor) {
  /** A cell, counted from 0 at the top left. */
  public record Spot(int column, int row) {}

  /** Neighbouring characters of one style. */
  public record Span(String text, Style style) {}

  /** One row, left to right. */
  public record Row(List<Span> spans) {
    public Row {
      spans = List.copyOf(spans);
    }

    /** The characters without their styles. */
    public String text() {
      return spans.stream().map(Span::text).collect(Collectors.joining());
    }
  }

  /** Keeps its own copy of the rows. */
  public Frame {
    rows = List.copyOf(rows);
  }

  /** The characters of the whole frame, rows ended by line feeds, blanks at row ends cut. */
  public String text() {
    return rows.stream()
        .map(row -> row.text().stripTrailing() + "\n")
        .collect(Collectors.joining());
  }
}
