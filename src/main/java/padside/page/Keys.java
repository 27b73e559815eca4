package padside.page;

import java.util.List;
import java.util.stream.Stream;

/** What keys do, screen by screen, and what words mean; small and in two columns on paper. */
public record Keys(List<Group> groups) implements Block {
  /** The keys of one screen. */
  public record Group(String screen, List<Key> keys) {
    /** Keeps its own list. */
    public Group {
      keys = List.copyOf(keys);
    }
  }

  /**
   * One key.
   *
   * @param key as it stands on a keyboard; or the word
   */
  public record Key(String key, String does) {}

  /** Keeps its own list. */
  public Keys {
    groups = List.copyOf(groups);
  }

  /** All in one, with the screen on every line. */
  @Override
  public List<Table> tables() {
    return List.of(
        new Table(
            "Keys",
            Stream.of("Screen", "Key", "Does").map(Table.Column::of).toList(),
            groups.stream()
                .flatMap(
                    group ->
                        group.keys().stream()
                            .map(key -> List.of(group.screen(), key.key(), key.does())))
                .toList()));
  }
}
