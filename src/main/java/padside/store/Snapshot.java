package padside.store;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A copy of a log's database in a backup: {@code padside-2026-10-17-42.sqlite}. */
final class Snapshot {
  private static final Pattern NAME =
      Pattern.compile("padside-([0-9]{4}-[0-9]{2})-[0-9]{2}-([0-9]{1,9})\\.sqlite");

  private Snapshot() {}

  /** Its number, which grows from snapshot to snapshot whatever the clock says; else -1. */
  static long number(Path file) {
    Matcher name = NAME.matcher(file.getFileName().toString());
    return name.matches() ? Long.parseLong(name.group(2)) : -1;
  }
}
