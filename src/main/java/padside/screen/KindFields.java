package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Ruling;
import padside.form.Choices;
import padside.form.FormField;
import padside.form.Share;
import padside.form.Texts;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/**
 * How the fields of every kind of record are called and shown: as its forms have them, and for what
 * no form asks as declared here.
 */
public final class KindFields {
  /** Of what the program found what is no answer of the check. */
  private static final List<String> OWN =
      List.of(
          Flight.STATUS.name(), Flight.AGAINST.name(), Flight.WENT_ON.name(), Flight.TRACE.name());

  private KindFields() {}

  /** What one record of a kind is called. */
  static String noun(Kind kind, World world) {
    return sheet(kind, world).map(RecordForm.Sheet::noun).orElse(kind.code());
  }

  /**
   * The fields of a record, those of its forms first.
   *
   * @param facts of the record, on which the fields of a card depend
   */
  public static List<FormField<?>> of(Kind kind, Facts facts, World world) {
    if (kind != Kind.FLIGHT) {
      return sheet(kind, world).map(RecordForm.Sheet::fields).orElse(List.of());
    }
    Flight flight = new Flight(new RecordId("as it was"), facts);
    List<FormField<?>> fields = new ArrayList<>(CardFields.of(facts, Optional.empty(), world));
    fields.addAll(DebriefFields.of(flight, facts, world));
    fields.addAll(found(world));
    return List.copyOf(fields);
  }

  /** What a record is called: what stands in its first fields. */
  static String name(Kind kind, Facts facts, World world) {
    return of(kind, facts, world).stream()
        .map(field -> field.textIn(facts))
        .filter(text -> !text.isBlank())
        .limit(2)
        .reduce((first, second) -> first + " · " + second)
        .orElse("nothing typed");
  }

  private static Optional<RecordForm.Sheet> sheet(Kind kind, World world) {
    return switch (kind) {
      case ROCKET -> Optional.of(RocketFields.sheet(world));
      case MOTOR -> Optional.of(MotorFields.sheet(world));
      case LOT -> Optional.of(RangeBoxFields.lot(world));
      case DEVICE -> Optional.of(RangeBoxFields.device(world));
      case ALTIMETER -> Optional.of(RangeBoxFields.altimeter());
      case FIELD -> Optional.of(FieldsScreen.sheet(world));
      case DAY -> Optional.of(DayForm.sheet(world));
      case WEATHER -> Optional.of(WeatherScreen.sheet(Optional.empty(), world));
      case FIX -> Optional.of(FixShelf.sheet());
      case SIGHTING -> Optional.of(SightShelf.sheet(world));
      case CLOCK -> Optional.of(ClockScreen.sheet(world));
      case FLIGHT, ATTEMPT, CHECKLINE -> Optional.empty();
    };
  }

  /**
   * Of a flight what the check answered and foretold. It belongs together: one part of it beside
   * another of a different check says nothing.
   */
  static Set<String> ofOneCheck(World world) {
    return found(world).stream()
        .map(FormField::name)
        .filter(name -> !OWN.contains(name))
        .collect(Collectors.toSet());
  }

  /** What the program found for a flight. */
  private static List<FormField<?>> found(World world) {
    UnitSystem units = world.settings().units();
    return List.of(
        FormField.choice(Flight.STATUS, "Status", statuses(), ""),
        FormField.choice(Flight.VERDICT, "Check", verdicts(), ""),
        text(Flight.REASON, "Because"),
        speed(Flight.LIMIT, "Wind limit", units),
        text(Flight.AGAINST, "Flown anyway"),
        length(Flight.PREDICTED_APOGEE, "Predicted apogee", units),
        seconds(Flight.PREDICTED_BEST_DELAY, "Best delay"),
        FormField.of(
            Flight.PREDICTED_DESCENT, "Predicted descent", Notations.descentRate(units), ""),
        bearing(Flight.PREDICTED_BEARING, "Expected toward"),
        FormField.of(Flight.PREDICTED_DISTANCE, "Expected at", Notations.distance(units), ""),
        FormField.of(Flight.PREDICTED_SPREAD_LONG, "Landings along", Notations.distance(units), ""),
        FormField.of(Flight.PREDICTED_SPREAD_SHORT, "and across", Notations.distance(units), ""),
        bearing(Flight.PREDICTED_SPREAD_ALONG, "which points"),
        seconds(Flight.PREDICTED_EJECTION, "Expected ejection"),
        seconds(Flight.PREDICTED_ALOFT, "Expected aloft"),
        length(Flight.PREDICTED_TOP, "Predicted top", units),
        length(Flight.PREDICTED_TOP_LOW, "not below", units),
        length(Flight.PREDICTED_TOP_HIGH, "nor above", units),
        FormField.of(Flight.PREDICTED_DRAG, "Predicted drag", Notations.number(), ""),
        FormField.of(Flight.PREDICTED_SHARE, "Told to hold", new Share(), ""),
        text(Flight.WENT_ON, "Went on"),
        FormField.of(Flight.TRACE, "Trace", new TraceNotation(units), ""));
  }

  private static Choices<Flight.Status> statuses() {
    return new Choices<>(
        "status",
        Stream.of(Flight.Status.values())
            .map(status -> new Choices.Option<>(status, status.words(), ""))
            .toList());
  }

  private static Choices<Ruling.Verdict> verdicts() {
    return new Choices<>(
        "answer",
        Stream.of(Ruling.Verdict.values())
            .map(verdict -> new Choices.Option<>(verdict, verdict.word(), ""))
            .toList());
  }

  private static FormField<String> text(Column<String> column, String label) {
    return FormField.of(column, label, new Texts(""), "");
  }

  private static FormField<TimeSpan> seconds(Column<TimeSpan> column, String label) {
    return FormField.of(column, label, Notations.timeSpan(), "");
  }

  private static FormField<Bearing> bearing(Column<Bearing> column, String label) {
    return FormField.of(column, label, Notations.bearing(), "");
  }

  private static FormField<Length> length(Column<Length> column, String label, UnitSystem units) {
    return FormField.of(column, label, Notations.altitude(units), "");
  }

  private static FormField<Speed> speed(Column<Speed> column, String label, UnitSystem units) {
    return FormField.of(column, label, Notations.windSpeed(units), "");
  }
}
