package padside.preflight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.physics.WindProfile;
import padside.safety.Case;
import padside.site.FieldShape;
import padside.site.Landing;
import padside.units.Speed;
import padside.units.Wind;

/**
 * Tries changes on one card. A glance flies the flight as planned and holds its landing against the
 * field where the limit would have to be; only what looks well then is measured, with scatter.
 */
final class Trials {
  /** Of changes of the same kinds so many are shown. */
  private static final int SHOWN_ALIKE = 2;

  /** Of changes of the same kinds so many are measured before the next kinds have their turn. */
  private static final int MEASURED_ALIKE = 6;

  private final Check check;
  private final Card card;
  private final BooleanSupplier abandoned;
  private final Map<Change, Trial> measured = new HashMap<>();

  Trials(Check check, Card card, BooleanSupplier abandoned) {
    this.check = check;
    this.card = card;
    this.abandoned = abandoned;
  }

  /** Each change at a glance, the verdict no worse than measured. */
  List<Trial> glance(List<Change> changes) {
    List<Trial> trials = new ArrayList<>();
    for (Change change : changes) {
      goOn();
      trials.add(new Trial(change, check.nominal(change.to().apply(card), this::hoped)));
    }
    return trials;
  }

  /**
   * Of changes in order those that measured are as wanted.
   *
   * @param glanced those that looked so
   * @param most how many are wanted
   */
  List<Trial> confirmed(List<Trial> glanced, Predicate<Trial> wanted, int most) {
    Map<List<Change.Kind>, Integer> tried = new HashMap<>();
    Map<List<Change.Kind>, Integer> shown = new HashMap<>();
    List<Trial> found = new ArrayList<>();
    for (Trial glance : glanced) {
      List<Change.Kind> kinds = glance.change().kinds();
      boolean more =
          found.size() < most
              && shown.getOrDefault(kinds, 0) < SHOWN_ALIKE
              && tried.getOrDefault(kinds, 0) < MEASURED_ALIKE;
      if (more) {
        tried.merge(kinds, 1, Integer::sum);
        Trial trial = measure(glance.change());
        if (wanted.test(trial)) {
          shown.merge(kinds, 1, Integer::sum);
          found.add(trial);
        }
      }
    }
    return found;
  }

  private Trial measure(Change change) {
    goOn();
    return measured.computeIfAbsent(
        change, it -> new Trial(it, check.measured(it.to().apply(card), abandoned)));
  }

  /** Those that look as if they raised the limit above a wind, the highest first. */
  List<Trial> raising(List<Trial> glanced, double aboveMps) {
    return glanced.stream()
        .filter(trial -> !trial.forbidden() && trial.checked().flown().isPresent())
        .filter(trial -> promisedMps(trial) > aboveMps)
        .sorted(Comparator.comparingDouble(this::promisedMps).reversed())
        .toList();
  }

  /** A limit by the flight as planned, drift taken as growing evenly with the wind. */
  private double promisedMps(Trial trial) {
    FieldShape field = trial.checked().field().orElseThrow();
    Prediction flight = trial.checked().flown().orElseThrow().prediction();
    Prediction.Landing landing = flight.landing();
    double reachM = field.reach(landing.bearing()).metres();
    double shareOut = landing.distance().metres() / reachM;
    double drifted = shareOut > 0 ? testedMps(card) / shareOut : Double.MAX_VALUE;
    return Math.min(trial.limitOfRulesMps(), drifted);
  }

  /** The field's limit if scatter were none, told in three steps: far, just enough, too little. */
  private Case.FieldLimit hoped(Flown flown, FieldShape field) {
    Launch launch = flown.launch();
    Wind wind = launch.wind().wind();
    double now = wind.tested().metresPerSecond();
    double clear = now / (1 - check.marginalShare());
    if (!launch.wind().directionKnown() || inside(launch, field, clear)) {
      return new Case.FieldLimit(FieldLimits.SEARCHED_TO, Optional.empty());
    }
    boolean enough = inside(launch, field, now);
    return new Case.FieldLimit(new Speed(enough ? now : 0), Optional.empty());
  }

  private static boolean inside(Launch launch, FieldShape field, double testedMps) {
    Wind scaled = launch.wind().wind().scaledTo(new Speed(testedMps));
    WindProfile profile = new WindProfile(scaled, launch.wind().readingHeight());
    Prediction.Landing landing = Flight.predict(launch.withWind(profile)).landing();
    return field.contains(Landing.of(landing.east().metres(), landing.north().metres()));
  }

  private static double testedMps(Card card) {
    return card.wind().orElseThrow().tested().metresPerSecond();
  }

  private void goOn() {
    if (abandoned.getAsBoolean()) {
      throw new CancellationException("another question came");
    }
  }
}
