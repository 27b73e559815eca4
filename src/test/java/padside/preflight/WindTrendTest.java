package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Weather;
import padside.preflight.WindTrend.Course;
import padside.preflight.WindTrend.Crossing;
import padside.units.Speed;
import padside.units.UnitSystem;
import padside.units.Wind;

class WindTrendTest {
  private static final Instant TEN = Instant.parse("2026-05-02T10:00:00Z");
  private static final Speed TWELVE = Speed.ofMph(12);

  private static Weather reading(double minutes, double mean, double gust) {
    Wind wind = new Wind(Speed.ofMph(mean), Speed.ofMph(gust), Optional.empty());
    Facts at = Facts.none().with(Weather.AT, TEN.plus(Duration.ofSeconds((long) (60 * minutes))));
    return new Weather(new RecordId("test.1"), at.with(Weather.facts(wind, Optional.empty())));
  }

  /** Every so many minutes from ten o'clock. */
  private static List<Weather> gusts(double every, double... mph) {
    List<Weather> readings = new ArrayList<>();
    for (int i = 0; i < mph.length; i++) {
      readings.add(reading(every * i, mph[i] / 2, mph[i]));
    }
    return readings;
  }

  private static Instant minutes(long minutes) {
    return TEN.plus(Duration.ofMinutes(minutes));
  }

  @Test
  void the_slope_is_that_of_the_gusts_over_the_hours() {
    WindTrend trend = WindTrend.of(gusts(15, 6, 7, 8, 9, 10));

    assertThat(trend.readings()).isEqualTo(5);
    assertThat(trend.span().inMinutes()).isEqualTo(60);
    assertThat(trend.course()).contains(Course.RISING);
    assertThat(trend.perHour().orElseThrow().inMph()).isCloseTo(4, within(1e-9));
  }

  @Test
  void a_rising_wind_reaches_the_limit_ahead_and_says_when() {
    WindTrend trend = WindTrend.of(gusts(15, 6.2, 6.9, 7.6, 9.1, 9.8));
    Crossing crossing = trend.reaching(TWELVE, minutes(60)).orElseThrow();

    // By hand: slope 3.76 mph an hour, mean 7.92 at half past ten, 12 after 65.1 minutes more.
    assertThat(Duration.between(TEN, crossing.at()).toSeconds() / 60.0).isCloseTo(95.1, within(.1));
    assertThat(crossing.from()).isBetween(minutes(60), crossing.at());
    assertThat(crossing.to()).isAfter(crossing.at());
    assertThat(trend.sentence(TWELVE, minutes(60), UnitSystem.US, ZoneOffset.ofHours(2)))
        .isEqualTo(
            "rising 3.8 mph an hour over 5 readings; the limit of 12 mph at about 13:40"
                + " (13:20 to 13:50)");
  }

  @Test
  void a_falling_wind_comes_down_to_the_limit() {
    WindTrend trend = WindTrend.of(gusts(15, 18, 17, 16.5, 15, 14.2));
    Crossing crossing = trend.reaching(TWELVE, minutes(60)).orElseThrow();

    assertThat(trend.course()).contains(Course.FALLING);
    assertThat(crossing.at()).isAfter(minutes(80)).isBefore(minutes(110));
    assertThat(trend.sentence(UnitSystem.METRIC))
        .isEqualTo("falling 1.7 m/s an hour over 5 readings");
  }

  @Test
  void readings_that_go_up_and_down_are_steady_and_reach_no_limit() {
    WindTrend trend = WindTrend.of(gusts(15, 8, 10, 7, 10, 8));

    assertThat(trend.course()).contains(Course.STEADY);
    assertThat(trend.reaching(TWELVE, minutes(60))).isEmpty();
    assertThat(trend.sentence(TWELVE, minutes(60), UnitSystem.US, ZoneOffset.UTC))
        .isEqualTo("steady over 5 readings");
  }

  @Test
  void too_few_readings_or_too_short_a_while_say_how_many_there_are() {
    WindTrend three = WindTrend.of(gusts(15, 6, 8, 10));
    WindTrend quick = WindTrend.of(gusts(5, 6, 8, 10, 12));

    assertThat(three.course()).isEmpty();
    assertThat(three.reaching(TWELVE, minutes(30))).isEmpty();
    assertThat(three.sentence(UnitSystem.US))
        .isEqualTo("3 readings over 30 min; a trend takes 4 over 30");
    assertThat(quick.sentence(UnitSystem.US))
        .isEqualTo("4 readings over 15 min; a trend takes 4 over 30");
    assertThat(WindTrend.of(List.of()).sentence(UnitSystem.US))
        .isEqualTo("no reading of the wind yet");
  }

  @Test
  void a_limit_that_lies_behind_or_far_ahead_is_not_told() {
    WindTrend slow = WindTrend.of(gusts(20, 6, 6.4, 6.7, 7));

    assertThat(slow.course()).contains(Course.RISING);
    assertThat(slow.reaching(Speed.ofMph(6.5), minutes(60))).isEmpty();
    assertThat(slow.reaching(TWELVE, minutes(60))).isEmpty();
  }

  @Test
  void an_interval_that_has_begun_is_not_told() {
    WindTrend trend = WindTrend.of(gusts(15, 6.2, 6.9, 7.6, 9.1, 9.8));
    Crossing crossing = trend.reaching(TWELVE, minutes(60)).orElseThrow();

    assertThat(trend.reaching(TWELVE, crossing.from())).isEmpty();
    assertThat(trend.reaching(TWELVE, crossing.from().minusSeconds(1))).contains(crossing);
  }

  @Test
  void what_is_older_than_three_hours_does_not_count() {
    List<Weather> day = new ArrayList<>(gusts(15, 6.2, 6.9, 7.6, 9.1, 9.8));
    day.add(reading(-121, 15, 30));

    assertThat(WindTrend.of(day).readings()).isEqualTo(5);
  }

  @Test
  void the_order_of_the_readings_does_not_matter_and_those_without_wind_are_passed_over() {
    List<Weather> day = new ArrayList<>(gusts(15, 6.2, 6.9, 7.6, 9.1, 9.8));
    Instant last = minutes(60);
    Crossing before = WindTrend.of(day).reaching(TWELVE, last).orElseThrow();
    java.util.Collections.reverse(day);
    day.add(new Weather(new RecordId("test.2"), Facts.none().with(Weather.AT, minutes(90))));

    assertThat(WindTrend.of(day).reaching(TWELVE, last)).contains(before);
  }

  /** Four readings on one line to the whole mile an hour are no proof of the minute. */
  @Test
  void winds_noted_to_whole_miles_leave_the_time_uncertain() {
    Crossing crossing = WindTrend.of(gusts(20, 6, 7, 8, 9)).reaching(TWELVE, minutes(60)).get();

    assertThat(Duration.between(crossing.from(), crossing.to()))
        .isGreaterThan(Duration.ofMinutes(8));
  }
}
