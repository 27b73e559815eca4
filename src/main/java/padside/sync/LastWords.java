package padside.sync;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The end of what a program says on its standard error, which must not run full meanwhile. */
final class LastWords {
  private static final int MOST = 1 << 12;
  private static final int LINES = 2;
  private static final long LEAVING_S = 5;

  /** What ssh says when all is well. */
  private static final List<String> CHATTER = List.of("Warning: Permanently added ", "** ");

  private final StringBuilder text = new StringBuilder();
  private final Thread reader;

  LastWords(InputStream errors) {
    reader = new Thread(() -> read(errors), "ssh-errors");
    reader.setDaemon(true);
    reader.start();
  }

  private void read(InputStream errors) {
    byte[] block = new byte[MOST];
    try (errors) {
      for (int count = errors.read(block); count >= 0; count = errors.read(block)) {
        add(new String(block, 0, count, StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      return; // it was ended; what it said so far stands
    }
  }

  private void add(String more) {
    synchronized (text) {
      text.append(more);
      text.delete(0, Math.max(0, text.length() - MOST));
    }
  }

  /** All of it, once the program has ended. */
  String said() {
    try {
      reader.join(TimeUnit.SECONDS.toMillis(LEAVING_S));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    synchronized (text) {
      return text.toString();
    }
  }

  /** The last lines of a text; nothing where there are none. */
  static String lastOf(String said) {
    List<String> lines =
        said.lines()
            .map(String::strip)
            .filter(line -> !line.isEmpty() && CHATTER.stream().noneMatch(line::startsWith))
            .toList();
    return TalkFaults.quoted(
        String.join(" ", lines.subList(Math.max(0, lines.size() - LINES), lines.size())));
  }
}
