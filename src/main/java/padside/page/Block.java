package padside.page;

import java.util.List;

/** What a section is made of. */
public sealed interface Block permits Prose, Table, Form, Plot, Bars, Intervals, Keys {
  /** What of it goes into a spreadsheet. */
  default List<Table> tables() {
    return List.of();
  }
}
