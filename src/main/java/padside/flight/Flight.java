package padside.flight;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.motor.MotorText;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/** One flight: its card, the answer of the check as it stood, and what came of it. */
public record Flight(RecordId id, Facts facts) {
  /**
   * How one part came back.
   *
   * @param part such as {@code fins}
   * @param state such as {@code cracked}, a word of the outcome table or the flier's own
   */
  public record PartState(String part, String state) {
    static PartState of(Map<?, ?> item) {
      return new PartState(String.valueOf(item.get("part")), String.valueOf(item.get("state")));
    }

    Map<String, Object> item() {
      return Map.of("part", part, "state", state);
    }
  }

  /** How far the flight has come. */
  public enum Status {
    /** It is meant to be flown; made at home, begun on the day. */
    PLANNED("planned"),
    /** The card is being filled; every finished field is kept. */
    DRAFT("draft"),
    /** The card is complete and waits for its turn at the pad. */
    CARD("card"),
    /** It left the pad, or the motor fired. */
    FLOWN("flown"),
    /** It was called off. */
    SCRUBBED("scrubbed");

    private static final Map<String, Status> BY_CODE =
        Stream.of(values()).collect(Collectors.toUnmodifiableMap(Status::code, each -> each));

    private final String words;

    Status(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Status> find(String code) {
      return Optional.ofNullable(BY_CODE.get(code));
    }
  }

  // The card.
  public static final Column<Status> STATUS =
      Column.word("status", "planned, draft, card, flown or scrubbed", Status::find, Status::code);
  public static final Column<RecordId> DAY = Column.reference("day", "the day it belongs to");
  public static final Column<Integer> PLACE =
      Column.integer(
          "place", "its place on the day, lowest first; planned ones stand behind those begun");
  public static final Column<Integer> PAD =
      Column.integer("pad", "pad position, 1 to 12, where there are several");
  public static final Column<RecordId> ROCKET = Column.reference("rocket", "what flies");
  public static final Column<String> FLIER = Column.text("flier", "who flies it");
  public static final Column<String> MOTOR =
      Column.text(
          "motor", "full designation with delay: C6-5, three of them 3xC6-5, C6-0 then C6-7");
  public static final Column<RecordId> LOT =
      Column.reference("lot", "the lot the motor comes from, in a stack the topmost stage's");
  public static final Column<RecordId> BOOSTER_LOT =
      Column.reference("booster_lot", "in a stack the lot of the lowest stage's motors");
  public static final Column<RecordId> DEVICE =
      Column.reference("device", "the parachute or streamer");
  public static final Column<RecordId> ALTIMETER =
      Column.reference("altimeter", "the altimeter on board");
  public static final Column<Mass> MASS =
      Column.quantity(
          "mass_kg", "mass without motor as weighed for this flight", Mass::new, Mass::kilograms);
  public static final Column<Length> ROD = length("rod_m", "guided length of rod or rail");
  public static final Column<Angle> TILT =
      Column.quantity("tilt_deg", "rod's angle from vertical", Angle::ofDegrees, Angle::inDegrees);
  public static final Column<Bearing> TILT_TOWARD =
      Column.quantity(
          "tilt_toward_deg", "bearing the rod leans toward", Bearing::new, Bearing::degrees);
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  // The wind as it stood on the card; the columns are those of a weather reading.
  public static final Column<Speed> WIND_MEAN = Weather.WIND_MEAN;
  public static final Column<Speed> WIND_GUST = Weather.WIND_GUST;
  public static final Column<Bearing> WIND_FROM = Weather.WIND_FROM;

  // The check's answer as it stood when the card was kept.
  public static final Column<Ruling.Verdict> VERDICT =
      Column.word("verdict", "the check's answer", Ruling.Verdict::find, Ruling.Verdict::word);
  public static final Column<String> REASON =
      Column.text("reason", "what bound the check's answer");
  public static final Column<Speed> LIMIT =
      Column.quantity(
          "limit_mps", "largest wind for this card", Speed::new, Speed::metresPerSecond);
  public static final Column<String> AGAINST =
      Column.text("against", "why it was flown against NO-GO");
  public static final Column<Length> PREDICTED_APOGEE =
      length("predicted_apogee_m", "predicted apogee above the pad");
  public static final Column<TimeSpan> PREDICTED_BEST_DELAY =
      span("predicted_best_delay_s", "predicted time from burnout to apogee");
  public static final Column<Speed> PREDICTED_DESCENT =
      Column.quantity(
          "predicted_descent_mps", "predicted rate of descent", Speed::new, Speed::metresPerSecond);
  public static final Column<Bearing> PREDICTED_BEARING =
      Column.quantity(
          "predicted_landing_bearing_deg",
          "predicted bearing of the landing from the pad",
          Bearing::new,
          Bearing::degrees);
  public static final Column<Length> PREDICTED_DISTANCE =
      length("predicted_landing_distance_m", "predicted distance of the landing from the pad");

  public static final Column<Length> PREDICTED_SPREAD_LONG =
      length(
          "predicted_spread_long_m",
          "half the longest diameter of the ellipse that holds the predicted share of landings");
  public static final Column<Length> PREDICTED_SPREAD_SHORT =
      length("predicted_spread_short_m", "half its shortest diameter");
  public static final Column<Bearing> PREDICTED_SPREAD_ALONG =
      Column.quantity(
          "predicted_spread_along_deg",
          "where its longest diameter points to",
          Bearing::new,
          Bearing::degrees);
  public static final Column<TimeSpan> PREDICTED_EJECTION =
      span("predicted_ejection_s", "predicted time from lift-off to ejection");
  public static final Column<TimeSpan> PREDICTED_ALOFT =
      span("predicted_aloft_s", "predicted time from lift-off to touchdown");

  public static final Column<Length> PREDICTED_TOP =
      length("predicted_top_m", "predicted highest point as flown: a charge before apogee ends it");
  public static final Column<Length> PREDICTED_TOP_LOW =
      length("predicted_top_low_m", "the predicted share of flights lies between this ...");
  public static final Column<Length> PREDICTED_TOP_HIGH =
      length("predicted_top_high_m", "... and this, in half of the others each");
  public static final Column<Double> PREDICTED_DRAG =
      Column.number("predicted_drag_coefficient", "the drag coefficient these were predicted with");
  public static final Column<Double> PREDICTED_SHARE =
      Column.number(
          "predicted_share", "share of flights told to lie within; 0.9 where none stands");

  // At the pad.
  public static final Column<List<String>> TICKED =
      Column.texts("ticked", "checklist lines ticked, by their key");
  public static final Column<List<String>> UNTICKED =
      Column.texts("unticked", "checklist lines open when the count began, in words");
  public static final Column<String> WENT_ON =
      Column.text("went_on", "why the count began with lines open");

  // What came of it; the words are those of the outcome table.
  public static final Column<Instant> LIFTOFF_AT =
      Column.instant("liftoff_at", "when it left the pad, ISO 8601 in UTC, by the machine's clock");
  public static final Column<TimeSpan> LIFTOFF_UP =
      span("liftoff_up_s", "when it left the pad, seconds since the machine was started");
  public static final Column<String> LIFTOFF_BOOT =
      Column.text("liftoff_boot", "that start of the machine, as its operating system names it");
  public static final Column<TimeSpan> EJECTION_MARK =
      span("ejection_mark_s", "seconds from lift-off to ejection as marked at the pad");
  public static final Column<TimeSpan> TOUCHDOWN_MARK =
      span("touchdown_mark_s", "seconds from lift-off to touchdown as marked at the pad");
  public static final Column<String> BOOST = Column.text("boost", "how it boosted");
  public static final Column<Bearing> BOOST_TOWARD =
      Column.quantity(
          "boost_toward_deg", "bearing it arced or turned toward", Bearing::new, Bearing::degrees);
  public static final Column<String> BURN = Column.text("burn", "what the motor did");
  public static final Column<String> EJECTION = Column.text("ejection", "when the charge fired");
  public static final Column<TimeSpan> MEASURED_DELAY =
      span("measured_delay_s", "seconds from burnout to ejection");
  public static final Column<String> RECOVERY = Column.text("recovery", "how recovery worked");
  public static final Column<String> LANDING = Column.text("landing", "how it came down");
  public static final Column<String> LANDED_ON =
      Column.text("landed_on", "where it lay: grass, tree, water, road, lost");

  /** How it went, each in a word of the outcome table, in the order it happens. */
  public static final List<Column<String>> ASPECTS =
      List.of(BOOST, BURN, EJECTION, RECOVERY, LANDING, LANDED_ON);

  public static final Column<Bearing> LANDING_BEARING =
      Column.quantity(
          "landing_bearing_deg",
          "bearing of the landing from the pad",
          Bearing::new,
          Bearing::degrees);
  public static final Column<Length> LANDING_DISTANCE =
      length("landing_distance_m", "distance of the landing from the pad");
  public static final Column<Length> ALTITUDE =
      length("altitude_m", "highest altitude above the pad as measured");
  public static final Column<String> TRACE =
      Column.text(
          "trace", "an altimeter's line, thinned: form, CRC-32, samples, cm, points, marks, file");
  public static final Column<String> DAMAGE =
      Column.text("damage", "what broke, in words; newer flights tell it part by part");
  public static final Column<List<PartState>> CONDITION =
      Column.list("condition", "how it came back, part by part", PartState::of, PartState::item);

  public static final Column<String> TO_MEND =
      Column.text("to_mend", "what to mend, from a debrief not kept yet; a fix once it is");
  public static final Column<Fix.Severity> TO_MEND_SEVERITY =
      Column.word(
          "to_mend_severity", "look_at or grounds_it", Fix.Severity::find, Fix.Severity::code);

  static final List<Column<?>> COLUMNS =
      List.of(
          STATUS,
          DAY,
          PLACE,
          PAD,
          ROCKET,
          FLIER,
          MOTOR,
          LOT,
          BOOSTER_LOT,
          DEVICE,
          ALTIMETER,
          MASS,
          ROD,
          TILT,
          TILT_TOWARD,
          WIND_MEAN,
          WIND_GUST,
          WIND_FROM,
          VERDICT,
          REASON,
          LIMIT,
          AGAINST,
          PREDICTED_APOGEE,
          PREDICTED_BEST_DELAY,
          PREDICTED_DESCENT,
          PREDICTED_BEARING,
          PREDICTED_DISTANCE,
          PREDICTED_SPREAD_LONG,
          PREDICTED_SPREAD_SHORT,
          PREDICTED_SPREAD_ALONG,
          PREDICTED_EJECTION,
          PREDICTED_ALOFT,
          PREDICTED_TOP,
          PREDICTED_TOP_LOW,
          PREDICTED_TOP_HIGH,
          PREDICTED_DRAG,
          PREDICTED_SHARE,
          TICKED,
          UNTICKED,
          WENT_ON,
          LIFTOFF_AT,
          LIFTOFF_UP,
          LIFTOFF_BOOT,
          EJECTION_MARK,
          TOUCHDOWN_MARK,
          BOOST,
          BOOST_TOWARD,
          BURN,
          EJECTION,
          MEASURED_DELAY,
          RECOVERY,
          LANDING,
          LANDED_ON,
          LANDING_BEARING,
          LANDING_DISTANCE,
          ALTITUDE,
          TRACE,
          DAMAGE,
          CONDITION,
          TO_MEND,
          TO_MEND_SEVERITY,
          NOTE);

  /** The set-up fields a new card takes over from that rocket's last flight. */
  public static final List<Column<?>> SET_UP =
      List.of(
          ROCKET, FLIER, MOTOR, LOT, BOOSTER_LOT, DEVICE, ALTIMETER, MASS, ROD, TILT, TILT_TOWARD);

  private static Column<Length> length(String name, String meaning) {
    return Column.quantity(name, meaning, Length::new, Length::metres);
  }

  private static Column<TimeSpan> span(String name, String meaning) {
    return Column.quantity(name, meaning, TimeSpan::new, TimeSpan::seconds);
  }

  public Status status() {
    return facts.get(STATUS).orElse(Status.DRAFT);
  }

  public Optional<RecordId> day() {
    return facts.get(DAY);
  }

  /** True while it is only meant to be flown. */
  public boolean isPlanned() {
    return status() == Status.PLANNED;
  }

  /** Its place among those of its day that are begun, or among the planned; absent in old logs. */
  public Optional<Integer> place() {
    return facts.get(PLACE);
  }

  public Optional<RecordId> rocket() {
    return facts.get(ROCKET);
  }

  public Optional<String> motor() {
    return facts.get(MOTOR);
  }

  public Optional<RecordId> lot() {
    return facts.get(LOT);
  }

  public Optional<RecordId> boosterLot() {
    return facts.get(BOOSTER_LOT);
  }

  /** How many motors it takes from each lot it names. */
  public Map<RecordId, Integer> fired() {
    return MotorText.fired(motor(), lot(), boosterLot());
  }

  public Optional<RecordId> device() {
    return facts.get(DEVICE);
  }

  public Optional<RecordId> altimeter() {
    return facts.get(ALTIMETER);
  }

  /** Pad position from 1 on, where the day has several. */
  public Optional<Integer> pad() {
    return facts.get(PAD);
  }

  /** Whose flight it is, where that was told. */
  public Optional<String> flier() {
    return facts.get(FLIER).filter(name -> !name.isBlank());
  }

  public Optional<Wind> wind() {
    return Weather.windIn(facts);
  }

  public Optional<Ruling.Verdict> verdict() {
    return facts.get(VERDICT);
  }

  public Optional<Length> altitude() {
    return facts.get(ALTITUDE);
  }

  /** True when it is more than planned or a draft. */
  public boolean isTold() {
    return status() != Status.DRAFT && !isPlanned();
  }

  /** True while its card is being filled or waits for its turn: it holds what it names. */
  public boolean isOpen() {
    return status() == Status.DRAFT || status() == Status.CARD;
  }

  /** True when it was flown and somebody measured how high it went. */
  public boolean isMeasured() {
    return status() == Status.FLOWN && altitude().filter(top -> top.metres() > 0).isPresent();
  }

  /** True when it was flown and nothing of the outcome has been told yet. */
  public boolean awaitsDebrief() {
    return status() == Status.FLOWN && facts.get(BURN).isEmpty();
  }
}
