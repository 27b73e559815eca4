package padside.app;

import static padside.units.Notations.altitude;
import static padside.units.Notations.angle;
import static padside.units.Notations.bearing;
import static padside.units.Notations.bodyLength;
import static padside.units.Notations.canopyLength;
import static padside.units.Notations.distance;
import static padside.units.Notations.mass;
import static padside.units.Notations.number;
import static padside.units.Notations.pressure;
import static padside.units.Notations.rodLength;
import static padside.units.Notations.temperature;
import static padside.units.Notations.timeSpan;
import static padside.units.Notations.windSpeed;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Altimeter;
import padside.flight.Attempt;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.form.Conditions;
import padside.form.Coordinate;
import padside.form.Counts;
import padside.form.DateText;
import padside.form.Dates;
import padside.form.EdgesNotation;
import padside.form.HazardsNotation;
import padside.form.Place;
import padside.form.Share;
import padside.form.Texts;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.UnitSystem;

/** What the words of the script stand for in the records, read as a flier's typing is read. */
final class DemoForms {
  /** The flier of the season thinks in these. */
  static final UnitSystem UNITS = UnitSystem.US;

  private static final Notation<String> TEXT = new Texts("");

  private final DemoNames names;
  private final Map<Kind, Map<String, Function<String, Facts>>> forms = new LinkedHashMap<>();

  DemoForms(DemoNames names) {
    this.names = names;
    fleet();
    box();
    places();
    weather();
    flights();
  }

  /** The facts of a kind that a step's words tell; words of no field of that kind are left. */
  Facts read(Kind kind, DemoStep step) {
    Facts facts = Facts.none();
    for (Map.Entry<String, String> word : step.words().entrySet()) {
      Function<String, Facts> reads = forms.get(kind).get(word.getKey());
      facts = reads == null ? facts : facts.with(reads.apply(word.getValue()));
    }
    return facts;
  }

  /** A value as the flier reads it off and notes it: rounded, with the text it was noted as. */
  static <T> Facts noted(Column<T> column, Notation<T> notation, T value) {
    return typed(Place.of(column), notation, notation.show(value));
  }

  private void fleet() {
    word(Kind.ROCKET, "rocket", Rocket.NAME, TEXT);
    word(Kind.ROCKET, "mass", Rocket.MASS, mass(UNITS));
    word(Kind.ROCKET, "booster_mass", Rocket.BOOSTER_MASS, mass(UNITS));
    word(Kind.ROCKET, "diameter", Rocket.DIAMETER, bodyLength(UNITS));
    word(Kind.ROCKET, "drag_coefficient", Rocket.DRAG_COEFFICIENT, number());
    word(Kind.ROCKET, "mount", Rocket.MOUNT, bodyLength(UNITS));
    word(Kind.ROCKET, "rod", Rocket.ROD, rodLength(UNITS));
    word(Kind.ROCKET, "own_limit", Rocket.OWN_LIMIT, windSpeed(UNITS));
    refers(Kind.ROCKET, "device", Rocket.DEVICE, Kind.DEVICE);
    word(Kind.ROCKET, "flier", Rocket.FLIER, TEXT);
    word(Kind.ROCKET, "note", Rocket.NOTE, TEXT);
  }

  private void box() {
    word(Kind.DEVICE, "device", RecoveryDevice.NAME, TEXT);
    chosen(Kind.DEVICE, "shape", RecoveryDevice.SHAPE);
    word(Kind.DEVICE, "diameter", RecoveryDevice.DIAMETER, canopyLength(UNITS));
    word(Kind.DEVICE, "width", RecoveryDevice.WIDTH, canopyLength(UNITS));
    word(Kind.DEVICE, "length", RecoveryDevice.LENGTH, canopyLength(UNITS));
    word(Kind.DEVICE, "drag_coefficient", RecoveryDevice.DRAG_COEFFICIENT, number());
    word(Kind.DEVICE, "note", RecoveryDevice.NOTE, TEXT);
    word(Kind.ALTIMETER, "altimeter", Altimeter.NAME, TEXT);
    word(Kind.ALTIMETER, "note", Altimeter.NOTE, TEXT);
    word(Kind.LOT, "lot", Lot.CODE, TEXT);
    word(Kind.LOT, "motor", Lot.MOTOR, TEXT);
    word(Kind.LOT, "bought", Lot.BOUGHT, new Counts(false));
    word(Kind.LOT, "correction", Lot.CORRECTION, new Counts(true));
    word(Kind.LOT, "bought_on", Lot.BOUGHT_ON, new DateText());
    word(Kind.LOT, "place", Lot.PLACE, TEXT);
    word(Kind.LOT, "note", Lot.NOTE, TEXT);
  }

  private void places() {
    word(Kind.FIELD, "field", Field.NAME, TEXT);
    word(Kind.FIELD, "elevation", Field.ELEVATION, altitude(UNITS));
    word(Kind.FIELD, "edges", Field.EDGES, new EdgesNotation(UNITS));
    word(Kind.FIELD, "hazards", Field.HAZARDS, new HazardsNotation(UNITS));
    word(Kind.FIELD, "smallest_side", Field.SMALLEST_SIDE, distance(UNITS));
    word(Kind.FIELD, "latitude", Field.LATITUDE, Coordinate.LATITUDE);
    word(Kind.FIELD, "longitude", Field.LONGITUDE, Coordinate.LONGITUDE);
    word(Kind.FIELD, "note", Field.NOTE, TEXT);
    word(Kind.DAY, "day", Day.DATE, new Dates());
    refers(Kind.DAY, "field", Day.FIELD, Kind.FIELD);
    flag(Kind.DAY, "permission", Day.PERMISSION);
    flag(Kind.DAY, "fire_ban", Day.FIRE_BAN);
    word(Kind.DAY, "note", Day.NOTE, TEXT);
  }

  private void weather() {
    wind(Kind.WEATHER);
    word(Kind.WEATHER, "temperature", Weather.TEMPERATURE, temperature(UNITS));
    word(Kind.WEATHER, "pressure", Weather.PRESSURE, pressure(UNITS));
    word(Kind.WEATHER, "humidity", Weather.HUMIDITY, new Share());
    word(Kind.WEATHER, "cloud_base", Weather.CLOUD_BASE, altitude(UNITS));
    word(Kind.WEATHER, "sky", Weather.SKY, TEXT);
    word(Kind.WEATHER, "note", Weather.NOTE, TEXT);
  }

  private void flights() {
    refers(Kind.FLIGHT, "flight", Flight.ROCKET, Kind.ROCKET);
    refers(Kind.FLIGHT, "planned", Flight.ROCKET, Kind.ROCKET);
    word(Kind.FLIGHT, "flier", Flight.FLIER, TEXT);
    chosen(Kind.FLIGHT, "motor", Flight.MOTOR);
    refers(Kind.FLIGHT, "lot", Flight.LOT, Kind.LOT);
    refers(Kind.FLIGHT, "booster_lot", Flight.BOOSTER_LOT, Kind.LOT);
    refers(Kind.FLIGHT, "device", Flight.DEVICE, Kind.DEVICE);
    refers(Kind.FLIGHT, "altimeter", Flight.ALTIMETER, Kind.ALTIMETER);
    word(Kind.FLIGHT, "mass", Flight.MASS, mass(UNITS));
    word(Kind.FLIGHT, "rod", Flight.ROD, rodLength(UNITS));
    word(Kind.FLIGHT, "tilt", Flight.TILT, angle());
    word(Kind.FLIGHT, "tilt_toward", Flight.TILT_TOWARD, bearing());
    wind(Kind.FLIGHT);
    word(Kind.FLIGHT, "against", Flight.AGAINST, TEXT);
    word(Kind.FLIGHT, "measured_delay", Flight.MEASURED_DELAY, timeSpan());
    word(Kind.FLIGHT, "boost_toward", Flight.BOOST_TOWARD, bearing());
    word(Kind.FLIGHT, "condition", Flight.CONDITION, new Conditions(Shipped.outcomes()));
    word(Kind.FLIGHT, "note", Flight.NOTE, TEXT);
    refers(Kind.FIX, "fix", Fix.ROCKET, Kind.ROCKET);
    word(Kind.FIX, "text", Fix.TEXT, TEXT);
    chosen(Kind.FIX, "severity", Fix.SEVERITY);
    word(Kind.ATTEMPT, "igniter", Attempt.IGNITER, TEXT);
    chosen(Kind.ATTEMPT, "cause", Attempt.CAUSE);
    word(Kind.ATTEMPT, "note", Attempt.NOTE, TEXT);
    word(Kind.FIX, "on", Fix.DONE_ON, new Dates());
    word(Kind.FIX, "done_note", Fix.DONE_NOTE, TEXT);
  }

  private <T> void word(Kind kind, String word, Column<T> column, Notation<T> notation) {
    form(kind, word, text -> typed(Place.of(column), notation, text));
  }

  private void wind(Kind kind) {
    form(kind, "wind", text -> typed(Place.wind(), Notations.wind(UNITS), text));
  }

  /** Picked from a list, so that nothing was typed; the script has the value as it is stored. */
  private <T> void chosen(Kind kind, String word, Column<T> column) {
    form(kind, word, text -> Facts.none().with(column, column.read().apply(text)));
  }

  private void flag(Kind kind, String word, Column<Boolean> column) {
    form(kind, word, text -> Facts.none().with(column, text.equals("yes")));
  }

  private void refers(Kind kind, String word, Column<RecordId> column, Kind to) {
    form(kind, word, text -> Facts.none().with(column, names.get(to, text)));
  }

  private void form(Kind kind, String word, Function<String, Facts> reads) {
    forms.computeIfAbsent(kind, none -> new LinkedHashMap<>()).put(word, reads);
  }

  /** A text read into its place, kept beside the value. */
  static <T> Facts typed(Place<T> place, Notation<T> notation, String text) {
    return notation
        .read(text)
        .value()
        .map(value -> place.put(value, text))
        .orElseThrow(() -> new IllegalStateException("The script has \"" + text + "\""));
  }
}
