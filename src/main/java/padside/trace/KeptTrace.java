package padside.trace;

import java.util.List;
import java.util.Optional;
import padside.units.Length;
import padside.units.TimeSpan;

/**
 * A flight's thinned line with its marks, as a record keeps it.
 *
 * @param name of the file it is from
 * @param crc32 of that file
 * @param samples of this flight in it
 * @param within how far the line may lie from a sample
 * @param points in order of time, from lift-off and above the ground it left
 */
public record KeptTrace(
    String name, long crc32, int samples, Length within, List<Point> points, List<Mark> marks) {

  /** A height at a time. */
  public record Point(TimeSpan time, Length height) {}

  /** Something that happened, and where the line was. */
  public record Mark(Event event, Point at) {}

  /** What a mark says. */
  public enum Event {
    APOGEE('a', "apogee"),
    EJECTION('e', "ejection"),
    /** The way down changes: a second device opens. */
    SECOND('m', "slower"),
    TOUCHDOWN('t', "touchdown");

    private final char letter;
    private final String word;

    Event(char letter, String word) {
      this.letter = letter;
      this.word = word;
    }

    char letter() {
      return letter;
    }

    public String word() {
      return word;
    }

    static Optional<Event> of(char letter) {
      for (Event each : values()) {
        if (each.letter == letter) {
          return Optional.of(each);
        }
      }
      return Optional.empty();
    }
  }

  public KeptTrace {
    points = List.copyOf(points);
    marks = List.copyOf(marks);
  }

  /** The text a record keeps; see the description of this room. */
  public String text() {
    return TraceText.of(this);
  }

  /** What such a text holds; empty for any other. */
  public static Optional<KeptTrace> read(String text) {
    return TraceText.read(text);
  }

  public Optional<Point> at(Event event) {
    return marks.stream().filter(mark -> mark.event == event).map(Mark::at).findFirst();
  }

  /** The highest point: the mark's, where there is one. */
  public Length highest() {
    return at(Event.APOGEE)
        .map(Point::height)
        .orElseGet(
            () ->
                new Length(points.stream().mapToDouble(p -> p.height().metres()).max().orElse(0)));
  }
}
