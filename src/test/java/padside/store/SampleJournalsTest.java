package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padside.fact.Facts;
import padside.fact.Facts.Cell;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;

/**
 * The sample journals other programs may test against: they are what this version writes, they fit
 * the schema (JSON Schema 2020-12, by an independent validator), and together they are read as told
 * here.
 */
class SampleJournalsTest {
  private static final Path SHARED = Path.of("shared");
  private static final Path SAMPLES = SHARED.resolve("samples");

  @TempDir Path pad;
  @TempDir Path desktop;

  @Test
  void the_samples_are_written_byte_for_byte() throws Exception {
    RecordId rocket = eveningBefore();
    carry(pad, desktop);
    atThePad(rocket);
    atHome(rocket);

    sample("pad-evening.jsonl", pad, 1);
    sample("pad-field.jsonl", pad, 2);
    sample("desktop.jsonl", desktop, 3);
  }

  @ParameterizedTest
  @ValueSource(strings = {"pad-evening.jsonl", "pad-field.jsonl", "desktop.jsonl"})
  void every_line_fits_the_schema(String name) throws IOException {
    assertThat(Files.readAllLines(SAMPLES.resolve(name)))
        .hasSizeGreaterThan(1)
        .allSatisfy(line -> assertThat(schema().validate(line, InputFormat.JSON)).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"run\":\"0\"",
        "\"n\":-1",
        "\"ch\":[{\"k\":\"flight\"}]",
        "\"ch\":[{\"k\":\"flight\",\"e\":\"x\",\"b\":[\"nobody\"]}]",
        "\"crc\":\"XYZ\""
      })
  void the_schema_refuses_what_is_no_line(String wrong) throws IOException {
    String key = wrong.substring(0, wrong.indexOf(':') + 1);
    String line = Files.readAllLines(SAMPLES.resolve("pad-evening.jsonl")).get(1);
    int from = line.indexOf(key);
    int to =
        key.equals("\"ch\":")
            ? line.indexOf(",\"crc\"")
            : line.indexOf('"', from + key.length() + 1) + 1;
    String changed =
        line.substring(0, from) + wrong + (key.equals("\"n\":") ? ",\"" : "") + line.substring(to);

    assertThat(schema().validate(line, InputFormat.JSON)).isEmpty();
    assertThat(schema().validate(changed, InputFormat.JSON)).as(changed).isNotEmpty();
  }

  @Test
  void the_samples_together_are_one_log() throws Exception {
    Path journals = Files.createDirectories(pad.resolve("journal"));
    for (Path sample : JournalFiles.in(SAMPLES)) {
      Files.copy(sample, journals.resolve(sample.getFileName()));
    }
    try (LogFolder log = LogFolder.open(pad, new PretendMachine(9))) {
      assertThat(log.notices())
          .contains(
              "Kept but not shown: 1 journal lines of a newer version; update Padside to see"
                  + " them.");
      Facts rocket = log.list(Kind.ROCKET).get(0).facts();
      assertThat(rocket.get(Rocket.MASS)).contains(new Mass(0.041));
      assertThat(rocket.cells())
          .containsEntry("note", Cell.emptied())
          .containsEntry(Rocket.DIAMETER.name(), Cell.unread("one inch"));
      assertThat(log.list(Kind.FLIGHT)).as("the other one was removed").hasSize(1);
    }
    assertThat(LogState.rows(pad, "SELECT value FROM head WHERE field = 'name' ORDER BY value"))
        .as("both sides of the conflict")
        .contains("\"Grey Heron\"", "\"Old Heron\"");
    assertThat(LogState.rows(pad, "SELECT value FROM head WHERE kind = 'balloon'"))
        .containsExactly("\"He\"");
  }

  /** A rocket and a field, with a text that cannot be read and one that is emptied. */
  private RecordId eveningBefore() throws Fault {
    try (LogFolder log = LogFolder.open(pad, new PretendMachine(1))) {
      Facts heron =
          Facts.none()
              .with(Rocket.NAME, "Heron", "Heron")
              .with(Rocket.MASS, new Mass(0.042), "42g")
              .with(Rocket.DIAMETER.name(), Cell.unread("one inch"))
              .with("note", Cell.of("glue the fins", "glue the fins"));
      Facts meadow =
          Facts.none()
              .with(Field.NAME, "Long Meadow – west", "Long Meadow – west")
              .with(
                  Field.EDGES,
                  List.of(new Field.Edge(new Bearing(35), new Length(85.344), "lane", "road")));
      RecordId rocket =
          log.save(
                  Action.create("prepare", Kind.ROCKET, heron)
                      .and(Action.create("", Kind.FIELD, meadow)))
              .get(0);
      log.save(
          Action.change("done", Kind.ROCKET, rocket, Facts.none().with("note", Cell.emptied())));
      return rocket;
    }
  }

  private void atThePad(RecordId rocket) throws Fault {
    try (LogFolder log = LogFolder.open(pad, new PretendMachine(2))) {
      Facts card =
          Facts.none()
              .with(Flight.STATUS, Flight.Status.DRAFT)
              .with(Flight.ROCKET, rocket, "Heron")
              .with(Flight.MOTOR, "C6-5", "c6-5");
      RecordId flight = log.save(Action.create("begin card", Kind.FLIGHT, card)).get(0);
      Facts flown = Facts.none().with(Flight.STATUS, Flight.Status.FLOWN);
      log.save(Action.change("flown", Kind.FLIGHT, flight, flown));
      RecordId mistake = log.save(Action.create("begin card", Kind.FLIGHT, card)).get(0);
      log.save(Action.remove("remove card", Kind.FLIGHT, mistake));
      log.save(
          Action.change(
              "rename", Kind.ROCKET, rocket, Facts.none().with(Rocket.NAME, "Old Heron")));
    }
  }

  /** Knows of the evening, not of the pad: the two names are a true conflict. */
  private void atHome(RecordId rocket) throws Fault {
    try (LogFolder log = LogFolder.open(desktop, new PretendMachine(3))) {
      Facts facts =
          Facts.none().with(Rocket.NAME, "Grey Heron").with(Rocket.MASS, new Mass(0.041), "41 g");
      log.save(Action.change("weigh again", Kind.ROCKET, rocket, facts));
    }
  }

  private static void carry(Path from, Path to) throws IOException {
    Path journals = Files.createDirectories(to.resolve("journal"));
    for (Path journal : JournalFiles.in(from.resolve("journal"))) {
      Files.copy(journal, journals.resolve(journal.getFileName()));
    }
  }

  private static void sample(String name, Path folder, long seed) throws IOException {
    Path written =
        folder.resolve("journal").resolve(new PretendMachine(seed).freshRun() + ".jsonl");
    Path sample = SAMPLES.resolve(name);
    if (System.getProperty("padside.golden", "").equals("rewrite")) {
      Files.copy(written, sample, StandardCopyOption.REPLACE_EXISTING);
    }
    assertThat(written).hasSameBinaryContentAs(sample);
  }

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(Files.readString(SHARED.resolve("journal-line.schema.json")));
  }
}
