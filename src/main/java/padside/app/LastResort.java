package padside.app;

import java.nio.file.Path;
import padside.fact.Fault;
import padside.store.LogFolder;
import padside.units.PrintableText;

/** Where what could not be kept goes when the program ends. */
final class LastResort {
  private LastResort() {}

  /** What still waits when the program ends is put where there is room. */
  static void rescue(LogFolder open) throws Fault {
    open.tryAgain();
    for (Path other : Folders.ofLastResort()) {
      if (open.refusal().filter(each -> each.changes() > 0).isEmpty()) {
        return;
      }
      if (open.refusal().get().elsewhere().isEmpty()) {
        try {
          open.keepIn(other);
        } catch (Fault fault) {
          continue; // the next one may do
        }
      }
      System.err.println(
          PrintableText.of(
              "padside: "
                  + open.refusal().get().fault().sentence()
                  + " What you typed since is kept in "
                  + open.refusal().get().elsewhere().orElse(other)
                  + "; copied into the log's folder journal under another name that ends in .jsonl"
                  + " it is in the log again."));
      return;
    }
  }
}
