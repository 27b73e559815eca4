package padside.trace;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import padside.physics.Air;
import padside.units.Length;
import padside.units.Pressure;
import padside.units.Reading;
import padside.units.Temperature;

/**
 * An altimeter's file, looked through once: how it is laid out and where its flights are. A flight
 * is read in a second pass.
 *
 * @param name of the file, without its folder
 * @param crc32 of all its bytes
 * @param rows samples in it
 * @param flights in the order of the file, never none
 * @param told what was taken for what, guessed and left out
 */
public record TraceFile(
    Path path,
    String name,
    long crc32,
    long rows,
    List<Stretch> flights,
    Table table,
    List<String> told) {
  private static final long LARGEST = 50L << 20;

  /** Samples of one flight that are looked at; of more, every second or third. */
  private static final long MOST_SAMPLES = 400_000;

  /** Sea-level values of the standard atmosphere, by which pressures are looked through. */
  private static final Pressure SEA_LEVEL = Air.standardPressure(new Length(0));

  private static final Temperature STANDARD = Air.standardTemperature(new Length(0));

  /** How a file's lines are read, known to this room alone. */
  public static final class Table {
    private final Layout layout;

    private Table(Layout layout) {
      this.layout = layout;
    }
  }

  public TraceFile {
    flights = List.copyOf(flights);
    told = List.copyOf(told);
  }

  /** Looks a file through; refuses in one sentence what is no flight. */
  public static Reading<TraceFile> read(Path path, Wanted wanted) {
    String shown = Reading.echo(String.valueOf(path.getFileName()));
    try {
      if (Files.isDirectory(path)) {
        return Reading.refused(shown + " is a folder; name a file in it.");
      }
      if (!Files.isRegularFile(path)) {
        return Reading.refused("There is no file " + shown + "; check its name and folder.");
      }
      long bytes = Files.size(path);
      if (bytes == 0) {
        return Reading.refused("The file " + shown + " is empty; export the flight again.");
      }
      if (bytes > LARGEST) {
        return Reading.refused(
            "The file is larger than 50 MB; export one flight alone, or fewer samples a second.");
      }
      return laidOut(path, wanted);
    } catch (NoSuchFileException e) {
      return Reading.refused("There is no file " + shown + "; check its name and folder.");
    } catch (IOException e) {
      return Reading.refused("The file " + shown + " cannot be read; check its medium and rights.");
    }
  }

  private static Reading<TraceFile> laidOut(Path path, Wanted wanted) throws IOException {
    List<String> head = new ArrayList<>();
    try (InputStream in = opened(path)) {
      TraceLines lines = new TraceLines(in);
      while (head.size() < Layout.LOOKED_AT && lines.next()) {
        head.add(lines.isCut() ? "" : lines.text());
      }
      if (lines.isBinary()) {
        return Reading.refused("The file is no text in UTF-8; export or save it as \"CSV UTF-8\".");
      }
    }
    Reading<Layout> layout = Layout.of(head, wanted);
    return layout.value().isPresent()
        ? looked(path, layout.value().get())
        : Reading.refused(layout.objection().orElseThrow());
  }

  private static InputStream opened(Path path) throws IOException {
    return new BufferedInputStream(Files.newInputStream(path), 1 << 16);
  }

  private static Reading<TraceFile> looked(Path path, Layout layout) throws IOException {
    Overview overview = new Overview();
    try (InputStream in = opened(path)) {
      SampleRows rows =
          new SampleRows(
              in, layout, (part, time, level) -> overview.take(part, time, about(layout, level)));
      rows.run();
      if (rows.bad().areTooMany(rows.good())) {
        return Reading.refused(
            "Too much of the file cannot be read: " + rows.bad().told().orElse(""));
      }
      List<Stretch> flights = Stretches.of(overview);
      if (flights.isEmpty()) {
        return Reading.refused(noFlight(rows.good()));
      }
      List<String> told = new ArrayList<>(layout.told());
      rows.bad().told().ifPresent(told::add);
      String name = String.valueOf(path.getFileName());
      return Reading.of(
          new TraceFile(path, name, rows.crc32(), rows.good(), flights, new Table(layout), told));
    }
  }

  private static String noFlight(long rows) {
    return String.format(
        Locale.ROOT,
        "No flight was found in %,d samples: nowhere does the height leave the ground by 10 m or"
            + " more for good; check the columns with --columns time=1s,height=3ft.",
        rows);
  }

  /** A height good enough to find flights by. */
  private static double about(Layout layout, double level) {
    return layout.level().quantity() == Quantity.PRESSURE
        ? Air.heightAt(new Pressure(level), SEA_LEVEL, STANDARD).metres()
        : level;
  }

  /** Whether it holds pressures; heights otherwise. */
  public boolean hasPressures() {
    return table.layout.level().quantity() == Quantity.PRESSURE;
  }

  /**
   * What happened in one of its flights.
   *
   * @param flight from 1
   */
  public Reading<TraceFinding> find(int flight, TraceAir air) {
    if (flight < 1 || flight > flights.size()) {
      String all = flights.size() == 1 ? "one flight" : flights.size() + " flights";
      return Reading.refused(
          "There is no flight " + flight + " in the file, which has " + all + ".");
    }
    Stretch stretch = flights.get(flight - 1);
    long every = Math.max(1, (stretch.samples() + MOST_SAMPLES - 1) / MOST_SAMPLES);
    Samples samples = new Samples();
    long[] at = {0};
    try (InputStream in = opened(path)) {
      SampleRows rows =
          new SampleRows(
              in,
              table.layout,
              (part, time, level) -> {
                long row = at[0]++;
                if (row >= stretch.first()
                    && row < stretch.end()
                    && (row - stretch.first()) % every == 0) {
                  samples.add(time, level);
                }
              });
      rows.run();
      if (rows.crc32() != crc32) {
        return Reading.refused("The file has changed meanwhile; read it again.");
      }
    } catch (IOException e) {
      return Reading.refused("The file cannot be read any more; check its medium.");
    }
    return Reading.of(TraceFinding.of(this, samples, air));
  }
}
