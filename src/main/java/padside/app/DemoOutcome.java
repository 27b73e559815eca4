package padside.app;

import java.util.Map;
import java.util.Optional;
import java.util.Random;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.OutcomeTable;
import padside.form.Place;
import padside.preflight.Card;
import padside.preflight.Outlook;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.TimeSpan;

/**
 * What came of a flight of the season: the flight model under the truth the flier does not know,
 * told as the flier saw it.
 */
final class DemoOutcome {
  /** What a flier on the ground sees as early or late. */
  private static final double SEEN_S = 1.2;

  /** Rod-exit speed over wind below which a rocket is seen to turn into it. */
  private static final double TURNS_BELOW = 4;

  /** A landing above this is heard. */
  private static final Speed HARD = Speed.ofFeetPerSecond(20);

  private static final Map<String, Double> OPENED =
      Map.of("full", 1.0, "late_opening", 1.0, "part", 0.5, "tangled", 0.3);

  private final DemoNames names;
  private final DemoScatter scatter;
  private final Random random;

  DemoOutcome(DemoNames names, DemoScript script) {
    this.names = names;
    this.scatter = script.scatter();
    this.random = new Random(script.seed());
  }

  /** The outcome of a card flown, with what the step tells of it put over what the model says. */
  Facts of(Flight flight, Card card, DemoStep step) {
    DemoScatter.Draw draw = scatter.draw(random);
    Facts told = Facts.none().with(Flight.BURN, step.find("burn").orElse("nominal"));
    if (step.find("left_pad").equals(Optional.of("no"))) {
      return words(step, told);
    }
    DemoTruth truth = truth(flight, step, draw);
    Outlook flown = truth.flown(card);
    Facts seen = told.with(seen(flown, card)).with(found(flown, draw, step));
    if (step.find("timed").isPresent()) {
      seen =
          seen.with(timed(truth.delayS(card.motors().orElseThrow().top().motor()).orElseThrow()));
    }
    if (flight.facts().get(Flight.ALTIMETER).isPresent()) {
      seen = seen.with(altitude(flown, draw));
    }
    return words(step, seen);
  }

  /** Drag, impulse and delay as they really were. */
  DemoTruth truth(Flight flight, DemoStep step, DemoScatter.Draw draw) {
    DemoStep rocket = names.step(flight.rocket().orElseThrow());
    DemoStep lot = names.step(flight.lot().orElseThrow());
    boolean fires = !step.find("ejection").equals(Optional.of("none"));
    return new DemoTruth(
        rocket.factor("true_drag_coefficient") * draw.dragFactor(),
        lot.factor("true_impulse_factor")
            * step.factor("true_impulse_factor")
            * draw.impulseFactor(),
        Optional.of(
                lot.factor("true_delay_factor")
                    * step.factor("true_delay_factor")
                    * draw.delayFactor())
            .filter(factor -> fires),
        OPENED.getOrDefault(step.find("recovery").orElse("full"), 0.1));
  }

  private static Facts seen(Outlook flown, Card card) {
    double gust = card.wind().map(wind -> wind.gust().metresPerSecond()).orElse(0.0);
    boolean turned = flown.rodExitSpeed().metresPerSecond() < TURNS_BELOW * gust;
    return Facts.none()
        .with(Flight.BOOST, turned ? "weathercocked" : "straight")
        .with(Flight.EJECTION, flown.ejection().map(e -> ejection(flown, e)).orElse("none"))
        .with(Flight.RECOVERY, flown.descentRate().isPresent() ? "full" : "none")
        .with(Flight.LANDING, flown.descentRate().map(DemoOutcome::landing).orElse("ballistic"))
        .with(Flight.LANDED_ON, "grass");
  }

  private static String ejection(Outlook flown, Outlook.Ejection ejection) {
    double late = ejection.time().seconds() - flown.timeToApogee().seconds();
    return Math.abs(late) <= SEEN_S ? "at_apogee" : late < 0 ? "early" : "late";
  }

  private static String landing(Speed descent) {
    return descent.metresPerSecond() > HARD.metresPerSecond() ? "hard" : "soft";
  }

  /** Paced, unless nobody found it. */
  private static Facts found(Outlook flown, DemoScatter.Draw draw, DemoStep step) {
    if (step.find("landed_on").equals(Optional.of(OutcomeTable.LOST))) {
      return Facts.none();
    }
    Bearing toward = new Bearing(flown.landingBearing().degrees() + draw.bearingDeg());
    Length paced = new Length(flown.landingDistance().metres() * draw.distanceFactor());
    return DemoForms.typed(
            Place.of(Flight.LANDING_BEARING), Notations.bearing(), toward.compassPoint())
        .with(DemoForms.noted(Flight.LANDING_DISTANCE, Notations.distance(DemoForms.UNITS), paced));
  }

  private static Facts timed(double delayS) {
    return DemoForms.noted(
        Flight.MEASURED_DELAY, Notations.timeSpan(), new TimeSpan(Math.round(delayS * 10) / 10.0));
  }

  /** The charge before apogee ends the climb: the canopy stops it within a few feet. */
  private static Facts altitude(Outlook flown, DemoScatter.Draw draw) {
    Length highest =
        flown
            .ejection()
            .filter(e -> e.time().seconds() < flown.timeToApogee().seconds())
            .map(Outlook.Ejection::altitude)
            .orElse(flown.apogee());
    return DemoForms.noted(
        Flight.ALTITUDE,
        Notations.altitude(DemoForms.UNITS),
        new Length(highest.metres() + draw.readingM()));
  }

  private static Facts words(DemoStep step, Facts seen) {
    Facts told = seen;
    for (Column<String> aspect :
        java.util.List.of(
            Flight.BOOST, Flight.EJECTION, Flight.RECOVERY, Flight.LANDING, Flight.LANDED_ON)) {
      told = told.with(aspect, step.find(aspect.name()));
    }
    return told;
  }
}
