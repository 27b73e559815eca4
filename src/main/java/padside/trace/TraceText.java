package padside.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.units.Length;
import padside.units.TimeSpan;

/** The text of a kept trace, as the description of this room lays it down. */
final class TraceText {
  private static final String FORM = "1";
  private static final String NO_MARK = "-";
  private static final String DIGITS =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  private static final double TICKS_PER_S = 1000;
  private static final double STEPS_PER_M = 10;
  private static final int MOST_READ = 20_000;
  private static final int LONGEST_NAME = 200;

  /** Some months in ticks, far more than any flight in steps. */
  private static final long LARGEST = 10_000_000_000L;

  private TraceText() {}

  static String of(KeptTrace trace) {
    StringBuilder points = new StringBuilder();
    long ticks = 0;
    long steps = 0;
    for (KeptTrace.Point point : trace.points()) {
      long tick = ticks(point.time());
      long step = steps(point.height());
      append(points, tick - ticks);
      append(points, step - steps);
      ticks = tick;
      steps = step;
    }
    StringBuilder marks = new StringBuilder();
    for (KeptTrace.Mark mark : trace.marks()) {
      marks.append(mark.event().letter());
      append(marks, ticks(mark.at().time()));
      append(marks, steps(mark.at().height()));
    }
    return String.format(
        Locale.ROOT,
        "%s %08x %d %d %s %s %s",
        FORM,
        trace.crc32(),
        trace.samples(),
        Math.round(trace.within().inCentimetres()),
        points.length() == 0 ? NO_MARK : points,
        marks.length() == 0 ? NO_MARK : marks,
        name(trace.name()));
  }

  /** A line break in a name would be one in the text; the end of a long one tells least. */
  private static String name(String name) {
    String line = name.replaceAll("\\p{Cntrl}", "?");
    return line.length() <= LONGEST_NAME ? line : line.substring(0, LONGEST_NAME);
  }

  private static long ticks(TimeSpan time) {
    return Math.round(time.seconds() * TICKS_PER_S);
  }

  private static long steps(Length height) {
    return Math.round(height.metres() * STEPS_PER_M);
  }

  private static void append(StringBuilder text, long number) {
    long rest = number < 0 ? (-number << 1) | 1 : number << 1;
    do {
      int digit = (int) (rest & 31);
      rest >>= 5;
      text.append(DIGITS.charAt(rest > 0 ? digit | 32 : digit));
    } while (rest > 0);
  }

  static Optional<KeptTrace> read(String text) {
    String[] parts = text.split(" ", 7);
    if (text.length() > MOST_READ
        || parts.length < 7
        || !parts[0].equals(FORM)
        || !parts[1].matches("[0-9a-f]{8}")
        || !parts[2].matches("[0-9]{1,9}")
        || !parts[3].matches("[0-9]{1,7}")) {
      return Optional.empty();
    }
    Optional<List<KeptTrace.Point>> points = points(parts[4]);
    Optional<List<KeptTrace.Mark>> marks = marks(parts[5]);
    return points.isEmpty() || marks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new KeptTrace(
                parts[6],
                Long.parseLong(parts[1], 16),
                Integer.parseInt(parts[2]),
                Length.ofCentimetres(Integer.parseInt(parts[3])),
                points.get(),
                marks.get()));
  }

  private static Optional<List<KeptTrace.Point>> points(String text) {
    List<KeptTrace.Point> points = new ArrayList<>();
    Digits digits = new Digits(text.equals(NO_MARK) ? "" : text);
    long ticks = 0;
    long steps = 0;
    while (digits.more()) {
      ticks += digits.next();
      steps += digits.next();
      points.add(point(ticks, steps));
    }
    return digits.sound ? Optional.of(points) : Optional.empty();
  }

  private static Optional<List<KeptTrace.Mark>> marks(String text) {
    List<KeptTrace.Mark> marks = new ArrayList<>();
    Digits digits = new Digits(text.equals(NO_MARK) ? "" : text);
    while (digits.more()) {
      Optional<KeptTrace.Event> event = KeptTrace.Event.of(digits.letter());
      KeptTrace.Point at = point(digits.next(), digits.next());
      // A mark of a later version says nothing here.
      event.ifPresent(known -> marks.add(new KeptTrace.Mark(known, at)));
    }
    return digits.sound ? Optional.of(marks) : Optional.empty();
  }

  private static KeptTrace.Point point(long ticks, long steps) {
    return new KeptTrace.Point(new TimeSpan(ticks / TICKS_PER_S), new Length(steps / STEPS_PER_M));
  }

  /** Reads numbers until something is wrong. */
  private static final class Digits {
    private final String text;
    private int at;
    private boolean sound = true;

    Digits(String text) {
      this.text = text;
    }

    boolean more() {
      return sound && at < text.length();
    }

    char letter() {
      return text.charAt(at++);
    }

    long next() {
      long number = 0;
      for (int shift = 0; shift <= 35; shift += 5) {
        int digit = at < text.length() ? DIGITS.indexOf(text.charAt(at++)) : -1;
        if (digit < 0) {
          break;
        }
        number |= (long) (digit & 31) << shift;
        if (digit < 32) {
          long size = number >> 1;
          sound &= size <= LARGEST;
          return (number & 1) == 0 ? size : -size;
        }
      }
      sound = false;
      return 0;
    }
  }
}
