package padside.preflight;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.insight.Burns;
import padside.insight.Delays;
import padside.motor.MotorStack;
import padside.motor.MotorTable;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.Wind;

/** Cards for tests: a small invented rocket on an A8-3 in the middle of a round field. */
public final class CardBuilder {
  private static final MotorTable MOTORS = motors();
  private static final RecordId ID = new RecordId("test.1");

  private Facts rocket =
      Facts.none()
          .with(Rocket.NAME, "Alder")
          .with(Rocket.DIAMETER, Length.ofMillimetres(24.8))
          .with(Rocket.DRAG_COEFFICIENT, 0.75);
  private Optional<String> motor = Optional.of("A8-3");
  private Optional<Mass> mass = Optional.of(Mass.ofGrams(34));
  private Optional<RecoveryDevice> device = Optional.of(parachute(0.3));
  private Optional<Length> rod = Optional.of(Length.ofCentimetres(90));
  private Optional<Wind> wind =
      Optional.of(new Wind(new Speed(1.5), new Speed(2), Optional.of(new Bearing(225))));
  private List<Field.Edge> edges = round(200);
  private Facts field = Facts.none().with(Field.NAME, "Long Meadow");
  private boolean fieldKnown = true;
  private Optional<Card.LotRecord> lotRecord = Optional.empty();
  private Optional<Card.LotRecord> boosterRecord = Optional.empty();
  private Optional<Delays.Suits> suits = Optional.empty();
  private List<OpenCards.Claim> claims = List.of();
  private Optional<Instant> at = Optional.empty();
  private List<Weather> readings = List.of();
  private final List<Fix> fixes = new ArrayList<>();

  /** The motors of these cards. */
  static MotorTable table() {
    return MOTORS;
  }

  public static CardBuilder small() {
    return new CardBuilder();
  }

  public Card build() {
    Facts paced = field.with(Field.EDGES, List.copyOf(edges));
    Optional<MotorStack> choice = motor.map(m -> MOTORS.chooseAll(m).value().orElseThrow());
    return new Card(
        Optional.of(new Rocket(ID, rocket)),
        choice,
        mass,
        device,
        rod,
        new Angle(0),
        Optional.empty(),
        wind,
        Optional.empty(),
        readings,
        Optional.empty(),
        fieldKnown ? Optional.of(new Field(ID, paced)) : Optional.empty(),
        fixes,
        lotRecord,
        boosterRecord,
        Learned.nothing(),
        suits,
        claims,
        Box.EMPTY,
        at,
        List.of());
  }

  public CardBuilder rocketFact(UnaryOperator<Facts> change) {
    rocket = change.apply(rocket);
    return this;
  }

  public CardBuilder claims(OpenCards.Claim... held) {
    claims = List.of(held);
    return this;
  }

  public CardBuilder motor(String designation) {
    motor = Optional.of(designation);
    return this;
  }

  public CardBuilder mass(Mass withoutMotor) {
    mass = Optional.of(withoutMotor);
    return this;
  }

  public CardBuilder wind(Wind given) {
    wind = Optional.of(given);
    return this;
  }

  /** A round field of that radius. */
  public CardBuilder edge(double metres) {
    edges = round(metres);
    return this;
  }

  public CardBuilder edges(List<Field.Edge> given) {
    edges = given;
    return this;
  }

  public CardBuilder fieldFact(UnaryOperator<Facts> change) {
    field = change.apply(field);
    return this;
  }

  public CardBuilder at(Instant moment) {
    at = Optional.of(moment);
    return this;
  }

  /** What was read of the weather on its day. */
  public CardBuilder readings(List<Weather> given) {
    readings = given;
    return this;
  }

  public CardBuilder fix(Fix fix) {
    fixes.add(fix);
    return this;
  }

  /** Of a lot of which so many were fired and so many of them burst. */
  public static Card.LotRecord record(String code, int fired, int burst) {
    return new Card.LotRecord(code, new Burns(fired, 0, burst, burst));
  }

  public CardBuilder suits(Delays.Suits told) {
    suits = Optional.of(told);
    return this;
  }

  public CardBuilder boosterLot(Card.LotRecord lot) {
    boosterRecord = Optional.of(lot);
    return this;
  }

  public CardBuilder lot(Card.LotRecord lot) {
    lotRecord = Optional.of(lot);
    return this;
  }

  public CardBuilder noWind() {
    wind = Optional.empty();
    return this;
  }

  public CardBuilder noMotor() {
    motor = Optional.empty();
    return this;
  }

  public CardBuilder noMass() {
    mass = Optional.empty();
    return this;
  }

  public CardBuilder noRod() {
    rod = Optional.empty();
    return this;
  }

  public CardBuilder noDevice() {
    device = Optional.empty();
    return this;
  }

  public CardBuilder noField() {
    fieldKnown = false;
    return this;
  }

  private static RecoveryDevice parachute(double metres) {
    return new RecoveryDevice(
        ID,
        Facts.none()
            .with(RecoveryDevice.NAME, "30 cm chute")
            .with(RecoveryDevice.SHAPE, RecoveryDevice.Shape.PARACHUTE)
            .with(RecoveryDevice.DIAMETER, new Length(metres)));
  }

  private static List<Field.Edge> round(double metres) {
    return List.of(new Field.Edge(new Bearing(0), new Length(metres), "hedge", "lane"));
  }

  private static MotorTable motors() {
    try (Reader csv =
        new InputStreamReader(
            CardBuilder.class.getResourceAsStream("/data/motors.csv"), StandardCharsets.UTF_8)) {
      return new MotorTable(MotorTable.read(csv, "motors.csv").types());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
