package padside.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.Ruling;
import padside.preflight.Advice;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.Preflight;
import padside.preflight.Settings;
import padside.screen.AnswerText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Gives the verdict for options or for a card in the log. */
@Command(
    name = "check",
    description = "The verdict for a flight from options, or for a card in the log.",
    footer = {
      "",
      "Example: padside check --mass 45g --diameter 24.8mm --motor C6-5 --chute 12in --rod 90cm"
          + " --wind 6g9mph --wind-from SW --field-radius 300ft",
      "The check advises; the flier decides.",
      "Exit status: 0 GO or MARGINAL, 3 NO-GO, 4 UNKNOWN, 2 wrong or impossible input, 1 the log"
          + " or a file failed."
    })
final class CheckCommand implements Callable<Integer> {
  /** What may be said beside a card in the log, which has its own of everything else. */
  private static final Set<String> WITH_A_CARD =
      Set.of("--card", "--rules", "--units", "--json", "--log");

  @Spec private CommandSpec spec;
  @Mixin private FlightOptions options;
  @Mixin private Output output;
  @ParentCommand private RootCommand root;

  @Option(
      names = "--card",
      paramLabel = "ID",
      description = "a card in the log in place of the options that describe a flight")
  private String card;

  @Override
  public Integer call() throws Fault {
    Settings settings = options.settings(root::tell);
    Card checked = card == null ? options.card() : cardInLog();
    Answer answer = new Preflight(settings).advised(checked);
    output.print(
        json(checked, answer),
        () -> AnswerText.whole(checked, answer, Output.WIDTH, settings.units()));
    return switch (answer.ruling().verdict()) {
      case GO, MARGINAL -> Exit.DONE;
      case NO_GO -> Exit.NO_GO;
      case UNKNOWN -> Exit.UNKNOWN;
    };
  }

  /** An option that would go unheard is refused. */
  private void refuseOptionsBesideCard() {
    spec.commandLine().getParseResult().matchedOptions().stream()
        .map(OptionSpec::longestName)
        .filter(name -> !WITH_A_CARD.contains(name))
        .findFirst()
        .ifPresent(
            name -> {
              throw new ParameterException(
                  spec.commandLine(),
                  "A card in the log is checked as it stands, so --card takes no "
                      + name
                      + "; leave one of them out.");
            });
  }

  private Card cardInLog() throws Fault {
    refuseOptionsBesideCard();
    try (FlightLog open = root.openLogToRead()) {
      Flight flight =
          open.find(Kind.FLIGHT, new RecordId(card))
              .map(stored -> new Flight(stored.id(), stored.facts()))
              .orElseThrow(
                  () ->
                      new ParameterException(
                          spec.commandLine(),
                          "There is no card "
                              + card
                              + " in this log; padside flights --json tells the ids."));
      return Card.of(
          flight, Logbook.readWhole(open, Shipped.motors()), Shipped.outcomes(), Optional.empty());
    }
  }

  private static Map<String, Object> json(Card card, Answer answer) {
    Map<String, Object> json =
        answer
            .outlook()
            .map(outlook -> PredictionJson.of(card, outlook))
            .orElseGet(LinkedHashMap::new);
    Ruling ruling = answer.ruling();
    json.put("verdict", ruling.verdict().word());
    json.put("reason", ruling.reason());
    json.put("limit_mps", ruling.limit().map(limit -> limit.metresPerSecond()).orElse(null));
    json.put("limits", ruling.limits().stream().map(CheckCommand::json).toList());
    json.put("findings", ruling.findings().stream().map(CheckCommand::json).toList());
    json.put(
        "advice",
        answer.advice().map(Advice::helps).orElse(List.of()).stream()
            .map(CheckCommand::json)
            .toList());
    json.put("advice_remark", answer.advice().flatMap(Advice::remark).orElse(null));
    return json;
  }

  private static Map<String, Object> json(Advice.Help help) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("change", help.change());
    json.put("verdict", help.verdict().word());
    json.put("limit_mps", help.limit().map(limit -> limit.metresPerSecond()).orElse(null));
    json.put("binds", help.binds());
    json.put("apogee_m", help.apogee().map(apogee -> apogee.metres()).orElse(null));
    json.put("delay_error_s", help.delayError().map(error -> error.seconds()).orElse(null));
    return json;
  }

  private static Map<String, Object> json(Ruling.Limit limit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("rule", limit.rule());
    json.put("limit_mps", limit.wind().metresPerSecond());
    json.put("kind", kind(limit.past()));
    json.put("words", limit.words());
    json.put("source", limit.source());
    return json;
  }

  private static Map<String, Object> json(Ruling.Finding finding) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("rule", finding.rule());
    json.put("kind", kind(finding.verdict()));
    json.put("sentence", finding.sentence());
    json.put("source", finding.source());
    return json;
  }

  private static String kind(Ruling.Verdict verdict) {
    return verdict.word().toLowerCase(java.util.Locale.ROOT);
  }
}
