package padside.preflight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padside.flight.Field;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.insight.Confidence;
import padside.motor.MotorChoice;
import padside.motor.MotorStack;
import padside.motor.MotorType;
import padside.physics.Air;
import padside.physics.Airframe;
import padside.physics.CanopyDrag;
import padside.physics.Launch;
import padside.physics.RefusedInput;
import padside.physics.Rod;
import padside.physics.Stage;
import padside.physics.WindProfile;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.TimeSpan;
import padside.units.Wind;

/**
 * Makes of a card the launch that the flight model flies, or says what is missing or impossible.
 */
final class Launches {
  /** Near 0.75 at zero angle of attack for a model rocket: NASA Glenn Research Center, termvr. */
  static final double USUAL_ROCKET_DRAG = 0.75;

  /** Flat sheet parachute on the area of the canopy laid flat: two club pages, 0.75. */
  static final double USUAL_PARACHUTE_DRAG = 0.75;

  /** Streamer on one side: 0.1 to 0.2, recalled from memory with low confidence, unconfirmed. */
  static final double USUAL_STREAMER_DRAG = 0.15;

  private final Card card;
  private final Confidence confidence;
  private final Missing missing = new Missing();

  private Launches(Card card, Confidence confidence) {
    this.card = card;
    this.confidence = confidence;
  }

  /**
   * What came of a card.
   *
   * @param launch as far as it can be flown; with nothing to open while the recovery is missing
   * @param missing what the flight model still lacks, as nouns
   * @param refused why the flight is impossible as entered, one sentence
   */
  record Prepared(Optional<Launch> launch, List<String> missing, Optional<String> refused) {}

  /** The launch of a card in still air where no wind is entered. */
  static Prepared of(Card card) {
    return of(card, Confidence.usual());
  }

  /**
   * The same.
   *
   * @param confidence one the rocket's altitudes are asked with besides: its drag is the same by
   *     any, and they are flown again for each
   */
  static Prepared of(Card card, Confidence confidence) {
    Launches launches = new Launches(card, confidence);
    try {
      Optional<Launch> launch = launches.launch();
      return new Prepared(launch, launches.missing.nouns(), Optional.empty());
    } catch (RefusedInput refused) {
      return new Prepared(Optional.empty(), List.of(), Optional.of(refused.getMessage()));
    }
  }

  private Optional<Launch> launch() {
    Optional<Mass> mass = missing.needed(Unread.MASS, card.mass());
    Optional<Length> diameter =
        missing.needed("body diameter", card.rocket().flatMap(Rocket::diameter));
    Optional<MotorStack> stack = missing.needed("motor", card.motors());
    List<Stage> stages =
        stack.map(motors -> new Stages(missing).of(motors, card.rocket())).orElse(List.of());
    Optional<Length> rod = missing.needed(Unread.ROD, card.rod());
    boolean flies = missing.none();
    Optional<CanopyDrag> canopy = canopy();
    if (!flies) {
      return Optional.empty();
    }
    double drag = card.drag(confidence).drag().coefficient();
    MotorChoice top = stack.orElseThrow().top().motor();
    return Optional.of(
        new Launch(
            new Airframe(mass.orElseThrow(), diameter.orElseThrow(), drag),
            stages,
            new Rod(rod.orElseThrow(), card.tilt(), card.tiltToward().orElse(new Bearing(0))),
            air(card.field(), card.weather()),
            profile(card.wind().orElse(Wind.calm())),
            delay(top),
            canopy,
            delaysOnSale(top.type())));
  }

  private WindProfile profile(Wind wind) {
    return new WindProfile(
        wind, card.weather().flatMap(Weather::windHeight).orElse(WindProfile.HAND_HELD));
  }

  /** The air at the pad, standard where nobody has measured it. */
  static Air air(Optional<Field> field, Optional<Weather> weather) {
    Length elevation = field.flatMap(Field::elevation).orElse(new Length(0));
    OptionalDouble humidity =
        weather.flatMap(Weather::humidity).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    return Air.at(
        elevation,
        weather.flatMap(Weather::temperature),
        weather.flatMap(Weather::pressure),
        humidity);
  }

  private Optional<CanopyDrag> canopy() {
    if (missing.needed("recovery device", card.device()).isEmpty()) {
      return Optional.empty();
    }
    RecoveryDevice device = card.device().get();
    return missing.needed("size of " + device.name(), canopy(device));
  }

  /** What a device slows the fall with; absent while its size is not known. */
  static Optional<CanopyDrag> canopy(RecoveryDevice device) {
    boolean streamer = device.shape().equals(Optional.of(RecoveryDevice.Shape.STREAMER));
    double drag =
        device.dragCoefficient().orElse(streamer ? USUAL_STREAMER_DRAG : USUAL_PARACHUTE_DRAG);
    return streamer
        ? device.width().flatMap(w -> device.length().map(l -> CanopyDrag.streamer(w, l, drag)))
        : device.diameter().map(diameter -> CanopyDrag.parachute(diameter, drag));
  }

  private static Optional<TimeSpan> delay(MotorChoice motor) {
    return motor.delaySeconds().isPresent()
        ? Optional.of(new TimeSpan(motor.delaySeconds().getAsDouble()))
        : Optional.empty();
  }

  /** The delays in seconds; plugged and other labels without a time have no row in the table. */
  private static List<TimeSpan> delaysOnSale(MotorType type) {
    return type.delays().stream()
        .map(delay -> new MotorChoice(type, delay).delaySeconds())
        .filter(OptionalDouble::isPresent)
        .map(seconds -> new TimeSpan(seconds.getAsDouble()))
        .toList();
  }
}
