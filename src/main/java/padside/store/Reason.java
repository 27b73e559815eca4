package padside.store;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What the operating system or SQLite said, in words for the middle of a sentence. */
final class Reason {
  private Reason() {}

  /** Without the file's name, which stands before it. */
  static String of(Exception e) {
    if (e instanceof AccessDeniedException) {
      return "access is denied";
    }
    if (e instanceof NoSuchFileException) {
      return "it is not there";
    }
    if (e instanceof FileSystemException file && file.getReason() != null) {
      return file.getReason();
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }
}
