package padside.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.units.Reading;

/**
 * How a table is laid out: how its lines fall into cells, where its samples begin and which columns
 * are read.
 *
 * @param first the number of the first line with a sample, from 1
 * @param level the column of heights or pressures
 * @param told what was taken for what, and what was guessed, in sentences
 */
record Layout(Row row, long first, TableColumn time, TableColumn level, List<String> told) {
  /** Lines looked at to find it. */
  static final int LOOKED_AT = 400;

  private static final List<String> COMMENTS = List.of("#", "%", "//", "*", "!");

  Layout {
    told = List.copyOf(told);
  }

  /** Whether a line is no part of the table. */
  static boolean isComment(String line) {
    String text = line.stripLeading();
    return text.isEmpty() || COMMENTS.stream().anyMatch(text::startsWith);
  }

  /** Of the first lines of a file. */
  static Reading<Layout> of(List<String> lines, Wanted wanted) {
    Optional<Table> best = Optional.empty();
    for (Row row : Row.KNOWN) {
      Table table = Table.of(row, lines);
      if (table.samples() > best.map(Table::samples).orElse(0) * 1.2) {
        best = Optional.of(table);
      }
    }
    if (best.isEmpty()) {
      return Reading.refused(
          "No line among the first "
              + lines.size()
              + " has a time and a height; export the flight as CSV with both.");
    }
    return best.get().layout(wanted);
  }

  /**
   * The beginning of a file as one separator has it.
   *
   * @param header names over the columns, as many as there are cells, perhaps empty ones
   */
  private record Table(
      Row row, long first, int samples, List<String> header, List<List<String>> rows) {
    static Table of(Row row, List<String> lines) {
      List<List<String>> rows = new ArrayList<>();
      int first = -1;
      for (int i = 0; i < lines.size(); i++) {
        List<String> cells = isComment(lines.get(i)) ? List.of() : row.cells(lines.get(i));
        if (Row.isSample(cells)) {
          first = first < 0 ? i : first;
          rows.add(cells);
        }
      }
      int width = rows.isEmpty() ? 0 : rows.get(rows.size() / 2).size();
      rows.removeIf(cells -> cells.size() != width);
      List<String> header = first < 0 ? List.of() : header(row, lines.subList(0, first), width);
      return new Table(row, first + 1L, rows.size(), header, rows);
    }

    /** The names just above the first sample, with a line of units between them if there is one. */
    private static List<String> header(Row row, List<String> above, int width) {
      List<List<String>> near = new ArrayList<>();
      for (int i = above.size() - 1; i >= 0 && near.size() < 2; i--) {
        List<String> cells = row.cells(bare(above.get(i)));
        if (cells.size() >= width && !above.get(i).isBlank()) {
          near.add(cells.subList(0, width));
        } else if (!isComment(above.get(i))) {
          break;
        }
      }
      if (near.isEmpty()) {
        return java.util.Collections.nCopies(width, "");
      }
      if (near.size() == 1 || !near.get(0).stream().allMatch(Table::isUnit)) {
        return near.get(0);
      }
      List<String> both = new ArrayList<>();
      for (int i = 0; i < width; i++) {
        both.add(near.get(1).get(i) + " " + near.get(0).get(i));
      }
      return both;
    }

    private static String bare(String line) {
      String text = line.stripLeading();
      for (String sign : COMMENTS) {
        text = text.startsWith(sign) ? text.substring(sign.length()).stripLeading() : text;
      }
      return text;
    }

    private static boolean isUnit(String cell) {
      String unit = cell.replaceAll("[()\\[\\]]", "").strip();
      return unit.length() <= 4
          && unit.chars().allMatch(c -> Character.isLetter(c) || "/°%".indexOf(c) >= 0);
    }

    Reading<Layout> layout(Wanted wanted) {
      return new ColumnSearch(header, rows, wanted)
          .found()
          .map(
              found -> {
                List<String> told = new ArrayList<>();
                told.add(
                    "Read as "
                        + found.time().told()
                        + ", "
                        + found.level().told()
                        + "; cells parted by "
                        + row.told()
                        + ", samples from line "
                        + first
                        + ".");
                told.addAll(found.told());
                return new Layout(row, first, found.time(), found.level(), told);
              });
    }
  }
}
