package padside.flight;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Pressure;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.TimeSpan;
import padside.units.Wind;

/** One look at the weather during a day. Wind is as read at the height noted. */
public record Weather(RecordId id, Facts facts) {
  public static final Column<RecordId> DAY = Column.reference("day", "the day it was read on");
  public static final Column<Instant> AT =
      Column.instant("at", "when it was read, ISO 8601 in UTC, by the machine's clock");
  public static final Column<TimeSpan> UP =
      Column.quantity(
          "up_s",
          "when it was read, seconds since the machine was started",
          TimeSpan::new,
          TimeSpan::seconds);
  public static final Column<String> BOOT =
      Column.text("boot", "that start of the machine, as its operating system names it");
  public static final Column<Speed> WIND_MEAN =
      Column.quantity("wind_mean_mps", "mean wind", Speed::new, Speed::metresPerSecond);
  public static final Column<Speed> WIND_GUST =
      Column.quantity(
          "wind_gust_mps", "gust, the mean when none was seen", Speed::new, Speed::metresPerSecond);
  public static final Column<Bearing> WIND_FROM =
      Column.quantity(
          "wind_from_deg", "true bearing the wind comes from", Bearing::new, Bearing::degrees);
  public static final Column<Length> WIND_HEIGHT =
      Column.quantity(
          "wind_height_m", "height above ground of the wind meter", Length::new, Length::metres);
  public static final Column<Temperature> TEMPERATURE =
      Column.quantity("temperature_k", "air temperature", Temperature::new, Temperature::kelvins);
  public static final Column<Pressure> PRESSURE =
      Column.quantity(
          "pressure_pa",
          "station pressure at the field, not reduced to sea level",
          Pressure::new,
          Pressure::pascals);
  public static final Column<Double> HUMIDITY =
      Column.number("relative_humidity", "relative humidity from 0 to 1");
  public static final Column<Length> CLOUD_BASE =
      Column.quantity("cloud_base_m", "cloud base above ground", Length::new, Length::metres);
  public static final Column<String> SKY = Column.text("sky", "sky in words");
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  static final List<Column<?>> COLUMNS =
      List.of(
          DAY,
          AT,
          UP,
          BOOT,
          WIND_MEAN,
          WIND_GUST,
          WIND_FROM,
          WIND_HEIGHT,
          TEMPERATURE,
          PRESSURE,
          HUMIDITY,
          CLOUD_BASE,
          SKY,
          NOTE);

  /** What changes slowly enough to hold on until it is read again. */
  public static final List<Column<?>> SLOW =
      List.of(WIND_HEIGHT, TEMPERATURE, PRESSURE, HUMIDITY, CLOUD_BASE, SKY);

  /** This reading with what it is silent about as an earlier one had it, the wind apart. */
  Weather after(Weather earlier) {
    Facts slow = Facts.none();
    for (Column<?> column : SLOW) {
      Facts.Cell cell = earlier.facts.cells().get(column.name());
      slow = cell == null ? slow : slow.with(column.name(), cell);
    }
    return new Weather(id, slow.with(facts));
  }

  /** The facts of a wind, with the text it was read from. */
  public static Facts facts(Wind wind, Optional<String> typed) {
    Facts speeds =
        Facts.none()
            .with(
                WIND_MEAN.name(), new Facts.Cell(Optional.of(wind.mean().metresPerSecond()), typed))
            .with(WIND_GUST, wind.gust());
    return wind.from()
        .map(from -> speeds.with(WIND_FROM, from))
        .orElse(speeds.with(WIND_FROM.name(), Facts.Cell.emptied()));
  }

  /** The wind among any facts that have the wind columns; absent when no mean is known. */
  public static Optional<Wind> windIn(Facts facts) {
    return facts
        .get(WIND_MEAN)
        .filter(mean -> mean.metresPerSecond() >= 0)
        .map(
            mean -> {
              Speed gust = facts.get(WIND_GUST).orElse(mean);
              boolean below = gust.metresPerSecond() < mean.metresPerSecond();
              return new Wind(mean, below ? mean : gust, facts.get(WIND_FROM));
            });
  }

  public Optional<RecordId> day() {
    return facts.get(DAY);
  }

  public Optional<Instant> at() {
    return facts.get(AT);
  }

  public Optional<Wind> wind() {
    return windIn(facts);
  }

  /** Height the wind was read at; absent stands for a meter held up by hand. */
  public Optional<Length> windHeight() {
    return facts.get(WIND_HEIGHT);
  }

  public Optional<Temperature> temperature() {
    return facts.get(TEMPERATURE);
  }

  public Optional<Pressure> pressure() {
    return facts.get(PRESSURE);
  }

  public Optional<Double> humidity() {
    return facts.get(HUMIDITY);
  }

  public Optional<Length> cloudBase() {
    return facts.get(CLOUD_BASE);
  }
}
