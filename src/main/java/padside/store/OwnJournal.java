package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The journal this run of the program writes. A file that failed once is never written to again:
 * what came after the last good line is cut off where possible, and the run goes on in a new file.
 * A line may so stand in two files; it is the same operation and counts once.
 */
final class OwnJournal implements AutoCloseable {
  static final int TRIES = 3;

  /** Where a journal ends after a save. */
  record End(String file, long bytes) {}

  /** When what was appended is forced onto the medium. */
  enum Forced {
    /** With every append. */
    AT_ONCE,
    /** Once, when the journal is closed. */
    AT_THE_END
  }

  private final Path folder;
  private final Medium medium;
  private final String run;
  private final Forced forced;
  private Optional<FileChannel> open = Optional.empty();
  private String name = "";
  private int files;
  private long kept;

  OwnJournal(Path folder, Medium medium, String run, Forced forced) {
    this.folder = folder;
    this.medium = medium;
    this.run = run;
    this.forced = forced;
  }

  /**
   * Appends whole lines. When this returns they are on the medium, if they are forced at once.
   *
   * @param lines each with its line end
   */
  End append(String lines) throws IOException {
    boolean interrupted = Thread.interrupted(); // an interrupted write would close the file
    try {
      IOException last = new IOException("no try was made");
      for (int attempt = 0; attempt < TRIES; attempt++) {
        try {
          return write(ByteBuffer.wrap(lines.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException e) {
          last = e;
          interrupted |= Thread.interrupted();
          abandon();
        }
      }
      throw last;
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private End write(ByteBuffer bytes) throws IOException {
    boolean fresh = open.isEmpty();
    FileChannel file = fresh ? fresh() : open.get();
    long at = Medium.write(file, bytes, kept);
    if (forced == Forced.AT_ONCE) {
      force(file, fresh);
    }
    kept = at;
    return new End(name, kept);
  }

  private void force(FileChannel file, boolean fresh) throws IOException {
    file.force(false);
    if (fresh) {
      medium.forceFolder(folder);
    }
  }

  private FileChannel fresh() throws IOException {
    name = run + (files == 0 ? "" : "-" + files) + JournalFiles.SUFFIX;
    files++;
    kept = 0;
    FileChannel file = medium.fresh(folder.resolve(name));
    open = Optional.of(file);
    return file;
  }

  private void abandon() {
    if (open.isPresent()) {
      try (FileChannel file = open.get()) {
        file.truncate(kept);
        if (kept == 0) {
          Files.deleteIfExists(folder.resolve(name));
        }
      } catch (IOException e) {
        // What stands behind the last good line is the line now written elsewhere, or torn.
      }
    }
    open = Optional.empty();
  }

  @Override
  public void close() throws IOException {
    if (open.isPresent()) {
      try (FileChannel file = open.get()) {
        if (forced == Forced.AT_THE_END) {
          force(file, true);
        }
      }
    }
    open = Optional.empty();
  }
}
