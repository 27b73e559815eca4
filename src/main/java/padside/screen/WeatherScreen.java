package padside.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Kind;
import padside.flight.Weather;
import padside.form.FormField;
import padside.form.Place;
import padside.form.Rule;
import padside.form.Share;
import padside.form.Texts;
import padside.preflight.Forecasts;
import padside.units.Notations;
import padside.units.UnitSystem;

/** The form of a weather reading. */
final class WeatherScreen {
  private WeatherScreen() {}

  /** A reading of now; all but the wind starts from the day's reading before. */
  static Screen create(Day day, World world) {
    return RecordForm.ofNew(
        sheet(Optional.of(day), world), CardStart.weather(day.id(), world), world);
  }

  static RecordForm.Sheet sheet(Optional<Day> day, World world) {
    UnitSystem units = world.settings().units();
    Optional<Field> field = day.flatMap(Day::field).flatMap(world.log()::field);
    return new RecordForm.Sheet(
        Kind.WEATHER,
        "weather reading",
        fields(units),
        (facts, now) -> told(byWire(facts, day, now), air(facts, field, units)));
  }

  private static Optional<String> byWire(Facts typed, Optional<Day> day, World world) {
    return day.map(each -> typed.with(Weather.DAY, each.id()))
        .flatMap(facts -> ByWire.offer(facts, world))
        .map(Line::text);
  }

  private static Optional<String> told(Optional<String> wire, Optional<String> air) {
    return Stream.of(wire, air)
        .flatMap(Optional::stream)
        .reduce((first, second) -> first + " · " + second);
  }

  /** How thin the air is, once something is typed that tells. */
  private static Optional<String> air(Facts typed, Optional<Field> field, UnitSystem units) {
    Weather weather = new Weather(new RecordId("being read"), typed);
    boolean told = weather.temperature().isPresent() || weather.pressure().isPresent();
    return Forecasts.densityAltitude(field, weather)
        .filter(any -> told)
        .map(height -> "Air " + OutlookText.air(height, units));
  }

  private static List<FormField<?>> fields(UnitSystem units) {
    return List.of(
        new FormField<>(
            Place.wind(),
            "Wind",
            Notations.wind(units),
            Rule.none(),
            "Mean and gust, and where it comes from: 6g9 SW, calm, B3 W."),
        FormField.of(
            Weather.WIND_HEIGHT,
            "Height of reading",
            Notations.distance(units),
            "Of the wind meter above ground; blank is 2 m, held in the hand."),
        FormField.of(
            Weather.TEMPERATURE,
            "Temperature",
            Notations.temperature(units),
            "Of the air in the shade, like " + Notations.temperature(units).example() + "."),
        FormField.of(
            Weather.PRESSURE,
            "Station pressure",
            Notations.pressure(units),
            "As a barometer here shows it, NOT reduced to sea level like a forecast's. Blank: from"
                + " the field's elevation."),
        FormField.of(
            Weather.HUMIDITY, "Humidity", new Share(), "Relative humidity, like 55% or 0.55."),
        FormField.of(
            Weather.CLOUD_BASE,
            "Cloud base",
            Notations.altitude(units),
            "Above ground; blank when there is no cloud to reach."),
        FormField.of(Weather.SKY, "Sky", new Texts(""), "In words: clear, haze, showers north."),
        FormField.of(Weather.NOTE, "Note", new Texts(""), "Anything worth knowing."));
  }
}
