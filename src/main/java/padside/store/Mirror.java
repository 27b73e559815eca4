package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The journals of a log, copied to another folder. A copy is replaced only by what it is the
 * beginning of: one that differs stays, and the log's is put beside it.
 */
final class Mirror {
  /** What a backup's folder is called. */
  static final String FOLDER = "padside-backup";

  private enum Copy {
    HOLDS_IT,
    BEGINS_IT,
    DIFFERS
  }

  private final Path journals;
  private final Path copies;
  private final Medium medium;

  Mirror(Path journals, Path copies, Medium medium) {
    this.journals = journals;
    this.copies = copies;
    this.medium = medium;
  }

  /**
   * Copies what is not there yet; when this returns it is on the medium.
   *
   * @return what was found to differ, in plain words
   */
  List<String> copy() throws IOException {
    List<String> told = new ArrayList<>();
    medium.folder(copies);
    for (Path journal : JournalFiles.in(journals)) {
      copy(journal, told);
    }
    medium.forceFolder(copies);
    return told;
  }

  private void copy(Path journal, List<String> told) throws IOException {
    int count = 0;
    while (true) {
      Path copy = copies.resolve(name(journal, count));
      if (!Files.exists(copy, LinkOption.NOFOLLOW_LINKS)) {
        medium.copy(journal, copy);
        if (count > 0) {
          told.add(
              "Journal "
                  + journal.getFileName()
                  + " in "
                  + copies
                  + " is not the log's; it was left as it is, and the log's is beside it as "
                  + copy.getFileName()
                  + ".");
        }
        return;
      }
      switch (compared(journal, copy)) {
        case HOLDS_IT -> {
          return;
        }
        case BEGINS_IT -> {
          medium.copy(journal, copy);
          return;
        }
        case DIFFERS -> count++;
      }
    }
  }

  /** True when every journal stands in a copy, byte for byte; reads all of them. */
  boolean holdsAll() throws IOException {
    for (Path journal : JournalFiles.in(journals)) {
      if (!holds(journal)) {
        return false;
      }
    }
    return true;
  }

  private boolean holds(Path journal) throws IOException {
    for (int count = 0; ; count++) {
      Path copy = copies.resolve(name(journal, count));
      if (!Files.exists(copy, LinkOption.NOFOLLOW_LINKS)) {
        return false;
      }
      if (compared(journal, copy) == Copy.HOLDS_IT) {
        return true;
      }
    }
  }

  private static Copy compared(Path journal, Path copy) throws IOException {
    long same = Files.mismatch(journal, copy); // the shorter one's size where it is a beginning
    if (same == -1 || same == Files.size(journal)) {
      return Copy.HOLDS_IT;
    }
    return same == Files.size(copy) ? Copy.BEGINS_IT : Copy.DIFFERS;
  }

  private static String name(Path journal, int count) {
    String name = journal.getFileName().toString();
    return count == 0
        ? name
        : name.substring(0, name.length() - JournalFiles.SUFFIX.length())
            + "-differs-"
            + count
            + JournalFiles.SUFFIX;
  }
}
