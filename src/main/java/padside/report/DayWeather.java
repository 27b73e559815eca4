package padside.report;

import java.util.List;
import java.util.Optional;
import padside.flight.Weather;
import padside.page.Block;
import padside.page.Table;
import padside.units.Length;
import padside.units.Notations;
import padside.units.Pressure;
import padside.units.Temperature;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** What was read of the weather on a day. */
record DayWeather(PageSource source) {
  List<Block> of(List<Weather> readings) {
    UnitSystem units = source.units();
    UnitNotation<Temperature> warmth = Notations.temperature(units);
    UnitNotation<Pressure> pressure = Notations.pressure(units);
    UnitNotation<Length> height = Notations.altitude(units);
    List<Table.Column> columns =
        List.of(
            Table.Column.of("At"),
            Table.Column.of("Wind"),
            Table.Column.ofNumbers("Air " + warmth.symbol()),
            Table.Column.ofNumbers("Station pressure " + pressure.symbol()),
            Table.Column.ofNumbers("Humidity %"),
            Table.Column.ofNumbers("Cloud base " + height.symbol()),
            Table.Column.of("Sky"),
            Table.Column.of("Note"));
    List<List<String>> rows =
        readings.stream()
            .map(
                reading ->
                    List.of(
                        reading.at().map(source::clock).orElse("?"),
                        reading.wind().map(Notations.wind(units)::show).orElse(""),
                        bare(reading.temperature(), warmth),
                        bare(reading.pressure(), pressure),
                        reading.humidity().map(h -> String.valueOf(Math.round(100 * h))).orElse(""),
                        bare(reading.cloudBase(), height),
                        reading.facts().get(Weather.SKY).orElse(""),
                        reading.facts().get(Weather.NOTE).orElse("")))
            .toList();
    return rows.isEmpty()
        ? List.of()
        : List.of(new Table("As it was read", columns, rows).withoutBlankColumns());
  }

  private static <T> String bare(Optional<T> value, UnitNotation<T> notation) {
    return value.map(notation::showBare).orElse("");
  }
}
