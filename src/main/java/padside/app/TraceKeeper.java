package padside.app;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Fault;
import padside.screen.Effect;
import padside.screen.Event;
import padside.store.WholeFile;
import padside.trace.TraceFile;
import padside.trace.TraceFinding;
import padside.trace.Wanted;
import padside.units.PrintableText;
import padside.units.Reading;

/**
 * Lists and reads altimeters' files on a thread of its own, and remembers the folder of the last
 * one. A folder that cannot be remembered is of no account.
 */
final class TraceKeeper implements AutoCloseable {
  static final String NAME = "trace-folder";

  private static final long CLOSING_SECONDS = 5;
  private static final int MOST_LISTED = 40;
  private static final int MOST_LOOKED_AT = 5000;
  private static final List<String> ENDINGS = List.of(".csv", ".txt", ".tsv", ".dat", ".log");

  private final WholeFile last;
  private final Inbox inbox;
  private final OwnThread thread;

  TraceKeeper(Path folder, Inbox inbox) {
    this.last = new WholeFile(folder, NAME);
    this.inbox = inbox;
    this.thread = OwnThread.named("trace", inbox::failed);
  }

  /** Starts what is to be done with files; leaves alone what has nothing to do with them. */
  void does(Effect effect) {
    if (effect instanceof Effect.ListTraces list) {
      thread.execute(
          () -> inbox.answer(new Event.TracesListed(list.ticket(), listed(list.folder()))));
    } else if (effect instanceof Effect.ReadTrace read) {
      thread.execute(() -> inbox.answer(read(read)));
    }
  }

  /** The folder's newest files, then its folders, as paths; nothing where it cannot be read. */
  private List<String> listed(String typed) {
    try {
      Path folder = typed.isEmpty() ? remembered() : Folders.typed(typed);
      record Each(String path, boolean folder, long time) {}
      List<Each> all = new ArrayList<>();
      try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
        for (Path entry : entries) {
          boolean inside = Files.isDirectory(entry);
          String name = entry.getFileName().toString();
          if (all.size() < MOST_LOOKED_AT && isShown(name, inside)) {
            long time = Files.getLastModifiedTime(entry, LinkOption.NOFOLLOW_LINKS).toMillis();
            all.add(new Each(entry + (inside ? "/" : ""), inside, time));
          }
        }
      }
      return all.stream()
          .sorted(
              Comparator.comparing(Each::folder)
                  .thenComparing(Each::time, Comparator.reverseOrder()))
          .limit(MOST_LISTED)
          .map(Each::path)
          .toList();
    } catch (IOException | DirectoryIteratorException | InvalidPathException e) {
      return List.of(); // the path can be typed all the same
    }
  }

  private static boolean isShown(String name, boolean folder) {
    boolean plain = !name.startsWith(".") && PrintableText.of(name).equals(name);
    String lower = name.toLowerCase(Locale.ROOT);
    return plain && (folder || ENDINGS.stream().anyMatch(lower::endsWith));
  }

  private Path remembered() {
    return last.read()
        .map(text -> Path.of(text.strip()))
        .filter(Files::isDirectory)
        .orElseGet(() -> Folders.typed("~"));
  }

  private Event read(Effect.ReadTrace asked) {
    Path path;
    try {
      path = Folders.typed(asked.path());
    } catch (InvalidPathException e) {
      return refused(asked, "That is no path of a file; type another.");
    }
    Reading<TraceFile> file = TraceFile.read(path, Wanted.nothing(asked.units()));
    if (file.value().isEmpty()) {
      return refused(asked, file.objection().orElseThrow());
    }
    int of = file.value().get().flights().size();
    int part = asked.part() == 0 ? of : asked.part();
    Reading<TraceFinding> found = file.value().get().find(part, asked.air());
    if (found.value().isEmpty()) {
      return refused(asked, found.objection().orElseThrow());
    }
    remember(path);
    return new Event.TraceRead(asked.ticket(), asked.path(), part, of, found.value().get());
  }

  private static Event refused(Effect.ReadTrace asked, String sentence) {
    String more = " padside trace has --columns to say which column is what.";
    String next = sentence.contains("--columns") ? more.strip() : "";
    return new Event.NotRead(asked.ticket(), new Fault("trace-file", sentence, next));
  }

  private void remember(Path file) {
    try {
      last.write(Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file).toString());
    } catch (IOException e) {
      return; // the next file is asked for in the home folder
    }
  }

  /** Waits for the file being read. */
  @Override
  public void close() {
    try {
      thread.finish(CLOSING_SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
