package padside.trace;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The samples of a table one by one, in order of time. Rows that cannot be read are left out. Where
 * the time jumps, the row after decides whether one row is wrong or the altimeter began anew.
 */
final class SampleRows {
  /** A longer pause, or a step back further than a second, wants a second row to say so. */
  private static final double LONGEST_PAUSE_S = 600;

  private static final double FURTHEST_BACK_S = 1;
  private static final double HIGHEST_M = 100_000;
  private static final double LEAST_PA = 100;
  private static final double MOST_PA = 120_000;

  private final TraceLines lines;
  private final Layout layout;
  private final Sink sink;
  private final BadRows bad = new BadRows();
  private final int reach;
  private long good;
  private int recording;
  private double last = Double.NaN;
  private boolean doubted;
  private long doubtedLine;
  private double doubtedTime;
  private double doubtedLevel;

  /** Takes the samples. */
  interface Sink {
    /**
     * One sample.
     *
     * @param recording how often the altimeter began anew before it
     * @param level in metres or pascals
     */
    void take(int recording, double seconds, double level);
  }

  SampleRows(InputStream in, Layout layout, Sink sink) {
    this.lines = new TraceLines(in);
    this.layout = layout;
    this.sink = sink;
    this.reach = Math.max(layout.time().at(), layout.level().at()) + 1;
  }

  /** Reads to the end. */
  void run() throws IOException {
    while (lines.next()) {
      if (lines.number() >= layout.first()) {
        if (lines.isCut()) {
          bad.add(lines.number(), "is longer than " + TraceLines.LONGEST + " bytes");
        } else {
          row(lines.text());
        }
      }
    }
    if (doubted) {
      bad.add(doubtedLine, "jumps in time");
    }
  }

  private void row(String line) {
    if (Layout.isComment(line)) {
      return;
    }
    List<String> cells = layout.row().cells(line);
    if (cells.size() < reach) {
      bad.add(lines.number(), "has " + cells.size() + (cells.size() == 1 ? " cell" : " cells"));
      return;
    }
    OptionalDouble time = Row.number(cells.get(layout.time().at()));
    OptionalDouble level = Row.number(cells.get(layout.level().at()));
    if (time.isEmpty() || level.isEmpty()) {
      bad.add(
          lines.number(), "has no " + (time.isEmpty() ? "time" : layout.level().quantity().word()));
      return;
    }
    double value = level.getAsDouble() * layout.level().factor();
    if (!isPossible(value)) {
      bad.add(lines.number(), "has a " + layout.level().quantity().word() + " no air has");
      return;
    }
    boolean clock = cells.get(layout.time().at()).indexOf(':') > 0;
    inOrder(time.getAsDouble() * (clock ? 1 : layout.time().factor()), value);
  }

  private boolean isPossible(double level) {
    return layout.level().quantity() == Quantity.PRESSURE
        ? level >= LEAST_PA && level <= MOST_PA
        : Math.abs(level) <= HIGHEST_M;
  }

  private void inOrder(double time, double level) {
    if (Double.isNaN(last) || follows(last, time)) {
      if (doubted) {
        bad.add(doubtedLine, "jumps in time");
        doubted = false;
      }
      give(time, level);
    } else if (doubted && follows(doubtedTime, time)) {
      recording += doubtedTime < last ? 1 : 0;
      doubted = false;
      give(doubtedTime, doubtedLevel);
      give(time, level);
    } else if (time <= last && time >= last - FURTHEST_BACK_S) {
      bad.add(lines.number(), "does not go on in time");
    } else {
      if (doubted) {
        bad.add(doubtedLine, "jumps in time");
      }
      doubted = true;
      doubtedLine = lines.number();
      doubtedTime = time;
      doubtedLevel = level;
    }
  }

  private static boolean follows(double before, double time) {
    return time > before && time <= before + LONGEST_PAUSE_S;
  }

  private void give(double time, double level) {
    last = time;
    good++;
    sink.take(recording, time, level);
  }

  BadRows bad() {
    return bad;
  }

  long good() {
    return good;
  }

  boolean isBinary() {
    return lines.isBinary();
  }

  long crc32() {
    return lines.crc32();
  }
}
