package padside.store;

import java.sql.SQLException;

/** SQLite's own library cannot be loaded on this machine, so that no database can be opened. */
final class NoLibraryException extends SQLException {
  private static final long serialVersionUID = 1L;

  NoLibraryException(Throwable cause) {
    super(Summed.firstLine(cause), cause);
  }
}
