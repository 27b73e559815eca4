package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A copy of a log's database in a backup: {@code padside-2026-10-17-42.sqlite}. One that is known
 * not to hold all that was kept is called so: {@code padside-2026-10-17-42-partial.sqlite}.
 *
 * @param month as the clock had it
 * @param number grows from snapshot to snapshot, whatever the clock says
 */
record Snapshot(Path file, String month, long number, boolean partial) {
  private static final Pattern NAME =
      Pattern.compile("padside-([0-9]{4}-[0-9]{2})-[0-9]{2}-([0-9]{1,9})(-partial)?\\.sqlite");

  private static final int NEWEST = 7;
  private static final int MONTHS = 12;

  /** The snapshot a file is by its name. */
  static Optional<Snapshot> of(Path file) {
    Matcher name = NAME.matcher(file.getFileName().toString());
    return name.matches()
        ? Optional.of(
            new Snapshot(file, name.group(1), Long.parseLong(name.group(2)), name.group(3) != null))
        : Optional.empty();
  }

  /** Its number; -1 for any other file. */
  static long numberOf(Path file) {
    return of(file).map(Snapshot::number).orElse(-1L);
  }

  String name() {
    return file.getFileName().toString();
  }

  /** All in a folder, the newest first. */
  static List<Snapshot> in(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .flatMap(file -> of(file).stream())
          .sorted(Comparator.comparingLong(Snapshot::number).reversed())
          .toList();
    }
  }

  /** The name of the one that comes after those in a folder. */
  static Snapshot next(Path folder, LocalDate date, boolean partial) throws IOException {
    long number = in(folder).stream().mapToLong(Snapshot::number).findFirst().orElse(0) + 1;
    String name = "padside-" + date + "-" + number + (partial ? "-partial" : "") + ".sqlite";
    return of(folder.resolve(name)).orElseThrow();
  }

  /**
   * Those that may go once the newest is sound: all of its sort but the newest seven and the newest
   * of each of twelve months. A partial one never takes the place of a whole one.
   */
  static List<Snapshot> superfluous(List<Snapshot> newestFirst) {
    if (newestFirst.isEmpty()) {
      return List.of();
    }
    boolean sort = newestFirst.get(0).partial;
    List<Snapshot> same = newestFirst.stream().filter(each -> each.partial == sort).toList();
    Set<String> months = new HashSet<>();
    List<Snapshot> superfluous = new ArrayList<>();
    for (Snapshot each : same) {
      boolean newestOfMonth = months.add(each.month) && months.size() <= MONTHS;
      if (!newestOfMonth && same.indexOf(each) >= NEWEST) {
        superfluous.add(each);
      }
    }
    return superfluous;
  }
}
