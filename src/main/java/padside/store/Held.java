package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Lines the journal's medium refuses: they are in the tables and wait in memory, oldest first. They
 * may be kept in another folder meanwhile.
 */
final class Held {
  private final Medium medium;
  private final List<RunLines.Entry> entries = new ArrayList<>();
  private Optional<Elsewhere> elsewhere = Optional.empty();

  /** A journal of the same run in another folder. */
  private record Elsewhere(Path folder, OwnJournal journal) {}

  /** How many of the entries are in the other folder. */
  private int written;

  Held(Medium medium) {
    this.medium = medium;
  }

  boolean isEmpty() {
    return entries.isEmpty();
  }

  List<RunLines.Entry> entries() {
    return List.copyOf(entries);
  }

  /** Actions that wait, a header not counted. */
  int changes() {
    return (int) entries.stream().filter(entry -> entry.line().op().n() > 0).count();
  }

  /** The folder all that waits is kept in meanwhile. */
  Optional<Path> elsewhere() {
    return written == entries.size() ? elsewhere.map(Elsewhere::folder) : Optional.empty();
  }

  /** Holds exactly these lines from now on; the first ones are those held already. */
  void hold(List<RunLines.Entry> all) {
    entries.addAll(all.subList(entries.size(), all.size()));
    try {
      writeElsewhere();
    } catch (IOException e) {
      // They wait in memory alone; the folder is tried again with the next.
    }
  }

  /** All is where it belongs. */
  void letGo() {
    entries.clear();
    written = 0;
  }

  /**
   * Keeps what waits, and what is to come, in another folder too.
   *
   * @param header of the run, so that the file there can be read for itself
   */
  void keepIn(Path folder, RunLines.Entry header) throws IOException {
    medium.folder(folder);
    OwnJournal journal =
        new OwnJournal(folder, medium, header.line().op().run(), OwnJournal.Forced.AT_ONCE);
    boolean withHeader = !entries.isEmpty() && entries.get(0).line().op().n() == 0;
    if (!withHeader) {
      journal.append(header.raw() + "\n");
    }
    if (elsewhere.isPresent()) {
      elsewhere.get().journal().close();
    }
    elsewhere = Optional.of(new Elsewhere(folder, journal));
    written = 0;
    writeElsewhere();
  }

  private void writeElsewhere() throws IOException {
    if (elsewhere.isPresent() && written < entries.size()) {
      elsewhere.get().journal().append(text(entries.subList(written, entries.size())));
      written = entries.size();
    }
  }

  /** Whole lines, as a journal has them. */
  static String text(List<RunLines.Entry> entries) {
    return entries.stream().map(entry -> entry.raw() + "\n").collect(Collectors.joining());
  }

  void close() throws IOException {
    if (elsewhere.isPresent()) {
      elsewhere.get().journal().close();
    }
  }
}
