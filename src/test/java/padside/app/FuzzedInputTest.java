package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.store.LogFolder;

/**
 * What comes in from outside, spoilt at random: records for {@code add}, options, settings. A
 * command does all or nothing and says a sentence; nothing is half imported.
 */
class FuzzedInputTest {
  private static final int TRIALS = Trials.of("inputs", 400, 20_000);

  private static final List<Integer> STATUSES =
      List.of(Exit.DONE, Exit.FAULT, Exit.USAGE, Exit.NO_GO, Exit.UNKNOWN);

  private static final List<String> RECORDS =
      List.of(
          "[{\"name\": \"Sparrow\", \"mass_kg\": 0.036, \"diameter_m\": 0.0248, \"rod_m\": 0.9},"
              + " {\"name\": \"Finch\", \"mass_kg\": 0.05}]",
          "{\"name\": \"Heron\", \"note\": \"left fin 2° off\", \"mount_m\": 0.018}");

  private static final List<String> PARTS =
      List.of(
          "null",
          "{}",
          "[]",
          "\"\"",
          "-1",
          "1e999",
          "NaN",
          "true",
          "{",
          "]",
          ",",
          ":",
          "\"",
          "\\",
          "\u0000",
          "\u001b[2J",
          "\\u001b]0;x\\u0007",
          "\\ud83d",
          "0.036",
          "\"name\": ",
          "[[[[[[",
          "99999999999999999999999999999",
          "\"mass_kg\": \"heavy\"",
          "\ufeff",
          "\n",
          "'",
          "/* */");

  private static final List<String> OPTIONS =
      List.of(
          "--mass",
          "36g",
          "--diameter",
          "24.8mm",
          "--motor",
          "A8-3",
          "--rod",
          "90cm",
          "--chute",
          "12in",
          "--wind",
          "6g9mph",
          "--edge",
          "35 280ft",
          "--lat",
          "91",
          "--json",
          "--at",
          "soon",
          "--pressure",
          "-5",
          "--temp",
          "9000C",
          "3xC6-5",
          "C6-0 then C6-7",
          "--tilt",
          "1e400deg",
          "--streamer",
          "NaN",
          "--help",
          "\u001b[2J",
          "--from",
          "");

  @TempDir Path home;

  private final Map<Integer, Integer> ends = new TreeMap<>();

  @Test
  void records_are_added_whole_or_not_at_all() throws Exception {
    int before = rockets();
    for (int number = 1; number <= TRIALS; number++) {
      Random random = Trials.random(number);
      String text = spoilt(RECORDS.get(random.nextInt(RECORDS.size())), PARTS, random);
      Ran ran = Ran.of(text, "--log", log().toString(), "add", "rocket");
      said(ran, "trial " + number + " of seed " + Trials.seed() + ": " + text);
      int now = rockets();
      long ids = ran.status() == 0 ? ran.out().lines().count() : 0;
      assertThat(now - before).as("trial %d: %s", number, text).isEqualTo((int) ids);
      before = now;
    }
    Trials.say(TRIALS + " spoilt records for add, by exit status " + ends);
    assertThat(ends).containsKeys(Exit.DONE, Exit.USAGE);
  }

  @Test
  void options_end_in_an_answer_or_a_sentence() {
    for (int number = 1; number <= TRIALS; number++) {
      Random random = Trials.random(number);
      List<String> line = new ArrayList<>(List.of(random.nextBoolean() ? "check" : "predict"));
      if (random.nextInt(3) > 0) {
        line.addAll(OPTIONS.subList(0, 10));
      }
      for (int i = random.nextInt(5); i > 0; i--) {
        line.add(1 + random.nextInt(line.size()), OPTIONS.get(random.nextInt(OPTIONS.size())));
      }
      said(Ran.of("", line.toArray(String[]::new)), "trial " + number + ": " + line);
    }
    Trials.say(TRIALS + " spoilt command lines, by exit status " + ends);
    assertThat(ends).containsKeys(Exit.DONE, Exit.USAGE);
  }

  @Test
  void settings_that_cannot_be_read_are_told_and_the_usual_ones_stand() throws Exception {
    Path file = home.resolve("settings.properties");
    String sound = "units = us\nrules = us\nown-limit = 12mph\nrod-divisor = 4\nlooks = dusk\n";
    int told = 0;
    for (int number = 1; number <= TRIALS; number++) {
      Random random = Trials.random(number);
      Files.write(file, spoilt(sound, PARTS, random).getBytes(StandardCharsets.ISO_8859_1));
      SettingsFile read = SettingsFile.read(file);
      assertThat(read.settings()).isNotNull();
      assertThat(read.told()).allMatch(sentence -> sentence.endsWith("."));
      told += read.told().isEmpty() ? 0 : 1;
    }
    Trials.say("%d spoilt settings files, %d told".formatted(TRIALS, told));
    assertThat(told).isPositive();
  }

  private void said(Ran ran, String what) {
    ends.merge(ran.status(), 1, Integer::sum);
    assertThat(ran.status()).as(what).isIn(STATUSES);
    assertThat(ran.err()).as(what).doesNotContain("\tat ", "Exception", "\u001b", "\u0000");
    assertThat(ran.out()).as(what).doesNotContain("\u001b", "\u0000");
    if (ran.status() == Exit.USAGE || ran.status() == Exit.FAULT) {
      assertThat(ran.out() + ran.err()).as(what).isNotBlank();
    }
  }

  private static String spoilt(String sound, List<String> parts, Random random) {
    StringBuilder text = new StringBuilder(sound);
    for (int i = random.nextInt(4); i > 0 && text.length() > 0; i--) {
      int at = random.nextInt(text.length());
      switch (random.nextInt(4)) {
        case 0 -> text.insert(at, parts.get(random.nextInt(parts.size())));
        case 1 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(12)));
        case 2 -> text.setCharAt(at, (char) random.nextInt(0x250));
        default -> text.setLength(at);
      }
    }
    return text.toString();
  }

  private Path log() {
    return home.resolve("log");
  }

  private int rockets() throws Exception {
    try (LogFolder log = LogFolder.open(log(), new ThisMachine())) {
      List<Stored> rockets = log.list(Kind.ROCKET);
      return rockets.size();
    }
  }
}
