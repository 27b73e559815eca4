package padside.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.units.Length;
import padside.units.TimeSpan;

class KeptTraceTest {
  @TempDir private Path folder;

  private static KeptTrace.Point point(double time, double height) {
    return new KeptTrace.Point(new TimeSpan(time), new Length(height));
  }

  /** Digits from the table of ECMA-426: 0 is A, 1 is C, -1 is D, 16 is gB, 511 is +f. */
  @Test
  void numbers_are_written_as_source_maps_write_them() {
    KeptTrace trace =
        new KeptTrace(
            "my flight.csv",
            0xcafe1L,
            7,
            new Length(0.5),
            List.of(point(0, 0), point(0.001, -0.1), point(0.017, 51.0)),
            List.of(new KeptTrace.Mark(KeptTrace.Event.APOGEE, point(0.016, 51.1))));

    assertThat(trace.text()).isEqualTo("1 000cafe1 7 50 AACDgB+f agB+f my flight.csv");
    assertThat(KeptTrace.read(trace.text())).contains(trace);
  }

  @Test
  void the_line_passes_every_sample_within_what_it_says_and_few_points_make_it()
      throws IOException {
    for (int number = 1; number <= 12; number++) {
      Random random = padside.Trials.random(number);
      MadeTrace made = MadeTrace.drawn(random);
      double rate = new double[] {1, 10, 20, 100}[number % 4];
      MadeTrace.Faults faults = new MadeTrace.Faults(rate, 0.3 * number % 3, 0, 40, 0.02, 0.1);
      MadeTrace.Written written = made.written(faults, random);
      TraceFinding found = FindingShareTest.found(written, folder);
      KeptTrace kept = KeptTrace.read(found.kept().text()).orElseThrow();

      assertThat(kept.points()).hasSizeLessThanOrEqualTo(2000);
      assertThat(kept.text()).hasSizeLessThan(16_000);
      assertThat(kept.crc32()).isEqualTo(crc(folder.resolve("made.csv")));
      // Rounding to a thousandth of a second is 2 m where the spike leaps 40 m in a hundredth.
      assertThat(farthest(written, found, kept)).isLessThanOrEqualTo(kept.within().metres() + 2.1);
      assertThat(kept.within().metres()).isLessThanOrEqualTo(0.1 + 3.2 * faults.noiseM());
    }
  }

  private static long crc(Path file) throws IOException {
    CRC32 sum = new CRC32();
    sum.update(Files.readAllBytes(file));
    return sum.getValue();
  }

  /** Half of how far samples lie above and below the line, whose ground is only known about. */
  private static double farthest(MadeTrace.Written written, TraceFinding found, KeptTrace kept) {
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    List<KeptTrace.Point> points = kept.points();
    int at = 0;
    for (double[] sample : written.samples()) {
      double time = sample[0] - found.startS();
      while (at + 2 < points.size() && points.get(at + 1).time().seconds() < time) {
        at++;
      }
      double from = points.get(at).time().seconds();
      double to = points.get(at + 1).time().seconds();
      if (time >= from && time <= to) {
        double a = points.get(at).height().metres();
        double line = a + (points.get(at + 1).height().metres() - a) * (time - from) / (to - from);
        least = Math.min(least, sample[1] - line);
        most = Math.max(most, sample[1] - line);
      }
    }
    return (most - least) / 2;
  }

  @Test
  void texts_that_are_none_are_no_trace() {
    for (String text :
        List.of(
            "",
            "1",
            "2 00000000 1 1 AA - x",
            "1 0000000 1 1 AA - x",
            "1 00000000 1 1 A - x",
            "1 00000000 1 1 A! - x",
            "1 00000000 1 1 gggggggggg - x",
            "1 00000000 1 1 AA e x",
            "a flight of 300 ft",
            "x".repeat(30_000))) {
      assertThat(KeptTrace.read(text)).as(text).isEmpty();
    }
  }
}
