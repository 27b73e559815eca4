package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.RecoveryDevice;
import padside.flight.Rocket;
import padside.flight.Weather;

/**
 * Finds what the check uses and somebody has typed, but in a way that cannot be read. A usual value
 * in its place would answer to something other than what was meant, so it counts as missing.
 */
final class Unread {
  static final String WIND = "wind";
  static final String MASS = "mass without motor";
  static final String ROD = "rod length";

  private final List<String> nouns = new ArrayList<>();

  private Unread() {}

  /** What cannot be read on the card and in what it refers to, as nouns. */
  static List<String> in(Flight flight, Card card) {
    Unread unread = new Unread();
    Facts facts = flight.facts();
    unread.note(facts, Flight.WIND_MEAN, WIND);
    unread.note(facts, Flight.MASS, MASS);
    unread.note(facts, Flight.ROD, ROD);
    unread.note(facts, Flight.TILT, "rod tilt");
    unread.note(facts, Flight.TILT_TOWARD, "where the rod leans toward");
    card.rocket().ifPresent(unread::of);
    card.device().ifPresent(unread::of);
    card.weather().ifPresent(unread::of);
    card.field().ifPresent(unread::of);
    card.day().ifPresent(unread::of);
    return List.copyOf(unread.nouns);
  }

  private void of(Rocket rocket) {
    note(rocket.facts(), Rocket.DRAG_COEFFICIENT, "drag coefficient of " + rocket.name());
    note(rocket.facts(), Rocket.OWN_LIMIT, "own wind limit of " + rocket.name());
  }

  private void of(RecoveryDevice device) {
    note(device.facts(), RecoveryDevice.SHAPE, "shape of " + device.name());
    note(device.facts(), RecoveryDevice.DRAG_COEFFICIENT, "drag coefficient of " + device.name());
  }

  private void of(Weather weather) {
    note(weather.facts(), Weather.WIND_HEIGHT, "height of the wind reading");
    note(weather.facts(), Weather.TEMPERATURE, "temperature");
    note(weather.facts(), Weather.PRESSURE, "station pressure");
    note(weather.facts(), Weather.HUMIDITY, "humidity");
    note(weather.facts(), Weather.CLOUD_BASE, "cloud base");
  }

  private void of(Field field) {
    note(field.facts(), Field.EDGES, "field edges");
    note(field.facts(), Field.HAZARDS, "hazards on the field");
    note(field.facts(), Field.ELEVATION, "elevation of the field");
    note(field.facts(), Field.SMALLEST_SIDE, "smallest side of the field");
  }

  private void of(Day day) {
    note(day.facts(), Day.PERMISSION, "permission");
    note(day.facts(), Day.FIRE_BAN, "fire ban");
  }

  private void note(Facts facts, Column<?> column, String noun) {
    if (is(facts, column)) {
      nouns.add(noun);
    }
  }

  private static boolean is(Facts facts, Column<?> column) {
    boolean typed = facts.typed(column).filter(text -> !text.isBlank()).isPresent();
    return typed && facts.get(column).isEmpty();
  }

  /** What was typed, else the usual value; empty when what was typed cannot be read. */
  static <T> Optional<T> or(Facts facts, Column<T> column, Optional<T> usual) {
    return is(facts, column) ? Optional.empty() : facts.get(column).or(() -> usual);
  }
}
