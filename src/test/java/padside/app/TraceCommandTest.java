package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.screen.Setting;
import padside.store.LogFolder;
import padside.trace.KeptTrace;
import padside.units.Length;

/** An altimeter's file read on the command line beside flights of a log. */
class TraceCommandTest {
  @TempDir Path home;

  private Path file;
  private RecordId flight;

  @BeforeEach
  void write() throws Exception {
    file = AltimeterFile.write(home.resolve("flight7.csv"), 1);
    try (LogFolder log = open()) {
      RecordId rocket =
          log.save(
                  Action.create(
                      "add rocket", Kind.ROCKET, Facts.none().with(Rocket.NAME, "Tin Whistle")))
              .get(0);
      Facts flown =
          Facts.none()
              .with(Flight.STATUS, Flight.Status.FLOWN)
              .with(Flight.ROCKET, rocket)
              .with(Flight.MOTOR, "C6-5");
      flight = log.save(Action.create("save card", Kind.FLIGHT, flown)).get(0);
    }
  }

  private Path folder() {
    return home.resolve("log");
  }

  private LogFolder open() throws Fault {
    return LogFolder.open(folder(), new ThisMachine(Setting.Clock.TRUSTED));
  }

  private Ran run(Path of, String... options) {
    List<String> line = new ArrayList<>(List.of("trace", of.toString()));
    line.addAll(List.of("--log", folder().toString()));
    line.addAll(List.of(options));
    return Ran.of("", line.toArray(String[]::new));
  }

  private Facts facts() throws Fault {
    try (LogFolder log = open()) {
      return log.find(Kind.FLIGHT, flight).orElseThrow().facts();
    }
  }

  private void typed(String altitude, double metres) throws Fault {
    Facts facts = Facts.none().with(Flight.ALTITUDE.name(), Facts.Cell.of(metres, altitude));
    try (LogFolder log = open()) {
      log.save(Action.change("save debrief", Kind.FLIGHT, flight, facts));
    }
  }

  @Test
  void what_was_found_is_told_and_nothing_is_written() throws Exception {
    Facts before = facts();

    Ran ran = run(file);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.status()).isZero();
    assertThat(ran.out())
        .contains("Beside Tin Whistle on C6-5:", "Altitude", "Nothing was written; --write")
        .doesNotContain("± 0 ");
    assertThat(facts()).isEqualTo(before);
  }

  /** Against the formulas the file was made with. */
  @Test
  void the_file_s_own_truth_is_written() throws Exception {
    Ran ran = run(file, "--write");

    assertThat(ran.out()).contains("Written;");
    Facts facts = facts();
    assertThat(facts.get(Flight.ALTITUDE).orElseThrow().metres())
        .isCloseTo(AltimeterFile.APOGEE_M, within(0.5));
    assertThat(facts.get(Flight.TOUCHDOWN_MARK).orElseThrow().seconds())
        .isCloseTo(AltimeterFile.TOUCHDOWN_S, within(0.6));
    KeptTrace kept = KeptTrace.read(facts.get(Flight.TRACE).orElseThrow()).orElseThrow();
    assertThat(kept.name()).isEqualTo("flight7.csv");
    assertThat(kept.at(KeptTrace.Event.APOGEE).orElseThrow().time().seconds())
        .isCloseTo(AltimeterFile.APOGEE_S, within(0.2));
  }

  @Test
  void what_was_typed_stays_unless_it_is_named() throws Exception {
    typed("70 m", 70);

    assertThat(run(file, "--write").out()).contains("What you typed stays: altitude_m");
    assertThat(facts().get(Flight.ALTITUDE)).isEqualTo(Optional.of(new Length(70)));

    assertThat(run(file, "--write", "--over", "altitude").out()).doesNotContain("typed stays");
    assertThat(facts().get(Flight.ALTITUDE).orElseThrow().metres())
        .isCloseTo(AltimeterFile.APOGEE_M, within(0.5));
  }

  @Test
  void json_tells_the_same_in_si() throws IOException {
    Map<String, Object> json = run(file, "--json").json();

    assertThat(((Number) ((Map<?, ?>) json.get("apogee_m")).get("value")).doubleValue())
        .isCloseTo(AltimeterFile.APOGEE_M, within(0.5));
  }

  @Test
  void of_several_flights_in_a_file_one_is_chosen() throws Exception {
    Path two = AltimeterFile.write(home.resolve("two.csv"), 2);

    assertThat(run(two).out()).contains("The file holds 2 flights", "this is number 2");
    assertThat(run(two, "--part", "1").out()).contains("this is number 1");
    assertThat(run(two, "--part", "3").status()).isEqualTo(Exit.USAGE);
  }

  @Test
  void wrong_input_is_one_sentence_and_changes_nothing() throws Exception {
    Facts before = facts();
    Path prose = Files.writeString(home.resolve("prose.csv"), "It flew well.\n");
    for (Ran ran :
        List.of(
            run(home.resolve("nowhere.csv"), "--write"),
            run(prose, "--write"),
            run(file, "--write", "--over", "mass"),
            run(file, "--write", "--flight", "no.such"),
            run(file, "--write", "--columns", "time=99s"))) {
      assertThat(ran.status()).isEqualTo(Exit.USAGE);
      assertThat(ran.out()).isEmpty();
      assertThat(ran.err().lines().findFirst().orElse("")).endsWith(".");
      assertThat(ran.err()).doesNotContain("Exception");
    }
    assertThat(facts()).isEqualTo(before);
  }

  @Test
  void a_log_without_a_flown_flight_says_so() throws Exception {
    try (LogFolder log = open()) {
      log.save(Action.remove("remove flight", Kind.FLIGHT, flight));
    }

    assertThat(run(file).err()).contains("No flight in this log was flown yet");
  }
}
