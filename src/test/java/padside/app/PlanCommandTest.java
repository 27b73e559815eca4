package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Fault;
import padside.store.LogFolder;

/** The plan of the made-up season's day to come, told on the command line. */
class PlanCommandTest {
  @TempDir static Path folder;

  private record Ran(int status, String out, String err) {}

  @BeforeAll
  static void write() throws Fault {
    DemoFolder.write(folder.resolve("season"));
  }

  private static Ran run(String options) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String line = "plan --log " + folder.resolve("season") + " " + options;
    int status =
        CommandRun.of(new PrintWriter(out), new PrintWriter(err), line.strip().split(" ", -1));
    return new Ran(status, out.toString(), err.toString());
  }

  @Test
  void plan_tells_flights_in_order_and_what_to_pack() {
    Ran ran = run("--date 2026-10-31");

    assertThat(ran.status()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .startsWith("Plan · Sat 31 Oct 2026, Sallowfen Flat\n6 planned · short 1 motor · ")
        .containsSubsequence(
            " 1  Gooseberry on A10T-3", " 6  Lamplighter on E12-4", "! short 1 E12-4")
        .containsSubsequence("Rockets", "Motors", "Recovery", "Altimeters", "Besides")
        .contains("[ ] 1 E12-4 lot E121 · lower tray", "[ ] 1 E12-4 · short: not in the box")
        .contains("[ ] little green · altimeter; packed once, flies in 3")
        // Six flights of one motor each, two igniters a motor: common practice, no source.
        .contains("[ ] 12 igniters")
        .contains("you decide");
  }

  @Test
  void json_tells_the_same_in_si() throws IOException {
    Map<String, Object> json = JSON.std.mapFrom(run("--date 2026-10-31 --json").out());

    assertThat(json.keySet()).containsExactly("date", "field_name", "flights", "packing");
    List<?> flights = (List<?>) json.get("flights");
    assertThat(flights).hasSize(6);
    Map<?, ?> last = (Map<?, ?>) flights.get(5);
    assertThat(last.get("rocket_name")).isEqualTo("Lamplighter");
    Map<?, ?> motors = (Map<?, ?>) ((List<?>) last.get("motors")).get(0);
    assertThat(motors.get("short")).isEqualTo(1);
    // The US model code lets nobody fly above 20 mph, 8.9408 m/s; every limit is below that.
    assertThat(flights)
        .allSatisfy(
            flight ->
                assertThat(((Number) ((Map<?, ?>) flight).get("limit_mps")).doubleValue())
                    .isBetween(0.0, 8.9408));
    assertThat((List<?>) json.get("packing"))
        .anySatisfy(
            item -> {
              assertThat(((Map<?, ?>) item).get("key")).isEqualTo("thing.key");
              assertThat(((Map<?, ?>) item).get("packed")).isEqualTo(false);
            });
  }

  @Test
  void without_a_date_it_is_the_plan_that_waits() {
    assertThat(run("").out()).startsWith("Plan · Sat 31 Oct 2026");
  }

  @Test
  void a_day_without_a_plan_has_a_packing_list_all_the_same() {
    assertThat(run("--date 2026-10-17").out())
        .contains("0 planned")
        .contains("[ ] safety key")
        .doesNotContain("Motors");
  }

  @Test
  void a_date_that_is_none_or_no_day_is_refused_in_a_sentence() {
    Ran none = run("--date tomorrow");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("--date is \"tomorrow\"; write it like 2026-05-02.");

    Ran noDay = run("--date 2026-10-18");
    assertThat(noDay.status()).isEqualTo(2);
    assertThat(noDay.err()).contains("There is no day \"2026-10-18\" in this log");
  }

  @Test
  void a_log_without_days_says_where_one_is_opened(@TempDir Path empty) throws Fault {
    LogFolder.open(empty, new ThisMachine()).close();
    StringWriter out = new StringWriter();
    int status =
        CommandRun.of(
            new PrintWriter(out),
            new PrintWriter(new StringWriter()),
            "plan",
            "--log",
            empty.toString());

    assertThat(status).isZero();
    assertThat(out.toString()).contains("No day to plan for");
  }
}
