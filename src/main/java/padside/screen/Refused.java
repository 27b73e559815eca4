package padside.screen;

import java.util.Optional;
import padside.fact.Fault;

/**
 * The log's own medium takes nothing now: what is typed waits in memory, or in another folder.
 *
 * @param fault why, in full
 * @param reason why, in a few words
 * @param changes actions that wait
 * @param elsewhere the folder they are kept in meanwhile
 * @param reading true when the log is only read, because it cannot be had for writing
 */
public record Refused(
    Fault fault, String reason, int changes, Optional<String> elsewhere, boolean reading) {
  /** Stands in the title bar of every screen for as long as it lasts. */
  String banner() {
    String why = " (" + reason + ")";
    if (elsewhere.isPresent() && changes > 0) {
      return "KEPT ELSEWHERE, F9 tells more: " + waiting() + " in " + elsewhere.get() + why;
    }
    return reading && changes == 0
        ? "FOR READING, F9 tells more: nothing typed is kept" + why
        : "NOT SAVED, F9 tells more: " + waiting() + " in memory only" + why;
  }

  /** How much waits. */
  String waiting() {
    return changes == 1 ? "1 change" : changes + " changes";
  }

  /** What stands in place of "kept" beside what was typed. */
  String words() {
    return elsewhere.map(folder -> "kept in the other folder").orElse("NOT SAVED, in memory");
  }
}
