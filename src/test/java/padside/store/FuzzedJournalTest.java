package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.motor.MotorTable;

/**
 * Journals of the samples with lines no program would write, most of them with a checksum that
 * fits: the log opens, every record and its history can be read, the lines left alone stand, saving
 * goes on, and a second start shows the same.
 */
class FuzzedJournalTest {
  private static final int TRIALS = Trials.of("journals", 300, 20_000);
  private static final Path SAMPLES = Path.of("shared", "samples");

  /** Put in place of any value of a line. */
  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "-1",
          "0.5",
          "1e400",
          "9223372036854775807",
          "9223372036854775808",
          "123456789012345678901234567890",
          "\"\"",
          "\"removed\"",
          "\"flight\"",
          "\"\\u0000\\u001b[2J\"",
          "\"\\ud800\"",
          "\"73d51abbd89cb8196f0e.1\"",
          "[]",
          "{}",
          "[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]",
          "{\"bearing_deg\":\"north\",\"distance_m\":[]}",
          "[{\"bearing_deg\":720.5,\"distance_m\":-3}]",
          "\"2026-13-45\"");

  @TempDir Path places;

  private final AtomicInteger refused = new AtomicInteger();
  private final AtomicInteger told = new AtomicInteger();
  private final AtomicInteger standing = new AtomicInteger();

  @Test
  void whatever_a_journal_says_the_log_opens_and_the_other_lines_stand() throws Exception {
    Trials.run(TRIALS, this::trial);
    Trials.say(
        "%d logs of fuzzed journals: %d told of bad lines, %d refused with a sentence, %d lines stand"
            .formatted(TRIALS, told.get(), refused.get(), standing.get()));
    assertThat(refused.get()).as("a bad line is no reason to refuse a log").isZero();
    assertThat(told.get()).isPositive();
  }

  private void trial(int number, Random random) throws Exception {
    Path folder = places.resolve("trial" + number);
    Path journals = Files.createDirectories(folder.resolve("journal"));
    Set<String> untouched = new HashSet<>();
    try (Stream<Path> samples = Files.list(SAMPLES)) {
      for (Path sample : samples.sorted().toList()) {
        List<String> lines = new ArrayList<>(Files.readAllLines(sample));
        untouched.addAll(lines);
        int changes = random.nextInt(3);
        for (int i = 0; i < changes; i++) {
          int at = random.nextInt(lines.size());
          untouched.remove(lines.get(at));
          lines.set(at, fuzzed(lines.get(at), random));
        }
        Files.writeString(journals.resolve(sample.getFileName()), String.join("\n", lines) + "\n");
      }
    }
    List<String> first = opened(folder, 7_000_000 + number, untouched);
    FolderCopy.delete(folder.resolve("padside.sqlite"));
    assertThat(opened(folder, 8_000_000 + number, untouched)).containsAll(first);
    FolderCopy.delete(folder);
  }

  /** Opens it, reads all there is, saves, and answers the records that show. */
  private List<String> opened(Path folder, int seed, Set<String> untouched) throws Exception {
    List<String> shown = new ArrayList<>();
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(seed))) {
      told.addAndGet(log.notices().isEmpty() ? 0 : 1);
      for (Kind kind : Kind.values()) {
        for (Stored record : log.list(kind)) {
          shown.add(kind + " " + record.id());
          assertThat(log.history(kind, record.id())).isNotNull();
        }
        assertThat(log.removed(kind)).isNotNull();
      }
      Logbook.read(log, new MotorTable(List.of()));
      Facts facts = Facts.none().with("note", Facts.Cell.of("after", "after"));
      RecordId id = log.save(Action.create("after", Kind.DAY, facts)).get(0);
      assertThat(log.find(Kind.DAY, id).map(Stored::facts)).isEqualTo(Optional.of(facts));
    } catch (Fault fault) {
      assertThat(fault.sentence()).isNotBlank();
      refused.incrementAndGet();
      return List.of();
    }
    Set<String> stand = new HashSet<>(LogState.rows(folder, "SELECT raw FROM op"));
    long lost = untouched.stream().filter(line -> !stand.contains(line)).count();
    assertThat(lost).as("lines nobody touched, but for one named twice").isLessThanOrEqualTo(2);
    standing.addAndGet((int) (untouched.size() - lost));
    return shown;
  }

  private static String fuzzed(String line, Random random) throws IOException {
    return switch (random.nextInt(8)) {
      case 0 -> torn(line, random);
      case 1 -> line.substring(0, random.nextInt(line.length()));
      case 2 -> summed(nested(random));
      case 3 -> summed(withoutAKey(body(line), random));
      default -> summed(otherValue(body(line), random));
    };
  }

  /** Bytes turned over. */
  private static String torn(String line, Random random) {
    byte[] bytes = line.getBytes(StandardCharsets.ISO_8859_1);
    for (int i = 0; i < 3; i++) {
      bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(7));
    }
    return new String(bytes, StandardCharsets.ISO_8859_1).replace('\n', ' ');
  }

  private static String body(String line) {
    int sum = line.indexOf(",\"crc\":");
    return sum < 0 ? line : line.substring(0, sum);
  }

  private static String summed(String body) {
    return body + ",\"crc\":\"" + Summed.sum(body) + "\"}";
  }

  private static String nested(Random random) {
    int deep = 1 + random.nextInt(100_000);
    return "{\"v\":" + "[".repeat(deep) + "]".repeat(random.nextInt(2) * deep);
  }

  private static String otherValue(String body, Random random) {
    List<int[]> values = values(body);
    if (values.isEmpty()) {
      return body;
    }
    int[] at = values.get(random.nextInt(values.size()));
    return body.substring(0, at[0])
        + VALUES.get(random.nextInt(VALUES.size()))
        + body.substring(at[1]);
  }

  /** Drops one key, or writes it twice. */
  private static String withoutAKey(String body, Random random) {
    List<String> parts = new ArrayList<>(List.of(body.substring(1).split(",(?=\")", -1)));
    if (random.nextBoolean()) {
      parts.remove(random.nextInt(parts.size()));
    } else {
      parts.add(parts.get(random.nextInt(parts.size())));
      Collections.shuffle(parts, random);
    }
    return "{" + String.join(",", parts);
  }

  /** Where plain values begin and end: what stands behind a colon, up to the next sign. */
  private static List<int[]> values(String body) {
    List<int[]> values = new ArrayList<>();
    for (int at = body.indexOf("\":"); at >= 0; at = body.indexOf("\":", at + 1)) {
      int from = at + 2;
      int to = from;
      boolean text = from < body.length() && body.charAt(from) == '"';
      to = text ? body.indexOf('"', from + 1) + 1 : to;
      while (!text && to < body.length() && ",]}[{".indexOf(body.charAt(to)) < 0) {
        to++;
      }
      if (to > from) {
        values.add(new int[] {from, to});
      }
    }
    return values;
  }
}
