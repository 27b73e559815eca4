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
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.report.WholeLog;
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
      "Another log: padside export --json --log OLD | padside add --log NEW",
      "Exit status: 0 done, 1 the log failed, 2 wrong input; nothing is added then."
    })
final class AddCommand implements Callable<Integer> {
  private static final int DEEPEST = 16;
  private static final int LONGEST_TEXT = 20_000;
  private static final int LARGEST_INPUT = 8 << 20;

  @Spec private CommandSpec spec;
  @Mixin private Output output;
  @ParentCommand private RootCommand root;

  @Parameters(
      arity = "0..1",
      paramLabel = "KIND",
      description =
          "rocket, motor, lot, device, altimeter, field, day, weather, flight or fix; without it"
              + " what padside export --json wrote is added")
  private String kind;

  @Override
  public Integer call() throws Fault {
    List<RecordId> ids = kind == null ? whole() : ofKind(known(kind));
    output.print(
        Map.of("ids", ids.stream().map(RecordId::text).toList()),
        () -> ids.stream().map(RecordId::text).toList());
    return Exit.DONE;
  }

  private List<RecordId> ofKind(Kind known) throws Fault {
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
      return open.save(new Action("add " + known.code(), changes));
    }
  }

  /** What {@code export --json} wrote: every record becomes a new one of this log. */
  private List<RecordId> whole() throws Fault {
    if (!(input() instanceof Map<?, ?> byKind)) {
      throw refused("The input is not a whole log; name the kind of these records.");
    }
    Incoming incoming = new Incoming();
    for (Map.Entry<?, ?> each : byKind.entrySet()) {
      if (!each.getKey().equals(WholeLog.VERSION)) {
        take(known((String) each.getKey()), each.getValue(), incoming);
      } else if (!(each.getValue() instanceof Integer version) || version != 1) {
        throw refused("This log was written by a newer Padside; use that one to add it.");
      }
    }
    if (incoming.count() == 0) {
      throw refused("The input has no records; give at least one.");
    }
    try (FlightLog open = root.openLog()) {
      return incoming.save(open, "add log").values().stream().sorted().toList();
    }
  }

  private void take(Kind known, Object value, Incoming incoming) {
    if (!(value instanceof List<?> records)) {
      throw refused("\"" + known.code() + "\" is not an array of records.");
    }
    int number = 1;
    for (Object item : records) {
      String what = known.code() + " " + number++;
      RecordJson record = new RecordJson(known, what, this::refused);
      Map<?, ?> members = record.members(item);
      String name = record.id(members).orElse(what);
      if (incoming.has(name)) {
        throw refused(what + " has the id \"" + name + "\" of another record; each has its own.");
      }
      incoming.add(name, known, record.facts(members));
    }
  }

  private Kind known(String code) {
    return Kind.find(code)
        .orElseThrow(
            () ->
                refused(
                    "There is no kind of record called \""
                        + code
                        + "\"; choose "
                        + String.join(
                            ", ", List.of(Kind.values()).stream().map(Kind::code).toList())
                        + "."));
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
    RecordJson record = new RecordJson(known, "Record " + number, this::refused);
    Map<?, ?> members = record.members(item);
    return new Action.Change(known, record.id(members).map(RecordId::new), record.facts(members));
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
