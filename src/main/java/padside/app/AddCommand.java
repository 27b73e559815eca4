package padside.app;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog;
import padside.flight.Kind;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Adds records from JSON on standard input: all of them or none. */
@Command(
    name = "add",
    description = "Adds a record, or an array of them, from JSON on standard input.",
    footer = {
      "",
      "Example: echo '{\"name\": \"Alder\", \"mass_kg\": 0.042}' | padside add rocket",
      "Fields are those of padside flights --json: SI, units in the names. With \"id\" a record"
          + " that is in the log is changed.",
      "Exit status: 0 done, 1 the log failed, 2 wrong input; nothing is added then."
    })
final class AddCommand implements Callable<Integer> {
  private static final String ID = "id";
  private static final int DEEPEST = 16;
  private static final int LONGEST_TEXT = 20_000;
  private static final int LARGEST_INPUT = 8 << 20;

  @Spec private CommandSpec spec;
  @Mixin private Output output;
  @ParentCommand private RootCommand root;

  @Parameters(
      paramLabel = "KIND",
      description = "rocket, motor, lot, device, altimeter, field, day, weather, flight or fix")
  private String kind;

  @Override
  public Integer call() throws Fault {
    Kind known =
        Kind.find(kind)
            .orElseThrow(
                () ->
                    refused(
                        "There is no kind of record called \""
                            + kind
                            + "\"; choose "
                            + String.join(
                                ", ", List.of(Kind.values()).stream().map(Kind::code).toList())
                            + "."));
    List<Action.Change> changes = new ArrayList<>();
    for (Object item : items(input())) {
      changes.add(change(known, item, changes.size() + 1));
    }
    try (FlightLog open = root.openLog()) {
      for (Action.Change change : changes) {
        if (change.record().isPresent() && open.find(known, change.record().get()).isEmpty()) {
          throw refused(
              "There is no " + known.code() + " " + change.record().get() + " to change.");
        }
      }
      List<RecordId> ids = open.save(new Action("add " + known.code(), changes));
      output.print(
          Map.of("ids", ids.stream().map(RecordId::text).toList()),
          () -> ids.stream().map(RecordId::text).toList());
    }
    return Exit.DONE;
  }

  private Object input() {
    try (InputStream in = System.in) {
      byte[] bytes = in.readNBytes(LARGEST_INPUT + 1);
      if (bytes.length > LARGEST_INPUT) {
        throw refused("The input is larger than 8 MB; add it in parts.");
      }
      return json().anyFrom(bytes);
    } catch (IOException e) {
      throw refused("The input is not JSON as expected: " + where(e));
    }
  }

  private static JSON json() {
    JsonFactory factory =
        JsonFactory.builder()
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxStringLength(LONGEST_TEXT)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    return JSON.builder(factory).enable(JSON.Feature.FAIL_ON_DUPLICATE_MAP_KEYS).build();
  }

  private List<?> items(Object input) {
    List<?> items = input instanceof List<?> list ? list : List.of(input == null ? "null" : input);
    if (items.isEmpty()) {
      throw refused("The input is an empty array; give at least one record.");
    }
    return items;
  }

  private Action.Change change(Kind known, Object item, int number) {
    if (!(item instanceof Map<?, ?> fields)) {
      throw refused("Record " + number + " is not a JSON object like {\"name\": \"Alder\"}.");
    }
    Facts facts = Facts.none();
    Optional<RecordId> record = Optional.empty();
    for (Map.Entry<?, ?> field : fields.entrySet()) {
      String name = (String) field.getKey();
      if (name.equals(ID)) {
        record = Optional.of(id(field.getValue(), number));
      } else {
        facts = facts.with(name, cell(known, name, field.getValue(), number));
      }
    }
    if (facts.isEmpty()) {
      throw refused("Record " + number + " has no fields.");
    }
    return new Action.Change(known, record, facts);
  }

  private RecordId id(Object value, int number) {
    if (value instanceof String text && !text.isBlank()) {
      return new RecordId(text);
    }
    throw refused("Record " + number + ": id is not a text.");
  }

  private Facts.Cell cell(Kind known, String name, Object value, int number) {
    Column<?> column =
        known
            .column(name)
            .orElseThrow(
                () ->
                    refused(
                        "Record "
                            + number
                            + ": "
                            + known.code()
                            + " has no field \""
                            + name
                            + "\"; it has "
                            + String.join(
                                ", ", known.columns().stream().<String>map(Column::name).toList())
                            + "."));
    if (value == null) {
      return Facts.Cell.emptied();
    }
    if (Facts.none().with(name, Facts.Cell.of(value)).get(column).isEmpty()) {
      throw refused(
          "Record "
              + number
              + ": \""
              + value
              + "\" is no value for "
              + name
              + " ("
              + column.meaning()
              + ").");
    }
    return Facts.Cell.of(value);
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  private static String where(IOException unreadable) {
    if (unreadable instanceof JsonProcessingException json && json.getLocation() != null) {
      JsonLocation at = json.getLocation();
      return String.format(
          "line %d, column %d: %s",
          at.getLineNr(), at.getColumnNr(), reason(json.getOriginalMessage()));
    }
    return firstLine(unreadable.getMessage());
  }

  /** What was wrong, without where the reader thinks it began. */
  private static String reason(String message) {
    return firstLine(message).replaceFirst(" *\\(start marker.*", "") + ".";
  }

  private static String firstLine(String text) {
    return text == null ? "unreadable" : text.lines().findFirst().orElse("unreadable");
  }
}
