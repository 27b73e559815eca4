package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Place;
import padside.form.Rule;
import padside.form.Texts;
import padside.preflight.OpenCards;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Notations;
import padside.units.UnitNotation;
import padside.units.UnitSystem;
import padside.units.Wind;

/** The fields of a flight card; lists and hints depend on what the card says already. */
final class CardFields {
  /** The name of the wind field. */
  static final String WIND = Place.wind().name();

  /** What is told on the day. */
  private static final List<String> OF_THE_DAY = List.of(WIND, Flight.PAD.name());

  private CardFields() {}

  /**
   * The fields for a card that says this much.
   *
   * @param facts of the card, its day among them
   * @param own which card it is, once it has an id
   */
  static List<FormField<?>> of(Facts facts, Optional<RecordId> own, World world) {
    boolean planned = isPlanned(facts);
    OpenCards others =
        planned
            ? OpenCards.none(world.log())
            : OpenCards.beside(own, facts.get(Flight.DAY), world.log());
    List<FormField<?>> fields = new ArrayList<>(chosen(facts, others, world));
    fields.addAll(CrowdFields.of(facts, others, world));
    fields.addAll(measured(facts, world));
    fields.removeIf(field -> planned && OF_THE_DAY.contains(field.name()));
    return List.copyOf(fields);
  }

  /** A flight that is only planned asks for no wind and no pad: nobody knows them yet. */
  static boolean isPlanned(Facts facts) {
    return facts.get(Flight.STATUS).equals(Optional.of(Flight.Status.PLANNED));
  }

  private static List<FormField<?>> chosen(Facts facts, OpenCards others, World world) {
    CardChoices choices = new CardChoices(world);
    Optional<Rocket> rocket = facts.get(Flight.ROCKET).flatMap(world.log()::rocket);
    List<FormField<?>> fields = new ArrayList<>();
    fields.add(FormField.choice(Flight.ROCKET, "Rocket", choices.rockets(), rocketHint(world)));
    fields.add(
        FormField.choice(
            Flight.MOTOR,
            "Motor",
            choices.motors(rocket.flatMap(Rocket::mount)),
            "Like C6-5, 3xC6-5 or C6-0 then C6-7; the range box comes first."));
    fields.addAll(StageLots.of(facts, world).fields());
    fields.add(
        FormField.choice(
                Flight.DEVICE,
                "Recovery",
                choices.devices(world.settings().units(), others),
                "Parachute or streamer packed; the range box holds them.")
            .doubting(id -> others.device(id).map(CardFields::sentence)));
    fields.add(
        FormField.choice(
                Flight.ALTIMETER,
                "Altimeter",
                choices.altimeters(others),
                "Blank when it carries none.")
            .doubting(id -> others.altimeter(id).map(CardFields::sentence)));
    return List.copyOf(fields);
  }

  /** What another open card holds; this one can be kept all the same. */
  static String sentence(String claim) {
    return Paragraph.capital(claim) + ".";
  }

  private static String rocketHint(World world) {
    return world.log().rockets().isEmpty()
        ? "No rocket yet: Esc leaves, then f adds one."
        : "Type part of its name; Up, Down pick.";
  }

  private static List<FormField<?>> measured(Facts facts, World world) {
    UnitSystem units = world.settings().units();
    UnitNotation<Mass> mass = Notations.mass(units);
    UnitNotation<Length> rod = Notations.rodLength(units);
    return List.of(
        FormField.of(
                Flight.MASS,
                "Bare mass",
                mass,
                "Ready to fly but without the motor, like " + mass.example() + ".")
            .doubting(RocketFields.likelyMass(units)),
        FormField.of(
                Flight.ROD,
                "Rod length",
                rod,
                "The part that guides it, like " + rod.example() + ".")
            .doubting(RocketFields.likelyRod(units)),
        FormField.of(
            Flight.TILT,
            "Rod tilt",
            Notations.angle(),
            "Degrees from upright, like 5; blank is upright."),
        FormField.of(
            Flight.TILT_TOWARD,
            "Tilt toward",
            Notations.bearing(),
            "Where the rod leans to, like SW or 240."),
        new FormField<>(
            Place.wind(),
            "Wind",
            Notations.wind(units),
            stale(facts, world),
            "Like 6g9 SW, calm or B3 W; look at the meter now."),
        note(isPlanned(facts)));
  }

  private static FormField<String> note(boolean planned) {
    return FormField.of(
        Flight.NOTE,
        "Note",
        new Texts(""),
        planned
            ? "Enter keeps it in the plan; Shift-Tab goes back."
            : "Enter keeps the card; Shift-Tab goes back to the wind.");
  }

  /** The fields of a form whose card has changed, with all that stands in it. */
  static Form renewed(Form form, Facts facts, Optional<RecordId> own, World world) {
    return form.with(of(facts, own, world), facts);
  }

  /**
   * Where the cursor lands on a card filled from what is known: the first field that is missing,
   * cannot be read, is stale or comes by wire; the last one when there is none.
   */
  static int firstWanted(Form form, Facts facts, World world) {
    StageLots lots = StageLots.of(facts, world);
    for (int i = 0; i < form.fields().size(); i++) {
      String name = form.fields().get(i).name();
      boolean blank = form.entries().get(i).typed().isBlank();
      boolean wind = name.equals(WIND) && (form.doubt(i).isPresent() || ByWire.isOn(facts, world));
      boolean wanted = blank ? isNeeded(name) : wind;
      boolean lot =
          Stream.of(Flight.LOT, Flight.BOOSTER_LOT)
              .anyMatch(each -> name.equals(each.name()) && lots.wants(each, facts, world));
      if (wanted || lot || form.objection(i).isPresent()) {
        return i;
      }
    }
    return form.fields().size() - 1;
  }

  private static boolean isNeeded(String name) {
    List<Column<?>> needed =
        List.of(Flight.ROCKET, Flight.MOTOR, Flight.DEVICE, Flight.MASS, Flight.ROD);
    return name.equals(WIND) || needed.stream().anyMatch(column -> column.name().equals(name));
  }

  /** Doubts the wind of the day's last reading once that was taken too long ago. */
  private static Rule<Wind> stale(Facts facts, World world) {
    if (ByWire.isOn(facts, world)) {
      return Rule.none();
    }
    Optional<Weather> latest = facts.get(Flight.DAY).flatMap(world.log()::latestWeather);
    return wind ->
        latest
            .filter(reading -> reading.wind().equals(Optional.of(wind)))
            .flatMap(reading -> Ages.since(reading, world))
            .filter(Ages::isOldWind)
            .map(age -> "This wind was read " + Ages.words(age) + "; type the wind of now.");
  }
}
