package padside.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;

/**
 * One line of a journal.
 *
 * @param version of the line's form; the changes of a newer one are not looked at
 * @param t Lamport number
 * @param uptime seconds since the machine was started
 * @param wall milliseconds since 1970 by the machine's clock
 * @param label what was done
 * @param head the header of a run, on its line 0 only
 */
record JournalLine(
    int version,
    OpId op,
    long t,
    double uptime,
    long wall,
    String label,
    List<CellChange> changes,
    Map<String, Object> head) {
  /** The form this version writes. */
  static final int VERSION = 1;

  /**
   * One cell of one record.
   *
   * @param field absent where the record is only made
   * @param replaces the operations whose cell it takes the place of
   */
  record CellChange(
      String kind, String record, Optional<String> field, Facts.Cell cell, List<OpId> replaces) {
    CellChange {
      replaces = List.copyOf(replaces);
    }
  }

  JournalLine {
    changes = List.copyOf(changes);
  }

  boolean fromNewerVersion() {
    return version > VERSION;
  }
}
