package padside.screen;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Place;
import padside.form.Rule;
import padside.form.Texts;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Notations;
import padside.units.UnitNotation;
import padside.units.UnitSystem;
import padside.units.Wind;

/** The fields of a flight card; lists and hints depend on what the card says already. */
final class CardFields {
  /** A wind read longer ago is looked at again before a launch (common practice, no source). */
  static final Duration WIND_KEEPS = Duration.ofMinutes(10);

  /** The name of the wind field. */
  static final String WIND = Place.wind().name();

  private CardFields() {}

  /**
   * The fields for a card that says this much.
   *
   * @param facts of the card, its day among them
   */
  static List<FormField<?>> of(Facts facts, World world) {
    List<FormField<?>> fields = new ArrayList<>(chosen(facts, world));
    fields.addAll(measured(facts, world));
    return List.copyOf(fields);
  }

  private static List<FormField<?>> chosen(Facts facts, World world) {
    CardChoices choices = new CardChoices(world.log());
    Optional<Rocket> rocket = facts.get(Flight.ROCKET).flatMap(world.log()::rocket);
    return List.of(
        FormField.choice(Flight.ROCKET, "Rocket", choices.rockets(), rocketHint(world)),
        FormField.choice(
            Flight.MOTOR,
            "Motor",
            choices.motors(rocket.flatMap(Rocket::mount)),
            "With its delay, like C6-5. The range box comes first."),
        FormField.choice(
            Flight.LOT,
            "Lot",
            choices.lots(facts.get(Flight.MOTOR)),
            "The date code on the motor; the range box holds the lots."),
        FormField.choice(
            Flight.DEVICE,
            "Recovery",
            choices.devices(world.settings().units()),
            "Parachute or streamer packed; the range box holds them."),
        FormField.choice(
            Flight.ALTIMETER, "Altimeter", choices.altimeters(), "Blank when it carries none."));
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
        FormField.of(
            Flight.NOTE,
            "Note",
            new Texts(""),
            "Enter keeps the card; Shift-Tab goes back to the wind."));
  }

  /** The fields of a form whose card has changed, with all that stands in it. */
  static Form renewed(Form form, Facts facts, World world) {
    return new Form(of(facts, world), form.opened(), form.entries(), form.at(), form.picked());
  }

  /**
   * Where the cursor lands on a card filled from what is known: the first field that is missing,
   * cannot be read or is stale; the last one when there is none.
   */
  static int firstWanted(Form form, Facts facts, World world) {
    CardChoices choices = new CardChoices(world.log());
    for (int i = 0; i < form.fields().size(); i++) {
      String name = form.fields().get(i).name();
      boolean blank = form.entries().get(i).typed().isBlank();
      boolean wanted = blank ? isNeeded(name) : name.equals(WIND) && form.doubt(i).isPresent();
      boolean lot = name.equals(Flight.LOT.name()) && wantsLot(facts, choices, world);
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

  /** A lot is missing where several are at hand, and stale once it is used up. */
  private static boolean wantsLot(Facts facts, CardChoices choices, World world) {
    Optional<Boolean> usedUp = facts.get(Flight.LOT).flatMap(world.log()::lot).map(choices::usedUp);
    return usedUp.orElse(!choices.lotsOf(facts.get(Flight.MOTOR)).isEmpty());
  }

  /** Doubts the wind of the day's last reading once that was taken too long ago. */
  private static Rule<Wind> stale(Facts facts, World world) {
    Optional<Weather> latest = facts.get(Flight.DAY).flatMap(world.log()::latestWeather);
    return wind ->
        latest
            .filter(reading -> reading.wind().equals(Optional.of(wind)))
            .flatMap(reading -> Ages.since(reading, world))
            .filter(age -> age.isNegative() || age.compareTo(WIND_KEEPS) > 0)
            .map(age -> "This wind was read " + Ages.words(age) + "; type the wind of now.");
  }
}
