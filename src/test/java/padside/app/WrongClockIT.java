package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The real program on a machine whose clock of the day is wrong and jumps. */
class WrongClockIT {
  private static final ZoneId HERE = ZoneId.systemDefault();
  private static final DateTimeFormatter TYPED =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

  /** From a key of the test to the program's answer, and from a time to its typing. */
  private static final double SLACK_S = 3;

  private static final int LOOKS_BETWEEN_KEYS = 10;

  @TempDir Path folder;
  private WrongClock clock;
  private PadTable pad;

  @BeforeEach
  void sitDown() throws Exception {
    clock = new WrongClock(folder);
    pad = new PadTable(folder, 80, 24);
    pad.setting("clock = ask");
  }

  @AfterEach
  void packUp() {
    if (pad != null) {
      pad.close();
    }
  }

  private void launch() {
    pad.launch(clock.variables(), "");
  }

  private String one(String kind, String members) {
    return pad.add(kind, "{" + members.replace('\'', '"') + "}").get(0);
  }

  @Test
  void a_clock_that_jumps_during_a_flight_changes_no_duration_and_no_order() throws Exception {
    prepare();
    launch();
    final Instant read = toTheCount();
    clock.jump("+1d");
    pad.press("Space");
    pad.sees("LAUNCH");
    pad.press("Space");
    pad.sees("next: EJECTION");
    final Instant lifted = Instant.now();
    final long start = System.nanoTime();
    clock.jump("-50y");
    markOnceItCounts("next: TOUCHDOWN");
    final double ejected = (System.nanoTime() - start) / 1e9;
    clock.jump("-1h");
    markOnceItCounts("Enter goes on to the debrief.");
    final double landed = (System.nanoTime() - start) / 1e9;
    pad.press("Enter");
    pad.sees("Debrief: Sparrow");
    pad.press("F2");
    pad.sees("Flown 1");
    clock.jump("-50y");
    setTheClock();
    pad.quit();

    String[] seconds =
        pad.sqlite("SELECT ejection_mark_s, touchdown_mark_s FROM flight").get(0).split("\\|", 2);
    assertThat(Double.parseDouble(seconds[0])).isBetween(ejected - SLACK_S, ejected + SLACK_S);
    assertThat(Double.parseDouble(seconds[1])).isBetween(landed - SLACK_S, landed + SLACK_S);
    near("SELECT liftoff_at FROM flight WHERE liftoff_at IS NOT NULL", lifted);
    near("SELECT at FROM weather", read);
    orderStands();
  }

  /** A rocket that flew before, and a day of today. */
  private void prepare() {
    String field =
        one(
            "field",
            "'name': 'Long Meadow', 'smallest_side_m': 900, 'edges': ["
                + String.join(", ", edge(0), edge(90), edge(180), edge(270))
                + "]");
    String chute = one("device", "'name': 'twelve', 'shape': 'parachute', 'diameter_m': 0.3");
    String rocket =
        one(
            "rocket",
            "'name': 'Sparrow', 'mass_kg': 0.036, 'diameter_m': 0.0248, 'rod_m': 0.9, 'device': '"
                + chute
                + "'");
    one("lot", "'motor': 'A8-3', 'code': 'L', 'bought': 9");
    String day = "'date': '" + LocalDate.now(HERE) + "', 'field': '" + field + "'";
    one("day", day + ", 'permission': true, 'fire_ban': false");
    assertThat(rocket).isNotBlank();
  }

  private static String edge(int bearing) {
    return "{'bearing_deg': " + bearing + ", 'distance_m': 450}";
  }

  /** Answers when the weather was read. */
  private Instant toTheCount() {
    pad.sees("No card yet.");
    pad.press("w");
    pad.sees("Height of reading");
    pad.type("3g4 SW");
    pad.press("F2");
    pad.sees("Wind 3 gusting 4 mph from SW");
    final Instant read = Instant.now();
    pad.press("n");
    pad.sees("> Rocket");
    pad.type("sp");
    pad.seesLine("> Sparrow");
    pad.press("Enter");
    pad.seesLine("> Motor");
    pad.type("A8-3");
    pad.press("F5");
    pad.sees("Pad · Sparrow");
    pad.press("Enter", "Enter", "Enter", "Enter");
    pad.sees("All ticked");
    pad.press("a");
    pad.sees("ARMED");
    return read;
  }

  private void markOnceItCounts(String next) {
    AtomicInteger looks = new AtomicInteger();
    pad.tmux()
        .await(
            next,
            lines -> {
              boolean marked = lines.stream().anyMatch(line -> line.contains(next));
              if (!marked && looks.incrementAndGet() % LOOKS_BETWEEN_KEYS == 0) {
                pad.press("Space");
              }
              return marked;
            });
  }

  /** Types the true time. */
  private void setTheClock() {
    pad.press("k");
    pad.sees("Is this the date and time here?");
    pad.type(TYPED.format(LocalDateTime.now(HERE)));
    pad.press("Enter");
    pad.seesLine("The log's time is", "corrected");
  }

  private void near(String query, Instant truth) {
    Instant stamped = Instant.parse(pad.sqlite(query).get(0));
    assertThat(Duration.between(truth, stamped).abs().toMillis() / 1e3)
        .as(query)
        .isLessThan(2 * SLACK_S);
  }

  /** By the Lamport number, though the clock of the lines went back and forth. */
  private void orderStands() {
    List<String> walls =
        pad.sqlite(
            "SELECT op.n, raw ->> '$.wall' FROM op WHERE run = (SELECT max(id) FROM run)"
                + " ORDER BY t");
    List<Long> counted = walls.stream().map(row -> Long.valueOf(row.split("\\|", 2)[0])).toList();
    List<Long> shown = walls.stream().map(row -> Long.valueOf(row.split("\\|", 2)[1])).toList();
    assertThat(counted).isSorted();
    assertThat(shown).as("the clock went back").isNotEqualTo(shown.stream().sorted().toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"-50y", "+1d"})
  void what_was_entered_by_a_wrong_clock_is_asked_about_and_corrected_with_one_key(String wrong)
      throws Exception {
    clock.jump(wrong);
    launch();
    pad.sees("No day is open yet.");
    pad.press("o");
    pad.sees("Nobody has said so since this machine was started.");
    pad.escape("Not right? Esc, then k sets the clock.");
    pad.press("Tab", "Tab");
    pad.seesLine("> Permission");
    pad.type("y");
    pad.press("F2");
    pad.sees("No card yet.");
    pad.quit();
    LocalDate today = LocalDate.now(HERE);
    assertThat(pad.sqlite("SELECT date FROM day")).doesNotContain(today.toString());

    clock.jump("+0");
    launch();
    pad.sees("The machine's clock was set since the newest entry;");
    pad.press("Enter");
    pad.seesLine("The log's time is", "1 entry corrected.");
    pad.press("e");
    pad.sees(today.toString());
    pad.escape("No card yet.");
    pad.quit();
    assertThat(pad.sqlite("SELECT date FROM day")).containsExactly(today.toString());
    assertThat(pad.sqlite("SELECT how FROM clock")).containsExactly("confirmed");
  }

  @Test
  void a_clock_behind_the_log_is_asked_about_and_the_answer_outlives_the_program()
      throws Exception {
    Files.createDirectories(pad.log().resolve("journal"));
    Path earlier = Path.of("shared/samples/pad-field.jsonl");
    String run = Files.readAllLines(earlier).get(0).replaceFirst(".*\"run\":\"(\\w+)\".*", "$1");
    Files.copy(earlier, pad.log().resolve("journal").resolve(run + ".jsonl"));

    clock.jump("-50y");
    launch();
    pad.sees("It is earlier than the newest entry of the log");
    pad.press("Enter");
    pad.sees("That is earlier than the newest entry.");
    pad.type("1 May 2027 10:00");
    pad.press("Enter");
    pad.sees("The log's time is Saturday 1 May 2027, 10:00");
    pad.quit();

    clock.jump("+1d");
    launch();
    pad.sees("F1 keys");
    pad.press("o");
    pad.sees("Now Sat 1 May 2027, 10:0");
    pad.escape("F1 keys");
    pad.quit();
  }
}
