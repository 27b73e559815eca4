package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import padside.flight.Field;
import padside.flight.Ruling;
import padside.motor.MotorStack;
import padside.physics.Dispersion;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.TrackPoint;
import padside.safety.Case;
import padside.safety.HouseRules;
import padside.safety.RuleSet;
import padside.safety.RuleSets;
import padside.safety.Rules;
import padside.safety.Sourced;
import padside.site.FieldShape;
import padside.units.Angle;
import padside.units.Length;
import padside.units.Reading;
import padside.units.Speed;
import padside.units.TimeSpan;

/** Puts cards to flight model, field and rules under one code and one flier's settings. */
final class Check {
  private static final int PATH_POINTS = 90;
  private static final double SHORTEST_STEP_S = 0.01;

  /** Where a code names no distance to stand back: the US model code's above D, seen. */
  private static final Length USUAL_STAND_BACK = Length.ofFeet(30);

  private final Settings settings;
  private final Reading<RuleSet> code;
  private final HouseRules house;
  private final Scattering scattering;
  private final Scattering few;

  /** A card with what came of it. */
  record Checked(
      Card card,
      Optional<FieldShape> field,
      Launches.Prepared prepared,
      Optional<Flown> flown,
      Ruling ruling) {}

  Check(Settings settings, Scattering scattering) {
    this.settings = settings;
    this.scattering = scattering;
    this.few = scattering.few();
    this.code = RuleSets.find(settings.ruleSet());
    this.house =
        settings
            .rodDivisor()
            .map(divisor -> RuleSets.house().withRodDivisor(divisor))
            .orElse(RuleSets.house());
  }

  /** Everything but what would help. */
  Checked whole(Card card, BooleanSupplier abandoned) {
    return flown(
        card,
        flight -> far(flight, card, abandoned),
        (flight, field) -> FieldLimits.of(flight.launch(), field, of(card, scattering), abandoned));
  }

  /** The flight as planned under the rules, the field's limit taken from elsewhere. */
  Checked nominal(Card card, BiFunction<Flown, FieldShape, Case.FieldLimit> limit) {
    return flown(card, UnaryOperator.identity(), limit);
  }

  /** As {@link #whole} without the spread, and with a limit of the field of fewer draws. */
  Checked measured(Card card, BooleanSupplier abandoned) {
    return flown(
        card,
        flight -> sunlit(flight, card),
        (flight, field) -> FieldLimits.cautious(flight.launch(), field, of(card, few), abandoned));
  }

  /**
   * A card's flight under the rules.
   *
   * @param told what is to be known of a flight that leaves its rod beside the prediction
   * @param limit the field's, of a flight that lands
   */
  private Checked flown(
      Card card, UnaryOperator<Flown> told, BiFunction<Flown, FieldShape, Case.FieldLimit> limit) {
    Launches.Prepared prepared = prepared(card);
    Optional<FieldShape> field = card.field().flatMap(FieldShape::of);
    Optional<Flown> flown =
        prepared
            .launch()
            .map(launch -> Flown.of(launch, Flight.predict(launch)))
            .map(flight -> flight.prediction().leftRod() ? told.apply(flight) : flight)
            .map(
                flight ->
                    flight.withField(
                        field
                            .filter(shape -> flight.lands())
                            .map(shape -> limit.apply(flight, shape))));
    Case faced = new Facing(card, prepared, field, flown, settings).asCase();
    return new Checked(card, field, prepared, flown, ruling(faced));
  }

  /** The launch of a card, its drag asked for with the confidence that all else is told by. */
  Launches.Prepared prepared(Card card) {
    return Launches.of(card, settings.confidence());
  }

  private Flown sunlit(Flown flown, Card card) {
    List<Outlook.PathPoint> path = path(flown);
    return flown.withPath(path, sunlight(card, flown.launch(), path));
  }

  /** Whether a card lacks what its field's limit needs. */
  boolean lacks(Card card) {
    Launches.Prepared prepared = prepared(card);
    return !prepared.missing().isEmpty()
        || !card.unread().isEmpty()
        || card.wind().isEmpty()
        || card.field().flatMap(FieldShape::of).isEmpty();
  }

  /** The largest angle of the rod the code allows; absent where none is known. */
  Optional<Angle> mostTilt() {
    return code.value().flatMap(RuleSet::launcherAngle).map(Sourced::value);
  }

  /** The share of a limit that a wind keeps from it to be GO. */
  double marginalShare() {
    return house.marginalShare();
  }

  private Flown far(Flown flown, Card card, BooleanSupplier abandoned) {
    Scattering own = of(card, scattering);
    Dispersion flights = Dispersion.fly(flown.launch(), own.sizes(), own.draws(), abandoned);
    return sunlit(flown, card).withScattered(flights);
  }

  /** With what the log leaves open of the drag of the card's rocket. */
  private Scattering of(Card card, Scattering usual) {
    double share = card.drag(settings.confidence()).share();
    return usual.withDragShare(Math.min(Scattering.MOST_SHARE, share));
  }

  private Ruling ruling(Case faced) {
    return code.value()
        .map(rules -> new Rules(rules, house).on(faced, settings.units()))
        .orElseGet(() -> unknownCode(code.objection().orElseThrow()));
  }

  private static Ruling unknownCode(String objection) {
    Ruling.Finding finding =
        new Ruling.Finding("code", Ruling.Verdict.UNKNOWN, objection, "settings");
    return new Ruling(
        Ruling.Verdict.UNKNOWN, Optional.empty(), objection, List.of(), List.of(finding));
  }

  private static List<Outlook.PathPoint> path(Flown flown) {
    double seconds = flown.prediction().flightTime().seconds() / PATH_POINTS;
    TimeSpan step = new TimeSpan(Math.max(SHORTEST_STEP_S, seconds));
    List<Outlook.PathPoint> points = new ArrayList<>();
    for (TrackPoint point : Flight.track(flown.launch(), step)) {
      points.add(new Outlook.PathPoint(point.time(), point.east(), point.north(), point.height()));
    }
    return points;
  }

  private Optional<Sunlight> sunlight(Card card, Launch launch, List<Outlook.PathPoint> path) {
    boolean complex = card.motors().map(MotorStack::isComplex).orElse(false);
    Length standOff =
        code.value()
            .flatMap(rules -> rules.standBack(launch.totalImpulse(), complex))
            .map(Sourced::value)
            .orElse(USUAL_STAND_BACK);
    Optional<Field.Coordinates> place = card.field().flatMap(Field::coordinates);
    return place.flatMap(pad -> card.at().flatMap(at -> Sunlight.of(path, pad, at, standOff)));
  }

  /** The outlook of a checked flight; absent when it does not leave the rod. */
  Optional<Outlook> outlook(Checked checked) {
    Speed safe = house.advisedEjectionAirspeed();
    return checked
        .flown()
        .filter(flown -> flown.prediction().leftRod())
        .map(
            flown ->
                Outlooks.of(
                    flown, checked.card(), spread(checked, flown), safe, settings.confidence()));
  }

  /** Where the wind has no direction, or the rod leans nobody said where, it would mislead. */
  private Optional<Spread> spread(Checked checked, Flown flown) {
    Card card = checked.card();
    boolean directed =
        card.wind().isPresent()
            && flown.launch().wind().directionKnown()
            && (card.tilt().radians() == 0 || card.tiltToward().isPresent());
    return flown
        .scattered()
        .filter(flights -> directed && flown.lands())
        .map(flights -> Spreads.of(flights, checked.field(), settings));
  }

  /** What the code asks besides, the same for every card. */
  List<Answer.Reminder> reminders() {
    return code.value().map(RuleSet::cautions).orElse(List.of()).stream()
        .map(caution -> new Answer.Reminder(caution.text().value(), caution.text().cited()))
        .toList();
  }
}
