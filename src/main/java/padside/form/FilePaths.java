package padside.form;

import java.util.List;
import java.util.Locale;
import padside.units.Reading;

/**
 * A file's path, gone on with by those known.
 *
 * @param listed the likeliest first
 */
public record FilePaths(List<String> listed) implements Completing<String> {
  private static final int MOST = 12;

  /** Keeps its own list. */
  public FilePaths {
    listed = List.copyOf(listed);
  }

  @Override
  public List<Choices.Option<String>> completions(String typed) {
    String begun = typed.strip().toLowerCase(Locale.ROOT);
    return listed.stream()
        .filter(path -> path.toLowerCase(Locale.ROOT).startsWith(begun))
        .limit(MOST)
        .map(path -> new Choices.Option<>(path, path, ""))
        .toList();
  }

  @Override
  public Reading<String> read(String typed) {
    return Reading.of(typed.strip());
  }

  @Override
  public String show(String value) {
    return value;
  }

  @Override
  public String example() {
    return "flight7.csv";
  }
}
