package padside.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Everything a program did to the files of a folder, and what it said meanwhile on its standard
 * output, in order, as strace records it.
 */
final class WriteRecord {
  /** The calls that change a folder or make a change last. */
  static final String CALLS =
      "openat,write,pwrite64,writev,fsync,fdatasync,ftruncate,"
          + "rename,renameat,renameat2,unlink,unlinkat,mkdir,mkdirat";

  private static final Pattern LINE = Pattern.compile("(\\d+) +(.*)");
  private static final Pattern RESUMED = Pattern.compile("<\\.\\.\\. (\\w+) resumed>(.*)");
  private static final Pattern CALL = Pattern.compile("(\\w+)\\((.*)\\) += (-?\\d+).*");
  private static final Pattern FILE = Pattern.compile("(\\d+)<([^>]*)>.*");
  private static final Pattern TEXT = Pattern.compile("\"([^\"]*)\"");
  private static final Pattern SAVE_TOLD = Pattern.compile("[0-9a-f]{20}\\.[0-9.]+ \\d+");
  private static final String UNFINISHED = " <unfinished ...>";

  /** One thing that was done; it had come to its end when this stands in the record. */
  sealed interface Event {}

  /** Bytes to a file, at an offset. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Wrote(Path file, long at, byte[] bytes) implements Event {}

  record Truncated(Path file, long size) implements Event {}

  /** A file, or the names in a folder, forced onto the medium. */
  record Forced(Path file) implements Event {}

  record Made(Path file, boolean folder) implements Event {}

  record Renamed(Path from, Path to) implements Event {}

  record Removed(Path file) implements Event {}

  /** A line on the standard output. */
  record Said(String line) implements Event {}

  private final Path folder;
  private final Map<String, String> unfinished = new HashMap<>();
  private final Map<String, Long> ends = new HashMap<>();
  private final List<Event> events = new ArrayList<>();

  private WriteRecord(Path folder) {
    this.folder = folder;
  }

  /** Reads what strace wrote with {@code -f -xx -y}; of a folder that was empty at the start. */
  static List<Event> read(Path trace, Path folder) throws IOException {
    WriteRecord record = new WriteRecord(folder);
    for (String line : Files.readAllLines(trace, StandardCharsets.ISO_8859_1)) {
      record.line(line);
    }
    return record.events;
  }

  private void line(String line) {
    Matcher matcher = LINE.matcher(line);
    if (!matcher.matches()) {
      return;
    }
    String process = matcher.group(1);
    String text = matcher.group(2);
    if (text.endsWith(UNFINISHED)) {
      unfinished.put(process, text.substring(0, text.length() - UNFINISHED.length()));
      return;
    }
    Matcher resumed = RESUMED.matcher(text);
    String whole =
        resumed.matches() ? unfinished.getOrDefault(process, "") + resumed.group(2) : text;
    Matcher call = CALL.matcher(whole);
    if (call.matches() && Long.parseLong(call.group(3)) >= 0) {
      done(call.group(1), call.group(2), Long.parseLong(call.group(3)));
    }
  }

  private void done(String call, String arguments, long result) {
    switch (call) {
      case "write" -> write(arguments, result);
      case "pwrite64" -> file(arguments).ifPresent(file -> writeAt(file, arguments, result));
      case "fsync", "fdatasync" -> file(arguments).ifPresent(f -> events.add(new Forced(f)));
      case "ftruncate" ->
          file(arguments).ifPresent(f -> events.add(new Truncated(f, lastNumber(arguments))));
      case "openat" -> opened(arguments);
      case "mkdir", "mkdirat" -> path(arguments, 0).ifPresent(f -> events.add(new Made(f, true)));
      case "unlink", "unlinkat" -> path(arguments, 0).ifPresent(f -> events.add(new Removed(f)));
      case "rename", "renameat", "renameat2" ->
          path(arguments, 0).ifPresent(from -> renamed(from, path(arguments, 1).orElseThrow()));
      default -> throw new AssertionError("a call nobody expected: " + call);
    }
  }

  private void renamed(Path from, Path to) {
    events.add(new Renamed(from, to));
  }

  /** A write without an offset goes behind the one before; only the lock and the seal do it. */
  private void write(String arguments, long result) {
    if (arguments.startsWith("1<")) {
      new String(bytes(arguments), StandardCharsets.UTF_8)
          .lines()
          .filter(said -> SAVE_TOLD.matcher(said).matches())
          .forEach(said -> events.add(new Said(said)));
      return;
    }
    file(arguments)
        .ifPresent(
            file -> {
              String open = arguments.substring(0, arguments.indexOf('>'));
              long at = ends.getOrDefault(open, 0L);
              ends.put(open, at + result);
              put(file, at, arguments, result);
            });
  }

  private void writeAt(Path file, String arguments, long result) {
    put(file, lastNumber(arguments), arguments, result);
  }

  private void put(Path file, long at, String arguments, long result) {
    byte[] bytes = bytes(arguments);
    events.add(new Wrote(file, at, Arrays.copyOf(bytes, (int) result)));
  }

  private void opened(String arguments) {
    if (arguments.contains("O_CREAT") || arguments.contains("O_TRUNC")) {
      path(arguments, 0)
          .ifPresent(
              file -> {
                if (arguments.contains("O_CREAT")) {
                  events.add(new Made(file, false));
                }
                if (arguments.contains("O_TRUNC")) {
                  events.add(new Truncated(file, 0));
                }
              });
    }
  }

  private static long lastNumber(String arguments) {
    return Long.parseLong(arguments.substring(arguments.lastIndexOf(',') + 1).strip());
  }

  private Optional<Path> file(String arguments) {
    Matcher file = FILE.matcher(arguments);
    return file.matches() ? within(file.group(2)) : Optional.empty();
  }

  private Optional<Path> path(String arguments, int which) {
    Matcher text = TEXT.matcher(arguments);
    for (int i = 0; i <= which; i++) {
      if (!text.find()) {
        return Optional.empty();
      }
    }
    return within(text.group(1));
  }

  private Optional<Path> within(String name) {
    Path path =
        Path.of(name.contains("\\x") ? new String(plain(name), StandardCharsets.UTF_8) : name);
    return path.startsWith(folder) ? Optional.of(path) : Optional.empty();
  }

  private static byte[] bytes(String arguments) {
    Matcher text = TEXT.matcher(arguments);
    return text.find() ? plain(text.group(1)) : new byte[0];
  }

  /** Every byte as {@code \xNN}. */
  private static byte[] plain(String text) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(text.length() / 4);
    for (int i = 0; i + 4 <= text.length(); i += 4) {
      bytes.write(Integer.parseInt(text, i + 2, i + 4, 16));
    }
    return bytes.toByteArray();
  }
}
