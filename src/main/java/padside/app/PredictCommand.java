package padside.app;

import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.preflight.Card;
import padside.preflight.Forecast;
import padside.preflight.Forecasts;
import padside.preflight.Outlook;
import padside.screen.AnswerText;
import padside.units.Length;
import padside.units.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Predicts one flight from options. */
@Command(
    name = "predict",
    description = "Predicts one flight from options; no log needed.",
    footer = {
      "",
      "Example: padside predict --mass 45g --diameter 24.8mm --motor C6-5 --chute 12in --wind 6mph",
      "In JSON speed_mps of ejection and delays is over the ground; the text tells the speed through"
          + " the air, which loads the canopy.",
      "Exit status: 0 done, 1 a file could not be read, 2 wrong or impossible input."
    })
final class PredictCommand implements Callable<Integer> {
  /** The usual three-foot rod; common practice, no source. */
  private static final Length USUAL_ROD = Length.ofCentimetres(90);

  @Spec private CommandSpec spec;
  @Mixin private FlightOptions options;
  @Mixin private Output output;
  @ParentCommand private RootCommand root;

  @Override
  public Integer call() throws Fault {
    if (options.rod == null) {
      options.rod = USUAL_ROD;
    }
    Card card = options.card();
    Forecast forecast = Forecasts.of(card);
    if (forecast.refused().isPresent()) {
      throw new ParameterException(spec.commandLine(), forecast.refused().get());
    }
    if (forecast.outlook().isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "Still missing: " + String.join(", ", forecast.missing()) + ".");
    }
    Outlook flight = forecast.outlook().get();
    UnitSystem system = options.settings(root::tell).units();
    output.print(
        PredictionJson.of(card, flight),
        () -> AnswerText.flight(card, flight, Output.WIDTH, system));
    return Exit.DONE;
  }
}
