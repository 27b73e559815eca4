package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import padside.fact.Fault;

/**
 * Holds a log for one program. The lock is the operating system's, so it ends with the program; the
 * text in the file only says who holds it.
 */
final class LogLock implements AutoCloseable {
  private static final String NAME = "lock";

  /**
   * Folders held by this very program: to look at the lock file again here and close it would drop
   * the lock (POSIX locks belong to the process, not to the open file).
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path folder;
  private final Optional<FileChannel> file;
  private final boolean writes;
  private final Optional<String> stale;

  /** A way to come by a lock. */
  private interface Taking {
    LogLock in(Path folder) throws IOException, Fault;
  }

  private LogLock(Path folder, Optional<FileChannel> file, boolean writes, Optional<String> stale) {
    this.folder = folder;
    this.file = file;
    this.writes = writes;
    this.stale = stale;
  }

  /** Who held the log before and ended without letting go of it. */
  Optional<String> stale() {
    return stale;
  }

  /** Takes a log to write to it; its folders are made where they are missing. */
  static LogLock take(Path folder, Medium medium, Machine.Identity holder)
      throws IOException, Fault {
    medium.folder(folder);
    medium.folder(folder.resolve(Opening.JOURNALS));
    return held(folder, real -> open(real, medium, holder));
  }

  /** Keeps others from writing without writing itself. */
  static LogLock toLook(Path folder) throws IOException, Fault {
    return held(folder, LogLock::look);
  }

  private static LogLock held(Path folder, Taking taking) throws IOException, Fault {
    Path real = folder.toRealPath();
    if (!HELD.add(real)) {
      throw inUse(folder, "this program itself");
    }
    try {
      return taking.in(real);
    } catch (IOException | Fault | RuntimeException e) {
      HELD.remove(real);
      throw e;
    }
  }

  private static LogLock look(Path folder) throws IOException, Fault {
    Path name = folder.resolve(NAME);
    if (!Files.exists(name)) {
      return new LogLock(folder, Optional.empty(), false, Optional.empty());
    }
    FileChannel file = FileChannel.open(name, StandardOpenOption.READ);
    try {
      if (file.tryLock(0, Long.MAX_VALUE, true) == null) {
        throw inUse(folder, holderIn(file).orElse("another program"));
      }
      return new LogLock(folder, Optional.of(file), false, holderIn(file));
    } catch (IOException | Fault | RuntimeException e) {
      file.close();
      throw e;
    }
  }

  private static LogLock open(Path folder, Medium medium, Machine.Identity holder)
      throws IOException, Fault {
    Path name = folder.resolve(NAME);
    medium.file(name);
    FileChannel file = FileChannel.open(name, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      FileLock lock = file.tryLock();
      if (lock == null) {
        throw inUse(folder, holderIn(file).orElse("another program"));
      }
      Optional<String> stale = holderIn(file);
      ByteBuffer text =
          StandardCharsets.UTF_8.encode(
              "process " + holder.processId() + " on " + holder.label() + "\n");
      file.truncate(0);
      file.write(text, 0);
      return new LogLock(folder, Optional.of(file), true, stale);
    } catch (IOException | Fault | RuntimeException e) {
      file.close();
      throw e;
    }
  }

  private static Optional<String> holderIn(FileChannel file) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(200);
    file.read(bytes, 0);
    String holder = StandardCharsets.UTF_8.decode(bytes.flip()).toString().strip();
    return Optional.of(holder).filter(text -> !text.isEmpty());
  }

  private static Fault inUse(Path folder, String holder) {
    return new Fault(
        "log-in-use",
        "The log in " + folder + " is in use by " + holder + ".",
        "Quit the other Padside first, or name another folder.");
  }

  @Override
  public void close() throws IOException {
    try {
      if (file.isPresent()) {
        close(file.get());
      }
    } finally {
      HELD.remove(folder);
    }
  }

  private void close(FileChannel open) throws IOException {
    try (open) {
      if (writes) {
        open.truncate(0);
      }
    }
  }
}
