package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.wire.WireWind;

/**
 * The worked example of I. Reda and A. Andreas, Solar position algorithm, NREL/TP-560-34302 (2003):
 * on 17 October 2003 at 12:30:30, seven hours behind UTC, the sun stands at azimuth 194.34° and
 * zenith 50.11°. The sunset printed there is that of the day before; by an independent library the
 * sun rises at 06:12:43 and sets at 17:18:52.
 */
class SunTextTest {
  private static final LocalDate DATE = LocalDate.of(2003, 10, 17);
  private static final ZoneOffset ZONE = ZoneOffset.ofHours(-7);

  private final MemoryFlightLog log = new MemoryFlightLog();

  private Optional<String> at(String time, Facts field) {
    RecordId place = log.has(Kind.FIELD, field);
    RecordId day = log.has(Kind.DAY, Facts.none().with(Day.DATE, DATE).with(Day.FIELD, place));
    World seen = Desk.over(log).session().world();
    Instant now = DATE.atTime(java.time.LocalTime.parse(time)).toInstant(ZONE);
    World world =
        new World(
            Desk.moment(now),
            ZONE,
            seen.settings(),
            seen.log(),
            seen.outcomes(),
            seen.checklist(),
            seen.packing(),
            seen.braille(),
            seen.ease(),
            Optional.empty(),
            Sync.none(),
            WireWind.none(),
            0);
    return SunText.of(world.log().day(day).orElseThrow(), world);
  }

  private static Facts at(double latitude, double longitude) {
    return Facts.none().with(Field.LATITUDE, latitude).with(Field.LONGITUDE, longitude);
  }

  @Test
  void by_day_it_stands_somewhere_and_sets_sometime() {
    assertThat(at("12:30:30", at(39.742476, -105.1786)))
        .contains("Sun 194° SSW, 40° up; sets 17:18");
  }

  @Test
  void by_night_it_is_down_and_rises_or_has_set() {
    assertThat(at("05:00", at(39.742476, -105.1786))).contains("Sun down; rises 06:12");
    assertThat(at("19:00", at(39.742476, -105.1786))).contains("Sun down since 17:18");
  }

  /** In October it does not rise near the north pole and does not set near the south pole. */
  @Test
  void near_the_poles_it_stays_up_or_down_all_day() {
    assertThat(at("12:00", at(89, -105)).orElseThrow()).isEqualTo("Sun down; does not rise today");
    assertThat(at("12:00", at(-89, -105)).orElseThrow()).endsWith("does not set today");
  }

  @Test
  void without_coordinates_nothing_is_told() {
    assertThat(List.of(at("12:00", Facts.none()))).containsExactly(Optional.empty());
  }
}
