package padside;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * One table of the contributors' guide: its rows, each a list of cells with the code marks taken
 * off.
 */
record GuideTable(List<List<String>> rows) {
  private static final Path GUIDE = Path.of("DEVELOPERS.md");

  GuideTable {
    rows = List.copyOf(rows);
  }

  /** The guide's table whose head row has exactly these cells. */
  static GuideTable headed(String... head) {
    try {
      return in(Files.readAllLines(GUIDE), head);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The table among {@code lines} whose head row has exactly these cells. */
  static GuideTable in(List<String> lines, String... head) {
    int top = 0;
    while (top < lines.size() && !cells(lines.get(top)).equals(List.of(head))) {
      top++;
    }
    List<List<String>> rows =
        lines.stream()
            .skip(top + 2L)
            .takeWhile(line -> line.startsWith("|"))
            .map(GuideTable::cells)
            .toList();
    if (rows.isEmpty()) {
      throw new AssertionError(
          GUIDE + " has no table headed " + String.join(" | ", head) + "; put it back");
    }
    return new GuideTable(rows);
  }

  /** The words of a cell listing several: {@code –} is none. */
  static List<String> list(String cell) {
    return cell.equals("–") ? List.of() : List.of(cell.split(", *"));
  }

  private static List<String> cells(String line) {
    if (!line.startsWith("|") || !line.endsWith("|")) {
      return List.of();
    }
    return Arrays.stream(line.substring(1, line.length() - 1).split("\\|", -1))
        .map(cell -> cell.replace("`", "").strip())
        .toList();
  }
}
