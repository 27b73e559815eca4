package padside.store;

import java.nio.charset.StandardCharsets;
import java.util.List;
import padside.units.Reading;

/**
 * Lines that came from elsewhere, read: all that can be done with them away from the log, on
 * whatever thread.
 */
public final class Arrived {
  private final List<Reading<ReadyLine>> lines;

  private Arrived(List<Reading<ReadyLine>> lines) {
    this.lines = lines;
  }

  /** Texts that ought to be lines, without their ends. */
  public static Arrived of(List<String> raws) {
    return new Arrived(raws.parallelStream().map(Arrived::line).toList());
  }

  /** Lines as they were told apart by their ends, in UTF-8. */
  public static Arrived read(List<byte[]> raws) {
    return new Arrived(raws.parallelStream().map(ReadyLine::read).toList());
  }

  private static Reading<ReadyLine> line(String raw) {
    return raw.indexOf('\n') >= 0
        ? Reading.refused("a line end within it")
        : ReadyLine.read(raw.getBytes(StandardCharsets.UTF_8));
  }

  /** How many they are. */
  public int count() {
    return lines.size();
  }

  /** Some of them, the last one left out. */
  public Arrived some(int from, int to) {
    return new Arrived(lines.subList(from, to));
  }

  List<Reading<ReadyLine>> lines() {
    return lines;
  }
}
