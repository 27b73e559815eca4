package padside.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import padside.flight.Field;

/**
 * Sunrise, noon and sunset on one date by the clock of a zone: the centre of the sun at zenith
 * 90°50′, as almanacs have it. Where the sun sets after midnight a sunset can come before its
 * date's sunrise.
 *
 * @param sunrise absent where the sun stays up or down all day
 * @param noon when the sun stands highest
 * @param sunset absent where the sun stays up or down all day
 */
public record Daylight(Optional<Instant> sunrise, Instant noon, Optional<Instant> sunset) {
  /** The daylight of a date at a place. */
  public static Daylight on(Field.Coordinates place, LocalDate date, ZoneId zone) {
    SunriseResult found =
        SPA.calculateSunriseTransitSet(
            date.atStartOfDay(zone),
            place.latitudeDeg(),
            place.longitudeDeg(),
            Sun.deltaT(date),
            SPA.Horizon.SUNRISE_SUNSET);
    Instant noon = found.transit().toInstant();
    return found instanceof SunriseResult.RegularDay day
        ? new Daylight(
            Optional.of(day.sunrise().toInstant()), noon, Optional.of(day.sunset().toInstant()))
        : new Daylight(Optional.empty(), noon, Optional.empty());
  }
}
