package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.fact.Fault;
import padside.flight.Kind;
import padside.insight.Confidence;
import padside.preflight.Settings;
import padside.safety.OwnLimits;
import padside.store.LogFolder;
import padside.terminal.NoTerminalException;
import padside.units.Speed;
import padside.units.UnitSystem;
import picocli.CommandLine;

class CommandLineTest {
  private static final String FLIGHT =
      "--mass 36g --diameter 24.8mm --motor A8-3 --rod 90cm --chute 12in";

  @TempDir Path folder;

  private static Ran run(String line) {
    return run(line, "");
  }

  private static Ran run(String line, String input) {
    return Ran.of(input, line.split(" ", -1));
  }

  private static Map<?, ?> object(Map<String, Object> json, String name) {
    return (Map<?, ?>) json.get(name);
  }

  private static double number(Map<?, ?> json, String name) {
    return ((Number) json.get(name)).doubleValue();
  }

  /** The names are the contract of the command. */
  @Test
  void predict_answers_one_object_in_si_with_units_in_the_names() throws IOException {
    Map<String, Object> json = run("predict " + FLIGHT + " --json").json();

    assertThat(json.keySet())
        .containsExactly(
            "liftoff_mass_kg",
            "total_impulse_ns",
            "thrust_to_weight",
            "rod_exit_speed_mps",
            "max_speed_mps",
            "burnout_altitude_m",
            "burnout_time_s",
            "apogee_m",
            "time_to_apogee_s",
            "top",
            "drag",
            "best_delay_s",
            "delays",
            "ejection",
            "descent_rate_mps",
            "flight_time_s",
            "landing",
            "density_altitude_m",
            "confidence_share",
            "spread",
            "sun");
    assertThat(object(json, "ejection").keySet()).hasToString("[time_s, altitude_m, speed_mps]");
    assertThat(object(json, "landing").keySet())
        .hasToString("[east_m, north_m, distance_m, bearing_deg]");
    Map<?, ?> delay = (Map<?, ?>) ((List<?>) json.get("delays")).get(0);
    assertThat(delay.keySet()).hasToString("[delay_s, error_s, altitude_m, speed_mps, safe_share]");
    assertThat(number(json, "liftoff_mass_kg")).isCloseTo(0.036 + 0.0163, within(1e-12));
  }

  @Test
  void without_a_chute_there_is_no_descent_rate() throws IOException {
    Map<String, Object> json =
        run("predict --mass 36g --diameter 24.8mm --motor A8-3 --json").json();

    assertThat(json).containsEntry("descent_rate_mps", null);
  }

  @Test
  void check_adds_verdict_limits_and_findings() throws IOException {
    Ran ran = run("check " + FLIGHT + " --wind 2g3mph --wind-from 225 --field-radius 200m --json");
    Map<String, Object> json = ran.json();

    assertThat(json).containsEntry("verdict", "GO").containsKeys("apogee_m", "findings");
    Map<?, ?> code = (Map<?, ?>) ((List<?>) json.get("limits")).get(0);
    // US model rocket code, NAR 2012: 20 mph, 8.9408 m/s exactly.
    assertThat(code.get("rule")).isEqualTo("code");
    assertThat(number(code, "limit_mps")).isEqualTo(8.9408);
    assertThat(code.get("kind")).isEqualTo("no-go");
    assertThat(number(json, "limit_mps")).isLessThanOrEqualTo(8.9408);
    assertThat(ran.status()).isEqualTo(Exit.DONE);
  }

  @ParameterizedTest
  @CsvSource({
    "2g3mph,200m,0",
    "7g9mph,200m,0",
    "20g21mph,200m,3",
    "2g3mph,10m,3",
  })
  void check_tells_the_verdict_by_its_exit_status(String wind, String radius, int status) {
    Ran ran =
        run("check " + FLIGHT + " --wind " + wind + " --wind-from SW --field-radius " + radius);

    assertThat(ran.status()).isEqualTo(status);
  }

  /** US model rocket code, NAR 2012, table of sites, seen: 400 ft for a C, 200 ft on all sides. */
  @Test
  void a_round_field_is_as_wide_as_twice_its_radius() throws IOException {
    String line = "check --motor C6-5 --mass 36g --diameter 24.8mm --rod 90cm --wind calm --json";
    assertThat(run(line + " --field-radius 200ft").json().get("findings").toString())
        .contains("{rule=site, kind=go, sentence=field 400 ft at its smallest, at least 400 ft");
    assertThat(run(line + " --field-radius 199ft").json().get("findings").toString())
        .contains("{rule=site, kind=no-go, sentence=field 398 ft at its smallest");
  }

  @ParameterizedTest
  @CsvSource({
    "settings own-ceiling -5ft, \"-5ft\"",
    "settings own-limit -5 mph, \"-5 mph\"",
    "settings --wings, \"--wings\" is no setting"
  })
  void a_setting_refuses_a_value_below_zero_as_a_value(String line, String told) {
    Ran ran = run(line);

    assertThat(ran.status()).isEqualTo(Exit.USAGE);
    assertThat(ran.err()).contains(told).doesNotContain("option");
  }

  @Test
  void settings_stand_where_no_option_is_given() {
    Settings usual =
        new Settings(
            UnitSystem.METRIC,
            "uk-club",
            OwnLimits.none().withWind(Optional.of(new Speed(5))),
            Optional.of(6.0),
            new Confidence(80),
            Optional.of("Ann"));
    FlightOptions none = CommandLine.populateCommand(new FlightOptions());
    FlightOptions both =
        CommandLine.populateCommand(new FlightOptions(), "--units", "US", "--rules", "us-model");

    assertThat(none.over(usual)).isEqualTo(usual);
    assertThat(both.over(usual)).isEqualTo(usual.with(UnitSystem.US).withRuleSet("us-model"));
  }

  @Test
  void check_without_wind_is_unknown_with_status_four() {
    Ran ran = run("check " + FLIGHT + " --field-radius 200m");

    assertThat(ran.status()).isEqualTo(Exit.UNKNOWN);
    assertThat(ran.out()).startsWith("UNKNOWN  no wind entered · missing: wind");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "predict --mass 36 --diameter 24.8mm --motor A8-3|has no unit",
        "predict --mass 36g --diameter 24.8mm --motor A8-9|choose A8-0, A8-3, A8-5",
        "predict --mass 36g --diameter 24.8mm --motor Q7-1|No motor",
        "predict --mass 0g --diameter 24.8mm --motor A8-3|--mass is zero",
        "predict --mass -5g --diameter 24.8mm --motor A8-3|-5g",
        "predict --mass 5kg --diameter 24.8mm --motor A8-3|too heavy to leave the rod",
        "predict --mass 36g|Still missing",
        "predict --mass 36g --streamer 40in|4x40in",
        "predict --edge NE280ft|NE:280ft",
        "check --wind 6|has no unit",
        "check --rules club|choose us-model, us-high-power",
        "predict --chute 12in --streamer 2x20in|give one of them",
        "check --edge N:300ft --field-radius 300ft|give one of them",
        "check --card r.1 --wind 2mph|--card takes no --wind",
        "flights --limit x|limit",
        "flights --limit 0|give 1 or more",
        "add ufo|There is no kind of record",
        "nonsense|nonsense",
      })
  void wrong_input_is_told_in_a_sentence_with_status_two(String line, String told) {
    Ran ran = run(line + (line.startsWith("flights") ? " --log " + folder : ""));

    assertThat(ran.err()).contains(told).doesNotContain("Exception").doesNotContain("\tat ");
    assertThat(ran.status()).isEqualTo(Exit.USAGE);
  }

  @Test
  void a_motor_file_with_broken_rows_names_row_and_column() throws IOException {
    Path file = folder.resolve("mine.csv");
    Files.writeString(
        file,
        """
        designation,delays_s,total_impulse_ns,burn_time_s,total_mass_g,propellant_mass_g
        A8,3,2.32,0.73,16.3,3.3
        B6,4,,0.86,19.3,5.6
        """);
    Ran ran = run("predict " + FLIGHT + " --motors " + file);

    assertThat(ran.status()).isEqualTo(Exit.FAULT);
    assertThat(ran.err()).contains("line 3: column total_impulse_ns is missing or empty");
  }

  @Test
  void what_is_added_is_listed() throws IOException {
    String log = " --log " + folder;
    Ran added = run("add rocket --json" + log, "{\"name\": \"Alder\", \"mass_kg\": 0.042}");
    String rocket = (String) ((List<?>) added.json().get("ids")).get(0);
    run(
        "add flight" + log,
        "[{\"status\": \"flown\", \"rocket\": \"" + rocket + "\", \"altitude_m\": 81.5}]");
    Ran listed = run("flights --rocket alder --json" + log);

    assertThat(JSON.std.listFrom(listed.out()))
        .singleElement()
        .asString()
        .contains("rocket_name=Alder")
        .contains("altitude_m=81.5");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"name\": 5}|is no value for name",
        "{\"mass_kg\": \"42g\"}|is no value for mass_kg",
        "{\"colour\": \"red\"}|has no field",
        "[{\"name\": \"Alder\"}, 5]|Record 2 is not a JSON object",
        "{\"name\": \"Alder\", \"name\": \"Birch\"}|not JSON as expected",
        "[]|empty array",
        "{|not JSON as expected: line 1, column",
        "{\"id\": \"no.1\", \"name\": \"Alder\"}|There is no rocket no.1",
      })
  void what_cannot_be_added_adds_nothing(String input, String told) throws Fault {
    Ran ran = run("add rocket --log " + folder, input);

    assertThat(ran.status()).isEqualTo(Exit.USAGE);
    assertThat(ran.err()).contains(told);
    try (LogFolder log = LogFolder.open(folder, new ThisMachine())) {
      assertThat(log.list(Kind.ROCKET)).isEmpty();
    }
  }

  /**
   * Where no launcher has told what terminal there is, as in this test, screens cannot be shown.
   */
  @Test
  void what_no_command_answers_is_told_where_the_program_starts_without_a_trace() {
    StringWriter told = new StringWriter();

    assertThatThrownBy(
            () ->
                CommandRun.of(
                    new PrintWriter(told),
                    new PrintWriter(told),
                    "--log",
                    folder.resolve("none").toString()))
        .isInstanceOf(NoTerminalException.class)
        .hasMessageContaining("start padside in a terminal window");
    assertThat(told.toString()).isEmpty();
  }

  @Test
  void what_was_mended_in_the_log_is_told_beside_the_answer() throws IOException {
    run("add rocket --log " + folder, "{\"name\": \"Alder\"}");
    Files.delete(folder.resolve("padside.sqlite"));
    Ran ran = run("flights --json --log " + folder);

    assertThat(ran.err()).contains("padside: The database was built from");
    assertThat(JSON.std.listFrom(ran.out())).isEmpty();
    assertThat(ran.status()).isEqualTo(Exit.DONE);
  }

  @Test
  void what_is_not_in_the_log_is_wrong_input() {
    run("add rocket --log " + folder, "{\"name\": \"Alder\"}");

    for (String line :
        List.of("flights --rocket birch", "flights --field moor", "check --card 7")) {
      Ran ran = run(line + " --log " + folder);

      assertThat(ran.err()).as(line).contains("There is no").contains("in this log; ");
      assertThat(ran.status()).as(line).isEqualTo(Exit.USAGE);
    }
  }

  @Test
  void looking_something_up_begins_no_log() {
    Path nowhere = folder.resolve("nowhere");
    Ran ran = run("flights --log " + nowhere);

    assertThat(ran.status()).isEqualTo(Exit.FAULT);
    assertThat(ran.err()).contains("There is no log in");
    assertThat(nowhere).doesNotExist();
  }

  @Test
  void every_command_has_help_with_its_exit_statuses() {
    for (String command : List.of("predict", "check", "flights", "add", "demo")) {
      Ran ran = run(command + " --help");

      assertThat(ran.status()).isEqualTo(Exit.DONE);
      assertThat(ran.out()).contains("Usage: padside " + command).contains("xit status");
    }
  }

  @Test
  void a_log_below_a_file_is_a_fault_in_a_sentence() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    Ran ran = run("flights --log " + file.resolve("log"));

    assertThat(ran.status()).isEqualTo(Exit.FAULT);
    assertThat(ran.err()).contains("padside: ").doesNotContain("\tat ");
  }
}
