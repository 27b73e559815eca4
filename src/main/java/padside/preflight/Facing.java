package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.physics.Stage;
import padside.safety.Case;
import padside.site.FieldShape;
import padside.units.Mass;
import padside.units.TimeSpan;

/**
 * A card and its flight in the form the rules are held against.
 *
 * @param field the outline of the card's field, absent when nobody paced an edge
 */
record Facing(
    Card card,
    Launches.Prepared prepared,
    Optional<FieldShape> field,
    Optional<Flown> flown,
    Settings settings) {

  Case asCase() {
    return new Case(craft(), predicted(), ground(), sky(), lacks(), new OwnFindings(this).list());
  }

  private Case.Craft craft() {
    return new Case.Craft(
        card.motors(),
        flown.map(f -> f.prediction().liftoffMass()),
        flown.map(Flown::launch).flatMap(Facing::upperMass),
        flown.map(f -> f.launch().propellantMass()),
        flown.map(f -> f.prediction().totalImpulse()),
        card.tilt(),
        settings.own().withWind(card.rocket().flatMap(Rocket::ownLimit)),
        card.openFixes());
  }

  /** What the topmost motors lift once the booster has fallen, themselves included. */
  private static Optional<Mass> upperMass(Launch launch) {
    Stage top = launch.stages().get(launch.stages().size() - 1);
    double fallenKg =
        launch.stages().stream().mapToDouble(stage -> stage.dropped().kilograms()).sum();
    double motorsKg = top.count() * top.motor().totalMass().kilograms();
    double bareKg = launch.airframe().massWithoutMotor().kilograms() - fallenKg;
    return Optional.of(new Mass(bareKg + motorsKg)).filter(mass -> launch.stages().size() > 1);
  }

  private Case.Predicted predicted() {
    if (flown.isEmpty()) {
      return Case.Predicted.nothing();
    }
    Prediction flight = flown.get().prediction();
    boolean opens = flown.get().launch().recovery().isPresent();
    return new Case.Predicted(
        Optional.of(flight.thrustToWeight()),
        Optional.of(flight.rodExitSpeed()),
        flight.leftRod() ? Optional.of(flight.apogee()) : Optional.empty(),
        flight.ejection().map(ejection -> firing(flight, ejection)),
        flight.leftRod() && opens
            ? Optional.of(new Case.Touchdown(flight.landing().verticalSpeed(), !flight.ballistic()))
            : Optional.empty());
  }

  private static Case.Firing firing(Prediction flight, Prediction.Ejection ejection) {
    double late = ejection.time().seconds() - flight.timeToApogee().seconds();
    return new Case.Firing(new TimeSpan(late), ejection.airspeed());
  }

  private Case.Ground ground() {
    return new Case.Ground(
        field.map(FieldShape::smallestSide).or(() -> card.field().flatMap(Field::smallestSide)),
        flown.flatMap(Flown::field),
        card.day().flatMap(Day::permission),
        card.day().flatMap(Day::fireBan));
  }

  private Case.Sky sky() {
    return new Case.Sky(
        card.wind(),
        card.weather().flatMap(Weather::cloudBase),
        card.weather().flatMap(Weather::temperature));
  }

  private List<String> lacks() {
    List<String> lacks = new ArrayList<>(prepared.missing());
    lacks.addAll(card.unread());
    if (card.field().isEmpty()) {
      lacks.add(Case.FIELD);
    }
    if (card.tilt().radians() > 0 && card.tiltToward().isEmpty()) {
      lacks.add("where the rod leans toward");
    }
    return lacks;
  }
}
