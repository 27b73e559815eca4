package padside.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.motor.MotorStack;
import padside.motor.MotorTable;
import padside.preflight.Box;
import padside.preflight.Card;
import padside.preflight.Learned;
import padside.preflight.Settings;
import padside.safety.RuleSets;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.UnitSystem;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options that describe one flight, shared by {@code predict} and {@code check}. */
final class FlightOptions {
  private static final RecordId FROM_OPTIONS = new RecordId("options");

  /** A streamer's two sides. */
  record Streamer(Length width, Length length) {}

  @Mixin private WeatherOptions air;
  @Mixin private FieldOptions ground;

  @Option(
      names = "--mass",
      paramLabel = "MASS",
      converter = Written.OfMass.class,
      description = "rocket without motor, recovery packed, such as 45g or 1.6oz")
  Mass mass;

  @Option(
      names = "--booster-mass",
      paramLabel = "MASS",
      converter = Written.OfMass.class,
      description = "of --mass, what falls off at staging, without its motors")
  Mass boosterMass;

  @Option(
      names = "--diameter",
      paramLabel = "LENGTH",
      converter = Written.OfSize.class,
      description = "largest body tube, such as 24.8mm or 1.625in")
  Length diameter;

  @Option(
      names = "--cd",
      paramLabel = "NUMBER",
      defaultValue = "0.75",
      description = "drag coefficient on the body tube's frontal area (${DEFAULT-VALUE})")
  double dragCoefficient;

  @Option(
      names = "--motor",
      paramLabel = "MOTOR",
      description = "type and delay, such as C6-5; 3xC6-5 and 'C6-0 then C6-7' for several")
  String motor;

  @Option(
      names = "--motors",
      paramLabel = "FILE",
      description = "motor table to use in place of the one that comes along (CSV)")
  Path motors;

  @Option(
      names = "--rod",
      paramLabel = "LENGTH",
      converter = Written.OfSize.class,
      description =
          "guided length of rod or rail, such as 90cm or 36in; predict takes 90cm if none")
  Length rod;

  @Option(
      names = "--tilt",
      paramLabel = "ANGLE",
      converter = Written.OfAngle.class,
      defaultValue = "0deg",
      description = "rod's angle from vertical, such as 3deg (${DEFAULT-VALUE})")
  Angle tilt;

  @Option(
      names = "--tilt-toward",
      paramLabel = "BEARING",
      converter = Written.OfBearing.class,
      description = "bearing the rod leans toward, such as 240 or WSW")
  Bearing tiltToward;

  @Option(
      names = "--chute",
      paramLabel = "LENGTH",
      converter = Written.OfSize.class,
      description = "parachute's diameter laid flat, such as 18in")
  Length chute;

  @Option(
      names = "--chute-cd",
      paramLabel = "NUMBER",
      description =
          "its drag coefficient on that flat area (0.75), or the streamer's on one side (0.15)")
  Double chuteDrag;

  @Option(
      names = "--streamer",
      paramLabel = "WxL",
      converter = StreamerConverter.class,
      description = "streamer's width and length, such as 4x40in")
  Streamer streamer;

  @Option(
      names = "--rules",
      paramLabel = "NAME",
      description = "safety code held to (the settings file's, us-model if none)")
  String rules;

  @Option(
      names = "--units",
      paramLabel = "US|METRIC",
      description = "units shown without --json (the settings file's, US if none)")
  UnitSystem units;

  /**
   * The flier's settings, with what was given here in their place.
   *
   * @param tell is told what of the settings file was not taken
   */
  Settings settings(Consumer<String> tell) {
    SettingsFile file = SettingsFile.own();
    file.told().forEach(tell);
    return over(file.settings());
  }

  /** As {@link #settings} over settings at hand. */
  Settings over(Settings usual) {
    if (rules != null) {
      Written.value(RuleSets.find(rules));
    }
    return usual
        .with(Optional.ofNullable(units).orElse(usual.units()))
        .withRuleSet(Optional.ofNullable(rules).orElse(usual.ruleSet()));
  }

  /** The card these options describe; what is not given is absent. */
  Card card() throws Fault {
    Rocket rocket =
        new Rocket(
            FROM_OPTIONS,
            Facts.none()
                .with(Rocket.NAME, "this rocket")
                .with(Rocket.BOOSTER_MASS, boosterMass())
                .with(Rocket.DIAMETER, positive("--diameter", diameter, Length::metres))
                .with(Rocket.DRAG_COEFFICIENT, dragCoefficient));
    return new Card(
        Optional.of(rocket),
        motor(),
        positive("--mass", mass, Mass::kilograms),
        device(),
        positive("--rod", rod, Length::metres),
        tilt,
        Optional.ofNullable(tiltToward),
        air.wind(),
        Optional.of(air.reading(FROM_OPTIONS)),
        List.of(),
        Optional.empty(),
        Optional.of(ground.field(FROM_OPTIONS)),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Learned.nothing(),
        Optional.empty(),
        List.of(),
        Box.EMPTY,
        at(),
        List.of());
  }

  /** What cannot be zero is refused as such and not taken for missing. */
  private static <T> Optional<T> positive(String name, T value, ToDoubleFunction<T> in) {
    if (value != null && in.applyAsDouble(value) <= 0) {
      throw new TypeConversionException(name + " is zero; give what was measured.");
    }
    return Optional.ofNullable(value);
  }

  /** It is a part of the mass, which stays whole until then. */
  private Optional<Mass> boosterMass() {
    if (boosterMass != null && mass != null && boosterMass.kilograms() >= mass.kilograms()) {
      throw new TypeConversionException(
          "--booster-mass is not less than --mass, of which it is a part; check both.");
    }
    return positive("--booster-mass", boosterMass, Mass::kilograms);
  }

  private Optional<Instant> at() {
    if (air.at().isPresent() && !ground.hasPlace()) {
      throw new TypeConversionException(
          "--at is for the sun, which stands elsewhere in every place; give --lat and --lon too.");
    }
    return air.at();
  }

  private Optional<MotorStack> motor() throws Fault {
    return motor == null
        ? Optional.empty()
        : Optional.of(Written.value(motorTable().chooseAll(motor)));
  }

  private MotorTable motorTable() throws Fault {
    if (motors == null) {
      return Shipped.motors();
    }
    try (BufferedReader csv = Files.newBufferedReader(motors, StandardCharsets.UTF_8)) {
      MotorTable.Contents contents = MotorTable.read(csv, motors.toString());
      if (!contents.objections().isEmpty()) {
        throw new Fault(
            "motor-file",
            String.join("\n", contents.objections()),
            "Mend these rows, or leave --motors out to use the table that comes along.");
      }
      return new MotorTable(contents.types());
    } catch (IOException e) {
      throw new Fault(
          "motor-file",
          "The motor file " + motors + " cannot be read.",
          "Check its name, and that it is a CSV file in UTF-8.",
          e);
    }
  }

  private Optional<RecoveryDevice> device() {
    if (streamer != null && chute != null) {
      throw new TypeConversionException(
          "--chute and --streamer are two ways to come down; give one of them.");
    }
    Facts drag = Facts.none().with(RecoveryDevice.DRAG_COEFFICIENT, Optional.ofNullable(chuteDrag));
    if (streamer != null) {
      return Optional.of(
          new RecoveryDevice(
              FROM_OPTIONS,
              drag.with(RecoveryDevice.NAME, "streamer")
                  .with(RecoveryDevice.SHAPE, RecoveryDevice.Shape.STREAMER)
                  .with(RecoveryDevice.WIDTH, streamer.width())
                  .with(RecoveryDevice.LENGTH, streamer.length())));
    }
    return Optional.ofNullable(chute)
        .map(
            diameter ->
                new RecoveryDevice(
                    FROM_OPTIONS,
                    drag.with(RecoveryDevice.NAME, "parachute")
                        .with(RecoveryDevice.SHAPE, RecoveryDevice.Shape.PARACHUTE)
                        .with(RecoveryDevice.DIAMETER, diameter)));
  }

  /** Reads {@code 4x40in}. */
  static final class StreamerConverter implements ITypeConverter<Streamer> {
    private static final Pattern SIDES = Pattern.compile("([0-9.]+) *[x×] *([0-9.]+) *([a-z]+)");

    @Override
    public Streamer convert(String text) {
      Matcher sides = SIDES.matcher(text.strip().toLowerCase(java.util.Locale.ROOT));
      if (!sides.matches()) {
        throw new TypeConversionException(
            "\"" + text + "\" is not a width and a length with a unit; type it like 4x40in.");
      }
      Written.OfSize size = new Written.OfSize();
      return new Streamer(
          size.convert(sides.group(1) + sides.group(3)),
          size.convert(sides.group(2) + sides.group(3)));
    }
  }
}
