package padside.preflight;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import padside.flight.Ruling.Verdict;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.physics.WindProfile;
import padside.safety.Case;
import padside.site.FieldShape;
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

  private static final Case.FieldLimit ANY_WIND =
      new Case.FieldLimit(FieldLimits.SEARCHED_TO, Optional.empty());

  private final Check check;
  private final Card card;
  private final FieldShape field;
  private final BooleanSupplier abandoned;
  private final Map<String, Trial> ruled = new HashMap<>();
  private final Map<String, Trial> measured = new HashMap<>();

  /** Of a card with a wind over a field with that shape. */
  Trials(Check check, Card card, FieldShape field, BooleanSupplier abandoned) {
    this.check = check;
    this.card = card;
    this.field = field;
    this.abandoned = abandoned;
  }

  /** Of changes in order those whose verdict may be that good, at a glance. */
  List<Trial> promising(List<Change> changes, Verdict wanted) {
    double clear = wanted == Verdict.GO ? testedMps() / (1 - check.marginalShare()) : testedMps();
    List<Trial> promising = new ArrayList<>();
    for (Change change : changes) {
      goOn();
      if (maySuit(change.parts(), wanted) && staysInside(change.to().apply(card), clear)) {
        Trial trial = ruled(change);
        if (trial.verdict().compareTo(wanted) <= 0) {
          promising.add(trial);
        }
      }
    }
    return promising;
  }

  /** What is amiss with either of two changes alone is so with both together, but for drift. */
  private boolean maySuit(List<Change> parts, Verdict wanted) {
    return parts.isEmpty()
        || Collections.disjoint(amiss(parts.get(0), wanted), amiss(parts.get(1), wanted));
  }

  private Set<String> amiss(Change change, Verdict wanted) {
    return ruled(change).amiss(wanted, testedMps(), check.marginalShare());
  }

  /** By all rules but the field's. */
  private Trial ruled(Change change) {
    Trial known = ruled.get(change.words());
    if (known != null) {
      return known;
    }
    Card changed = change.to().apply(card);
    Trial trial = new Trial(change, check.nominal(changed, (flown, shape) -> ANY_WIND));
    ruled.put(change.words(), trial);
    return trial;
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
        change.words(),
        words -> new Trial(change, check.measured(change.to().apply(card), abandoned)));
  }

  /** Those that look as if they raised the limit above a wind, the highest first. */
  List<Trial> raising(List<Change> changes, double aboveMps) {
    List<Trial> trials = new ArrayList<>();
    for (Change change : changes) {
      goOn();
      Card changed = change.to().apply(card);
      trials.add(new Trial(change, check.nominal(changed, this::drifting)));
    }
    return trials.stream()
        .filter(trial -> !trial.forbidden() && trial.limitMps() > aboveMps)
        .sorted(Comparator.comparingDouble(Trial::limitMps).reversed())
        .toList();
  }

  /** The limit by the flight as planned, drift taken as growing evenly with the wind. */
  private Case.FieldLimit drifting(Flown flown, FieldShape shape) {
    Prediction.Landing landing = flown.prediction().landing();
    double share = landing.distance().metres() / shape.reach(landing.bearing()).metres();
    double mps = Math.min(testedMps() / share, FieldLimits.SEARCHED_TO.metresPerSecond());
    return new Case.FieldLimit(new Speed(Double.isNaN(mps) ? 0 : mps), Optional.empty());
  }

  /** Whether the flight as planned lands inside; where no direction is known, perhaps. */
  private boolean staysInside(Card changed, double testedMps) {
    return check
        .prepared(changed)
        .launch()
        .filter(launch -> !launch.wind().directionKnown() || inside(launch, testedMps))
        .isPresent();
  }

  private boolean inside(Launch launch, double testedMps) {
    Wind scaled = launch.wind().wind().scaledTo(new Speed(testedMps));
    WindProfile profile = new WindProfile(scaled, launch.wind().readingHeight());
    Prediction.Landing landing = Flight.predict(launch.withWind(profile)).landing();
    return field.contains(landing.east().metres(), landing.north().metres());
  }

  private double testedMps() {
    return card.wind().orElseThrow().tested().metresPerSecond();
  }

  private void goOn() {
    if (abandoned.getAsBoolean()) {
      throw new CancellationException("another question came");
    }
  }
}
