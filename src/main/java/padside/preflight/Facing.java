package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.flight.Weather;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.physics.Stage;
import padside.physics.ThrustCurve;
import padside.safety.Case;
import padside.site.FieldShape;
import padside.units.Mass;
import padside.units.Speed;
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
    return new Case(craft(), predicted(), ground(), sky(), lacks(), further());
  }

  private Case.Craft craft() {
    return new Case.Craft(
        card.motors(),
        flown.map(f -> f.prediction().liftoffMass()),
        flown.map(Flown::launch).flatMap(Facing::upperMass),
        flown.map(f -> f.launch().propellantMass()),
        flown.map(f -> f.prediction().totalImpulse()),
        card.tilt(),
        ownLimit(),
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

  /** The lesser of the flier's figures for all rockets and for this one. */
  private Optional<Speed> ownLimit() {
    return Stream.concat(
            settings.ownLimit().stream(), card.rocket().flatMap(Rocket::ownLimit).stream())
        .min(java.util.Comparator.comparingDouble(Speed::metresPerSecond));
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

  private List<Ruling.Finding> further() {
    List<Ruling.Finding> findings = new ArrayList<>();
    prepared
        .refused()
        .ifPresent(
            sentence ->
                findings.add(
                    new Ruling.Finding(
                        "flight", Ruling.Verdict.UNKNOWN, sentence, "flight model")));
    flown
        .filter(flight -> !flight.prediction().leftRod())
        .ifPresent(
            flight ->
                findings.add(
                    new Ruling.Finding(
                        "flight",
                        Ruling.Verdict.NO_GO,
                        Sentences.tooHeavy(flight.prediction(), card),
                        "flight model")));
    flown
        .filter(flight -> flight.prediction().impactUnderPower())
        .ifPresent(flight -> findings.add(underPower()));
    flown
        .filter(f -> f.launch().curveQuality() == ThrustCurve.Quality.APPROXIMATE)
        .ifPresent(flight -> findings.add(approximate()));
    Stream.concat(card.lotRecord().stream(), card.boosterRecord().stream())
        .distinct()
        .filter(lot -> lot.malfunctioned() > 0)
        .forEach(lot -> findings.add(lot(lot)));
    flown
        .filter(flight -> !flight.launch().wind().directionKnown())
        .ifPresent(flight -> findings.add(directionless()));
    field.flatMap(FieldShape::unpaced).ifPresent(gap -> findings.add(unpaced(gap)));
    return findings;
  }

  private static Ruling.Finding unpaced(FieldShape.Unpaced gap) {
    String from = gap.from().compassPoint();
    String to = gap.to().compassPoint();
    String sentence =
        from.equals(to)
            ? "one edge alone was given; the field is taken as that far every way"
            : "nobody paced the field's edge between "
                + from
                + " and "
                + to
                + "; the nearer of the two is taken there";
    return new Ruling.Finding("field edges", Ruling.Verdict.GO, sentence, "field as paced");
  }

  private static Ruling.Finding lot(Card.LotRecord lot) {
    return new Ruling.Finding(
        "lot",
        Ruling.Verdict.MARGINAL,
        "of lot %s %d fired, a motor malfunctioned in %s"
            .formatted(
                lot.code(),
                lot.fired(),
                lot.malfunctioned() == 1 ? "1 flight" : lot.malfunctioned() + " flights"),
        "the log; common practice, no source");
  }

  private static Ruling.Finding directionless() {
    return new Ruling.Finding(
        "wind direction",
        Ruling.Verdict.GO,
        "the wind has no direction, so the field's limit is that of the worst one",
        "flight model");
  }

  private static Ruling.Finding underPower() {
    return new Ruling.Finding(
        "flight",
        Ruling.Verdict.NO_GO,
        "it hits the ground while the motor still burns; set the rod upright or choose a stronger"
            + " motor",
        "flight model");
  }

  private static Ruling.Finding approximate() {
    return new Ruling.Finding(
        "motor data",
        Ruling.Verdict.GO,
        "thrust is taken as constant, so rod-exit speed is approximate and on the low side for"
            + " motors with an ignition spike",
        "flight model");
  }
}
