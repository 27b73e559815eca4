package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.Trials;
import padside.flight.Flight;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.store.LogFolder;

class ImportCommandTest {
  private static final String TIDY =
      """
      Date,Rocket,Motor,Altitude (ft),Outcome,Field,Note
      2026-03-14,Alder,C6-5,850,full,Ostrel Common,first
      2026-03-14,Ash,B6-4,420,tangled,Ostrel Common,
      """;

  private static final String MESSY =
      """
      \ufeffDatum;Rocket;Motor;Delay;Max height m;Colour
      14.03.2026;Alder;C6;5;212,5;red
      15.03.2026;alder;B6;4s;98,0;
      """;

  private static final String NONSENSE =
      """
      Flown on,Model,Engine,Altitude
      03/04/2026,Alder,C6-5,high
      2026-13-45,,Z9-9,1
      """;

  @TempDir Path home;

  private Ran run(String text, String... options) throws Exception {
    Files.writeString(home.resolve("flights.csv"), text);
    return again(options);
  }

  private Ran again(String... options) {
    List<String> line =
        new ArrayList<>(
            List.of(
                "import",
                "--log",
                home.resolve("log").toString(),
                home.resolve("flights.csv").toString()));
    line.addAll(List.of(options));
    return Ran.of("", line.toArray(String[]::new));
  }

  private List<Stored> list(Kind kind) throws Exception {
    try (LogFolder log = LogFolder.open(home.resolve("log"), new ThisMachine())) {
      return log.list(kind);
    }
  }

  /** 850 ft are 259.08 m: the international foot, 0.3048 m. */
  @Test
  void a_tidy_sheet_comes_whole_and_once() throws Exception {
    Ran first = run(TIDY, "--write");
    Ran second = run(TIDY, "--write");

    assertThat(first.out()).contains("New rocket: Alder.", "2 flights written.");
    assertThat(second.out()).contains("Already in the log: row 2, 3.", "0 flights written.");
    assertThat(list(Kind.FLIGHT)).hasSize(2);
    assertThat(list(Kind.FLIGHT).get(0).facts().get(Flight.ALTITUDE).orElseThrow().metres())
        .isCloseTo(259.08, within(1e-9));
    assertThat(list(Kind.DAY)).hasSize(1);
    assertThat(list(Kind.ROCKET)).hasSize(2);
    assertThat(list(Kind.FLIGHT).get(0).facts().get(Flight.DAY))
        .contains(list(Kind.DAY).get(0).id());
  }

  @Test
  void semicolons_decimal_commas_and_points_in_dates_are_read() throws Exception {
    assertThat(run(MESSY, "--write").err()).contains("No column is called date");

    Ran ran = run(MESSY, "--column", "Datum=date", "--write");

    assertThat(ran.out()).contains("\"Colour\": left out", "2 flights written.");
    assertThat(list(Kind.ROCKET)).hasSize(1);
    assertThat(list(Kind.FLIGHT).get(0).facts().get(Flight.ALTITUDE).orElseThrow().metres())
        .isEqualTo(212.5);
    assertThat(list(Kind.FLIGHT).get(1).facts().get(Flight.MOTOR)).contains("B6-4");
  }

  @Test
  void rows_that_cannot_be_read_keep_all_others_out_unless_told() throws Exception {
    Ran ran = run(TIDY + "2026-03-15,Elm,Z9-9,high,full,,\n", "--write");

    assertThat(ran.status()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).contains("Row 4: Altitude (ft): \"high\" does not begin with a number");
    assertThat(ran.err()).contains("Nothing was written");
    assertThat(list(Kind.FLIGHT)).isEmpty();
    assertThat(again("--write", "--skip-bad").out()).contains("2 flights written.");
    assertThat(list(Kind.ROCKET)).hasSize(2);
    assertThat(run(NONSENSE).out()).contains("--dates day-first or --dates month-first", "Row 3:");
    assertThat(run(NONSENSE, "--dates", "upside").err()).contains("write day-first or");
  }

  @Test
  void other_encodings_and_files_are_refused_in_a_sentence() throws Exception {
    Files.write(
        home.resolve("flights.csv"), "Date,Größe\n1,2".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(again().err()).contains("not in UTF-8");
    assertThat(run("").err()).contains("no rows below a line of headers");
    Files.delete(home.resolve("flights.csv"));
    assertThat(again().err()).contains("cannot be read");
  }

  @Test
  void an_exported_log_gives_the_same_flights() throws Exception {
    Path season = home.resolve("season");
    DemoFolder.write(season);
    String out = Ran.of("", "export", "--log", season.toString(), "--csv").out();

    assertThat(run(out, "--write").out()).contains("58 flights written.");

    String log = home.resolve("log").toString();
    assertThat(withoutIds(Ran.of("", "export", "--log", log, "--csv").out()))
        .isEqualTo(withoutIds(out));
  }

  private static List<String> withoutIds(String csv) {
    return csv.lines().map(line -> line.replaceFirst("^\"[^\"]*\",", "")).toList();
  }

  @Test
  void whatever_a_sheet_says_it_comes_whole_or_not_at_all() throws Exception {
    int trials = Trials.of("sheets", 60, 5_000);
    int written = 0;
    int before = 0;
    for (int number = 1; number <= trials; number++) {
      Random random = Trials.random(number);
      StringBuilder text = new StringBuilder(TIDY);
      for (int i = random.nextInt(4); i > 0; i--) {
        text.setCharAt(
            random.nextInt(text.length()),
            (char) (random.nextInt(4) > 0 ? random.nextInt(128) : random.nextInt(0xd800)));
      }
      Ran ran = run(text.toString(), "--write");
      String what = "trial " + number + " of seed " + Trials.seed() + ": " + text;
      assertThat(ran.status()).as(what).isIn(Exit.DONE, Exit.USAGE);
      assertThat(ran.err() + ran.out())
          .as(what)
          .isNotBlank()
          .doesNotContain("\tat ", "\u001b", "\u0000");
      int now = list(Kind.FLIGHT).size();
      assertThat(now > before)
          .as(what)
          .isEqualTo(ran.status() == Exit.DONE && !ran.out().contains("\n0 flights"));
      written += ran.status() == Exit.DONE ? 1 : 0;
      before = now;
    }
    Trials.say(trials + " spoilt sheets, " + written + " taken");
    assertThat(written).isPositive().isLessThan(trials);
  }
}
