package padside.preflight;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.RecoveryDevice;
import padside.motor.MotorTable;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.Wind;

/** A range box for tests, and changes made on a card by what is said of them alone. */
public final class AdviceBox {
  private static final List<String> MOTORS =
      List.of("A8-3", "B6-2", "B6-4", "C6-3", "C6-5", "C6-7");
  private static final List<Double> CHUTES_CM = List.of(20.0, 25.0, 38.0, 46.0);
  private static final Card.LotRecord GOOD = CardBuilder.record("K1", 3, 0);
  private static final MotorTable TABLE = table();
  private static final Pattern LEANING =
      Pattern.compile("with the rod leaning ([0-9]+)° toward ([A-Z]+), (into|across) the wind");

  private AdviceBox() {}

  /** A card with the whole box. */
  public static Card on(Card card) {
    return with(card, MOTORS.stream().map(motor -> stock(motor, GOOD)).toList());
  }

  static Card with(Card card, List<Box.Stock> motors) {
    return card.withBox(
        new Box(
            motors,
            motors.isEmpty() ? List.of() : CHUTES_CM.stream().map(AdviceBox::chute).toList()));
  }

  static Box.Stock stock(String motor, Card.LotRecord lot) {
    return new Box.Stock(TABLE.choose(motor).value().orElseThrow(), Optional.of(3), lot);
  }

  private static RecoveryDevice chute(double centimetres) {
    String name = Math.round(centimetres) + " cm chute";
    return new RecoveryDevice(
        new RecordId("device." + centimetres),
        Facts.none()
            .with(RecoveryDevice.NAME, name)
            .with(RecoveryDevice.SHAPE, RecoveryDevice.Shape.PARACHUTE)
            .with(RecoveryDevice.DIAMETER, Length.ofCentimetres(centimetres)));
  }

  /** Cards over round fields of any size in any wind that is no code's limit. */
  static List<Card> cards(long seed, int count) {
    Random random = new Random(seed);
    List<Card> cards = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double mean = 0.5 + 4 * random.nextDouble();
      Wind wind =
          new Wind(
              new Speed(mean),
              new Speed(mean * (1 + 0.6 * random.nextDouble())),
              Optional.of(new Bearing(22.5 * random.nextInt(16))));
      cards.add(
          on(
              CardBuilder.small()
                  .motor(MOTORS.get(random.nextInt(MOTORS.size())))
                  .edge(50 + 120 * random.nextDouble())
                  .wind(wind)
                  .build()));
    }
    return cards;
  }

  /** The single changes in words by what is touched, in the order of how much that is. */
  static List<List<String>> ways(Card card) {
    List<String> rod = new ArrayList<>();
    double from = card.wind().flatMap(Wind::from).orElseThrow().degrees();
    for (int tilt = 5; tilt <= 30; tilt += 5) {
      rod.add(leaning(tilt, from, "into"));
      rod.add(leaning(tilt, from - 90, "across"));
      rod.add(leaning(tilt, from + 90, "across"));
    }
    String own = card.motors().orElseThrow().designation();
    String type = own.substring(0, own.indexOf('-') + 1);
    List<String> delay =
        MOTORS.stream().filter(it -> it.startsWith(type) && !it.equals(own)).toList();
    List<String> motor = MOTORS.stream().filter(it -> !it.startsWith(type)).toList();
    return List.of(
        rod,
        delay.stream().map(it -> "with " + it).toList(),
        CHUTES_CM.stream().map(it -> "with the " + chute(it).name()).toList(),
        motor.stream().map(it -> "with " + it).toList());
  }

  private static String leaning(int tilt, double toward, String way) {
    return "with the rod leaning %d° toward %s, %s the wind"
        .formatted(tilt, new Bearing(toward).compassPoint(), way);
  }

  /** The card with a change made, read from its words. */
  static Card made(String change, Card card) {
    Card made = card;
    for (String part : change.split(" and (?=with )", -1)) {
      made = one(part, made);
    }
    return made;
  }

  private static Card one(String change, Card card) {
    Matcher leaning = LEANING.matcher(change);
    if (leaning.matches()) {
      Bearing toward = Notations.bearing().read(leaning.group(2)).value().orElseThrow();
      return card.withTilt(Angle.ofDegrees(Integer.parseInt(leaning.group(1))), toward);
    }
    if (change.equals("with the rod upright")) {
      return card.withTilt(new Angle(0), new Bearing(0));
    }
    if (change.startsWith("with the ")) {
      String name = change.substring("with the ".length());
      return card.withDevice(
          card.box().devices().stream()
              .filter(device -> device.name().equals(name))
              .findFirst()
              .orElseThrow());
    }
    String motor = change.split(" ", -1)[1];
    return card.withMotors(TABLE.chooseAll(motor).value().orElseThrow(), Optional.of(GOOD));
  }

  private static MotorTable table() {
    try (Reader csv =
        new InputStreamReader(
            AdviceBox.class.getResourceAsStream("/data/motors.csv"), StandardCharsets.UTF_8)) {
      return new MotorTable(MotorTable.read(csv, "motors.csv").types());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
