package padside.page;

import java.util.List;

/**
 * A page worth keeping.
 *
 * @param title what it is, alone in the title of a window too
 * @param about what it was made of and when, in a sentence
 * @param sections in order; one without blocks is left out
 */
public record Page(String title, String about, List<Section> sections) {
  /**
   * What stands together under a heading.
   *
   * @param title may be blank for what stands right below the title of the page
   */
  public record Section(String title, List<Block> blocks) {
    /** Keeps its own list. */
    public Section {
      blocks = List.copyOf(blocks);
    }

    public static Section of(String title, Block... blocks) {
      return new Section(title, List.of(blocks));
    }
  }

  /** Leaves out the sections that have nothing to say. */
  public Page {
    sections = sections.stream().filter(section -> !section.blocks().isEmpty()).toList();
  }

  /** Every table of it, those behind its charts too. */
  public List<Table> tables() {
    return sections.stream()
        .flatMap(section -> section.blocks().stream())
        .flatMap(block -> block.tables().stream())
        .toList();
  }
}
