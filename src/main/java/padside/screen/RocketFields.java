package padside.screen;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.form.Below;
import padside.form.Choices;
import padside.form.FormField;
import padside.form.Range;
import padside.form.Rule;
import padside.form.Texts;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** The form of a rocket. */
final class RocketFields {
  /** The model code's lift-off mass is 1500 g at most (NAR Model Rocket Safety Code, 2012). */
  private static final Mass LARGEST_MASS = Mass.ofGrams(1500);

  private RocketFields() {}

  static RecordForm.Sheet sheet(World world) {
    UnitSystem units = world.settings().units();
    return new RecordForm.Sheet(
        Kind.ROCKET,
        "rocket",
        List.of(
            FormField.of(Rocket.NAME, "Name", new Texts("Skylark"), "What you call it."),
            mass(units),
            boosterMass(units),
            diameter(units),
            drag(),
            mount(),
            rod(units),
            ownLimit(units),
            FormField.choice(
                Rocket.DEVICE,
                "Usual recovery",
                new CardChoices(world).devices(units),
                "What it usually comes down on; the range box holds parachutes and streamers."),
            FormField.of(Rocket.FLIER, "Flier", new Texts(""), "Whose it is."),
            FormField.of(Rocket.NOTE, "Note", new Texts(""), "Anything worth knowing."),
            fixed()));
  }

  /**
   * The same above which stands the drag coefficient of the rocket's newest prediction. What its
   * altitudes say of now is worked out with the next check: that takes too long for a key.
   */
  static RecordForm.Sheet sheet(RecordId rocket, World world) {
    RecordForm.Sheet sheet = sheet(world);
    return new RecordForm.Sheet(
        sheet.kind(), sheet.noun(), sheet.fields(), (facts, now) -> drag(rocket, now));
  }

  private static Optional<String> drag(RecordId rocket, World world) {
    return world.log().flights().stream()
        .filter(flight -> flight.rocket().equals(Optional.of(rocket)))
        .filter(flight -> flight.facts().get(Flight.PREDICTED_DRAG).isPresent())
        .findFirst()
        .map(
            flight ->
                String.format(
                    Locale.ROOT,
                    "Last predicted with drag %.2f, for %s on %s.",
                    flight.facts().get(Flight.PREDICTED_DRAG).orElseThrow(),
                    FlightText.motors(flight).orElse("no motor"),
                    FlightText.date(flight, world)));
  }

  private static FormField<Mass> mass(UnitSystem units) {
    UnitNotation<Mass> notation = Notations.mass(units);
    return FormField.of(
            Rocket.MASS,
            "Bare mass",
            notation,
            "Ready to fly, recovery packed, but without any motor: like "
                + notation.example()
                + ".")
        .doubting(likelyMass(units));
  }

  private static FormField<Mass> boosterMass(UnitSystem units) {
    UnitNotation<Mass> notation = Notations.mass(units);
    return FormField.of(
            Rocket.BOOSTER_MASS,
            "Booster mass",
            notation,
            "Of that, what falls off at staging, without motors; blank for one stage.")
        .doubting(new Below<>("Booster mass", Rocket.MASS, "bare mass", notation, Mass::kilograms));
  }

  static Rule<Mass> likelyMass(UnitSystem units) {
    return new Range<>(
        "Bare mass", Notations.mass(units), Mass::kilograms, Mass.ofGrams(5), LARGEST_MASS);
  }

  private static FormField<Length> diameter(UnitSystem units) {
    UnitNotation<Length> notation = Notations.bodyLength(units);
    return FormField.of(
            Rocket.DIAMETER,
            "Body diameter",
            notation,
            "Outside, of the widest body tube: like " + notation.example() + ".")
        .doubtingOutside(Length::metres, Length.ofMillimetres(8), Length.ofMillimetres(160));
  }

  private static FormField<Double> drag() {
    return FormField.of(
            Rocket.DRAG_COEFFICIENT,
            "Drag coefficient",
            Notations.number(),
            "On the body tube's frontal area; 0.75 is near for a model rocket (NASA Glenn), which"
                + " blank begins with.")
        .doubtingOutside(Double::doubleValue, 0.2, 2.0);
  }

  private static FormField<Boolean> fixed() {
    return FormField.choice(
        Rocket.DRAG_FIXED,
        "Drag as typed",
        new Choices<>(
            "answer",
            List.of(
                new Choices.Option<>(false, "learn", "from its measured altitudes"),
                new Choices.Option<>(true, "as typed", "whatever its altitudes say"))),
        "For the drag coefficient. learn: each measured altitude makes the drag better known. as typed: the number above"
            + " stands.");
  }

  private static FormField<Length> mount() {
    List<Choices.Option<Length>> sizes =
        IntStream.of(13, 18, 24, 29, 38)
            .mapToObj(Length::ofMillimetres)
            .map(size -> new Choices.Option<>(size, FleetScreen.millimetres(size), ""))
            .toList();
    return FormField.choice(
        Rocket.MOUNT,
        "Motor mount",
        new Choices<>("motor mount", sizes).orElse(Notations.bodyLength(UnitSystem.METRIC)),
        "Inner diameter in mm, as motors are named: 18.");
  }

  private static FormField<Length> rod(UnitSystem units) {
    UnitNotation<Length> notation = Notations.rodLength(units);
    return FormField.of(
            Rocket.ROD,
            "Usual rod",
            notation,
            "The length that guides it, rod or rail: like " + notation.example() + ".")
        .doubting(likelyRod(units));
  }

  static Rule<Length> likelyRod(UnitSystem units) {
    return new Range<>(
        "Rod length", Notations.rodLength(units), Length::metres, new Length(0.3), new Length(6));
  }

  private static FormField<Speed> ownLimit(UnitSystem units) {
    UnitNotation<Speed> notation = Notations.windSpeed(units);
    return FormField.of(
            Rocket.OWN_LIMIT,
            "Own wind limit",
            notation,
            "The largest wind you fly it in, if you have one: like " + notation.example() + ".")
        .doubtingOutside(Speed::metresPerSecond, Speed.ofMph(1), Speed.ofMph(20));
  }

  /** A device's size as it is told beside its name. */
  static String size(RecoveryDevice device, UnitSystem units) {
    UnitNotation<Length> lengths = Notations.canopyLength(units);
    return device
        .diameter()
        .map(lengths::show)
        .or(
            () ->
                device
                    .width()
                    .flatMap(
                        width ->
                            device
                                .length()
                                .map(
                                    length ->
                                        lengths.showBare(width) + " × " + lengths.show(length))))
        .orElse("");
  }
}
