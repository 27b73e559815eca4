package padside.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import padside.flight.Logbook;
import padside.flight.Rocket;
import padside.search.Folding;
import padside.search.Search;
import padside.search.Search.Part;
import padside.units.Reading;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which flights are wanted: a line as the Log screen takes it, or an option for each filter. */
final class SearchOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Parameters(
      paramLabel = "WORDS",
      arity = "0..*",
      description =
          "only flights with all these words, anywhere in what is told of them; filters as on the"
              + " Log screen: rocket: motor: lot: field: outcome: on: from: to: open")
  private List<String> line = new ArrayList<>();

  @Option(names = "--text", paramLabel = "WORDS", description = "the same")
  private String text;

  @Option(
      names = "--rocket",
      paramLabel = "NAME",
      description = "only rockets with this in their name")
  private String rocket;

  @Option(names = "--motor", paramLabel = "MOTOR", description = "only motors with this in them")
  private String motor;

  @Option(
      names = "--lot",
      paramLabel = "CODE",
      description = "only lots with this in their code or date code")
  private String lot;

  @Option(
      names = "--field",
      paramLabel = "NAME",
      description = "only fields with this in their name")
  private String field;

  @Option(
      names = "--outcome",
      paramLabel = "WORDS",
      description = "only what came to this, such as nominal, malfunction, \"ejection late\"")
  private String outcome;

  @Option(
      names = {"--date", "--on"},
      paramLabel = "DATE",
      description = "only this day's, month's or year's, such as 2026-05-02 or 2026-05")
  private String on;

  @Option(names = "--from", paramLabel = "DATE", description = "only that day's and later ones")
  private String from;

  @Option(names = "--to", paramLabel = "DATE", description = "only that day's and earlier ones")
  private String to;

  @Option(
      names = "--open",
      description = "only those with something noted to mend that is not mended")
  private boolean open;

  /** All of it as one search; what cannot be read is refused. */
  Search search() {
    Search search =
        value(Search.read(String.join(" ", line)))
            .and(value(Search.read(Optional.ofNullable(text).orElse(""))))
            .and(new Search(List.of(), List.of(), open));
    for (Map.Entry<Part, Optional<String>> option : options().entrySet()) {
      Optional<Search.Filter> filter =
          option.getValue().flatMap(typed -> value(Search.filter(option.getKey().code(), typed)));
      search = filter.map(search::and).orElse(search);
    }
    return search;
  }

  private Map<Part, Optional<String>> options() {
    Map<Part, Optional<String>> options = new LinkedHashMap<>();
    options.put(Part.ROCKET, Optional.ofNullable(rocket));
    options.put(Part.MOTOR, Optional.ofNullable(motor));
    options.put(Part.LOT, Optional.ofNullable(lot));
    options.put(Part.FIELD, Optional.ofNullable(field));
    options.put(Part.OUTCOME, Optional.ofNullable(outcome));
    options.put(Part.ON, Optional.ofNullable(on));
    options.put(Part.FROM, Optional.ofNullable(from));
    options.put(Part.TO, Optional.ofNullable(to));
    return options;
  }

  /** A name nothing has is more likely mistyped than meant. */
  void refuseUnknown(Logbook book) {
    refuseUnknown("rocket", rocket, book.rockets(), Rocket::name);
    refuseUnknown("field", field, book.fields(), each -> each.name());
  }

  private <T> void refuseUnknown(
      String what, String typed, List<T> known, Function<T, String> name) {
    if (typed == null) {
      return;
    }
    String wanted = Folding.of(typed.strip());
    if (known.stream().noneMatch(each -> Folding.of(name.apply(each)).contains(wanted))) {
      throw refused(
          "There is no "
              + what
              + " called "
              + Reading.echo(typed)
              + " in this log; leave --"
              + what
              + " out to see all flights.");
    }
  }

  private <T> T value(Reading<T> reading) {
    return reading.value().orElseThrow(() -> refused(reading.objection().orElseThrow()));
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(command.commandLine(), sentence);
  }
}
