package padside.app;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Weather;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Pressure;
import padside.units.Temperature;
import padside.units.Wind;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options that tell the air a flight goes through, and when it goes. */
final class WeatherOptions {
  @Option(
      names = "--wind",
      paramLabel = "WIND",
      converter = Written.OfWind.class,
      description = "such as calm, 6mph, 6g9mph, 2.5m/s, B3 W")
  private Wind wind;

  @Option(
      names = "--wind-from",
      paramLabel = "BEARING",
      converter = Written.OfBearing.class,
      description =
          "bearing the wind comes from, such as 240 or SW; without it --json tells the landing as"
              + " in a wind from north")
  private Bearing windFrom;

  @Option(
      names = "--wind-height",
      paramLabel = "LENGTH",
      converter = Written.OfDistance.class,
      description = "height the wind was read at (hand-held, 2m, if none)")
  private Length windHeight;

  @Option(
      names = "--temp",
      paramLabel = "TEMPERATURE",
      converter = Written.OfTemperature.class,
      description = "air temperature, such as 41F or 5C; standard for the elevation if none")
  private Temperature temperature;

  @Option(
      names = "--pressure",
      paramLabel = "PRESSURE",
      converter = Written.OfPressure.class,
      description = "station pressure, not reduced to sea level, such as 985hPa; standard if none")
  private Pressure pressure;

  @Option(
      names = "--humidity",
      paramLabel = "SHARE",
      converter = Written.OfShare.class,
      description = "relative humidity, such as 65%%; dry air if none")
  private Double humidity;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      converter = TimeConverter.class,
      description =
          "when it flies, for the sun: ISO 8601 with the offset from UTC, such as"
              + " 2026-10-17T11:05+02:00; wants --lat and --lon")
  private Instant at;

  Optional<Wind> wind() {
    return Optional.ofNullable(wind)
        .map(
            given ->
                windFrom == null
                    ? given
                    : new Wind(given.mean(), given.gust(), Optional.of(windFrom)));
  }

  /** The reading, but for its wind. */
  Weather reading(RecordId id) {
    return new Weather(
        id,
        Facts.none()
            .with(Weather.WIND_HEIGHT, Optional.ofNullable(windHeight))
            .with(Weather.TEMPERATURE, Optional.ofNullable(temperature))
            .with(Weather.PRESSURE, Optional.ofNullable(pressure))
            .with(Weather.HUMIDITY, Optional.ofNullable(humidity)));
  }

  Optional<Instant> at() {
    return Optional.ofNullable(at);
  }

  /** Reads {@code 2026-10-17T11:05+02:00}. */
  static final class TimeConverter implements ITypeConverter<Instant> {
    @Override
    public Instant convert(String text) {
      try {
        return OffsetDateTime.parse(text.strip()).toInstant();
      } catch (DateTimeParseException e) {
        throw new TypeConversionException(
            "\""
                + text
                + "\" is not a time with its offset from UTC; type it like"
                + " 2026-10-17T11:05+02:00 or 2026-10-17T09:05Z.");
      }
    }
  }
}
