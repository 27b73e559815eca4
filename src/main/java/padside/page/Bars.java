package padside.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Counts as bars, each made of the same parts.
 *
 * @param words what is to be seen in it, for who cannot see it
 * @param noun over the labels, such as {@code Class}
 * @param parts what the parts of every bar are, from its beginning
 */
public record Bars(String title, String words, String noun, List<String> parts, List<Bar> bars)
    implements Block {
  /** One bar with the size of each part. */
  public record Bar(String label, List<Integer> sizes) {
    /** Keeps its own list. */
    public Bar {
      sizes = List.copyOf(sizes);
    }

    int whole() {
      return sizes.stream().mapToInt(Integer::intValue).sum();
    }
  }

  /** Keeps its own lists. */
  public Bars {
    parts = List.copyOf(parts);
    bars = List.copyOf(bars);
  }

  int longest() {
    return Math.max(1, bars.stream().mapToInt(Bar::whole).max().orElse(1));
  }

  @Override
  public List<Table> tables() {
    List<Table.Column> columns = new ArrayList<>(List.of(Table.Column.of(noun)));
    parts.forEach(part -> columns.add(Table.Column.ofNumbers(part)));
    List<List<String>> rows =
        bars.stream()
            .map(
                bar ->
                    Stream.concat(Stream.of(bar.label()), bar.sizes().stream().map(String::valueOf))
                        .toList())
            .toList();
    return List.of(new Table(title, columns, rows));
  }
}
