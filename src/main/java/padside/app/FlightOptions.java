package padside.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.flight.MotorStack;
import padside.flight.MotorTable;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.preflight.Box;
import padside.preflight.Card;
import padside.preflight.Settings;
import padside.safety.RuleSets;
import padside.site.FieldShape;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Pressure;
import padside.units.Temperature;
import padside.units.UnitSystem;
import padside.units.Wind;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options that describe one flight, shared by {@code predict} and {@code check}. */
final class FlightOptions {
  private static final RecordId FROM_OPTIONS = new RecordId("options");

  /** A streamer's two sides. */
  record Streamer(Length width, Length length) {}

  @Option(
      names = "--mass",
      paramLabel = "MASS",
      converter = Written.OfMass.class,
      description = "rocket without motor, recovery packed, such as 45g or 1.6oz")
  Mass mass;

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

  @Option(names = "--motor", paramLabel = "MOTOR", description = "type and delay, such as C6-5")
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
      names = "--wind",
      paramLabel = "WIND",
      converter = Written.OfWind.class,
      description = "such as calm, 6mph, 6g9mph, 2.5m/s, B3 W")
  Wind wind;

  @Option(
      names = "--wind-from",
      paramLabel = "BEARING",
      converter = Written.OfBearing.class,
      description =
          "bearing the wind comes from, such as 240 or SW; without it --json tells the landing as"
              + " in a wind from north")
  Bearing windFrom;

  @Option(
      names = "--wind-height",
      paramLabel = "LENGTH",
      converter = Written.OfDistance.class,
      description = "height the wind was read at (hand-held, 2m, if none)")
  Length windHeight;

  @Option(
      names = "--temp",
      paramLabel = "TEMPERATURE",
      converter = Written.OfTemperature.class,
      description = "air temperature, such as 41F or 5C; standard for the elevation if none")
  Temperature temperature;

  @Option(
      names = "--pressure",
      paramLabel = "PRESSURE",
      converter = Written.OfPressure.class,
      description = "station pressure, not reduced to sea level, such as 985hPa; standard if none")
  Pressure pressure;

  @Option(
      names = "--elevation",
      paramLabel = "LENGTH",
      converter = Written.OfAltitude.class,
      defaultValue = "0m",
      description = "field above sea level (${DEFAULT-VALUE})")
  Length elevation;

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
      names = "--edge",
      paramLabel = "BEARING:DISTANCE",
      converter = EdgeConverter.class,
      description = "field edge along a bearing, such as NE:280ft; repeat for more")
  List<Field.Edge> edges = new ArrayList<>();

  @Option(
      names = "--field-radius",
      paramLabel = "LENGTH",
      converter = Written.OfDistance.class,
      description = "a round field with the pad in its middle")
  Length fieldRadius;

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
    SettingsFile file = SettingsFile.read(Folders.of(System.getenv()).settings());
    file.told().forEach(tell);
    return over(file.settings());
  }

  /** As {@link #settings} over settings at hand. */
  Settings over(Settings usual) {
    if (rules != null) {
      Written.value(RuleSets.find(rules));
    }
    return new Settings(
        Optional.ofNullable(units).orElse(usual.units()),
        Optional.ofNullable(rules).orElse(usual.ruleSet()),
        usual.ownLimit(),
        usual.rodDivisor());
  }

  /** The card these options describe; what is not given is absent. */
  Card card() throws Fault {
    Rocket rocket =
        new Rocket(
            FROM_OPTIONS,
            Facts.none()
                .with(Rocket.NAME, "this rocket")
                .with(Rocket.DIAMETER, positive("--diameter", diameter, Length::metres))
                .with(Rocket.DRAG_COEFFICIENT, dragCoefficient));
    Weather weather =
        new Weather(
            FROM_OPTIONS,
            Facts.none()
                .with(Weather.WIND_HEIGHT, Optional.ofNullable(windHeight))
                .with(Weather.TEMPERATURE, Optional.ofNullable(temperature))
                .with(Weather.PRESSURE, Optional.ofNullable(pressure)));
    return new Card(
        Optional.of(rocket),
        motor(),
        positive("--mass", mass, Mass::kilograms),
        device(),
        positive("--rod", rod, Length::metres),
        tilt,
        Optional.ofNullable(tiltToward),
        wind(),
        Optional.of(weather),
        List.of(),
        Optional.empty(),
        Optional.of(field()),
        List.of(),
        Optional.empty(),
        Box.EMPTY,
        Optional.empty(),
        List.of());
  }

  /** What cannot be zero is refused as such and not taken for missing. */
  private static <T> Optional<T> positive(String name, T value, ToDoubleFunction<T> in) {
    if (value != null && in.applyAsDouble(value) <= 0) {
      throw new TypeConversionException(name + " is zero; give what was measured.");
    }
    return Optional.ofNullable(value);
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

  private Optional<Wind> wind() {
    return Optional.ofNullable(wind)
        .map(
            given ->
                windFrom == null
                    ? given
                    : new Wind(given.mean(), given.gust(), Optional.of(windFrom)));
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

  private Field field() {
    if (fieldRadius != null && !edges.isEmpty()) {
      throw new TypeConversionException(
          "--edge and --field-radius describe the field in two ways; give one of them.");
    }
    Facts outline =
        fieldRadius == null
            ? Facts.none().with(Field.EDGES, List.copyOf(edges))
            : FieldShape.circle(fieldRadius);
    return new Field(
        FROM_OPTIONS, outline.with(Field.NAME, "this field").with(Field.ELEVATION, elevation));
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

  /** Reads {@code NE:280ft}. */
  static final class EdgeConverter implements ITypeConverter<Field.Edge> {
    @Override
    public Field.Edge convert(String text) {
      int colon = text.indexOf(':');
      if (colon < 0) {
        throw new TypeConversionException(
            "\"" + text + "\" is not a bearing and a distance; type it like NE:280ft.");
      }
      return new Field.Edge(
          new Written.OfBearing().convert(text.substring(0, colon)),
          new Written.OfDistance().convert(text.substring(colon + 1)),
          "",
          "");
    }
  }
}
