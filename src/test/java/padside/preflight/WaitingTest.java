package padside.preflight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Rocket;
import padside.flight.Ruling.Verdict;
import padside.flight.Weather;
import padside.units.Bearing;
import padside.units.Speed;
import padside.units.Wind;

/** Waiting for less wind, on days whose wind goes along a straight line. */
class WaitingTest {
  private static final Instant TEN = Instant.parse("2026-05-02T10:00:00Z");
  private static final int QUARTERS = 5;
  private final Preflight preflight = new Preflight(Settings.standard());

  private static Wind wind(double mph) {
    return new Wind(Speed.ofMph(mph), Speed.ofMph(mph), Optional.of(new Bearing(225)));
  }

  /** A card at eleven under an own limit of 10 mph, the wind read every quarter of an hour. */
  private static CardBuilder card(double atTenMph, double perHourMph) {
    List<Weather> readings = new ArrayList<>();
    for (int i = 0; i < QUARTERS; i++) {
      Facts at = Facts.none().with(Weather.AT, TEN.plus(Duration.ofMinutes(15L * i)));
      Facts read = Weather.facts(wind(atTenMph + i * perHourMph / 4), Optional.empty());
      readings.add(new Weather(new RecordId("weather." + i), at.with(read)));
    }
    return CardBuilder.small()
        .rocketFact(facts -> facts.with(Rocket.OWN_LIMIT, Speed.ofMph(10)))
        .edge(400)
        .wind(wind(atTenMph + perHourMph))
        .readings(readings)
        .at(TEN.plus(Duration.ofHours(1)));
  }

  private Advice advise(Card card) {
    return preflight.advise(card, preflight.answer(card), () -> false);
  }

  @Test
  void a_falling_wind_is_waited_for_until_it_is_a_fifth_under_the_limit() {
    // 16 mph at ten, 12 at eleven, 4 less an hour; the rod bears what the check says to calm air.
    Card card = card(16, -4).build();
    Advice.Help help = advise(card).helps().get(0);
    Card calm = card.withWind(wind(0));
    double limitMph = preflight.answer(calm).ruling().limit().orElseThrow().inMph();
    double untilMph = 0.8 * Math.min(10, limitMph);
    long minutes = Math.round((12 - untilMph) / 4 * 60 / 5) * 5;

    assertThat(help.change()).startsWith("wait about " + minutes + " min, until the wind");
    assertThat(help.verdict()).isEqualTo(Verdict.GO);
    assertThat(help.limit().orElseThrow().inMph()).isCloseTo(Math.min(10, limitMph), within(0.1));
    assertThat(advise(card).remark()).isEmpty();
  }

  @Test
  void a_rising_wind_and_one_seen_too_seldom_are_not_waited_for() {
    assertThat(advise(card(8, 4).build()).helps()).isEmpty();
    assertThat(advise(card(16, -4).readings(List.of()).build()).helps()).isEmpty();
    assertThat(advise(card(8, 4).build()).remark().orElseThrow()).contains("GO up to ");
  }

  @Test
  void a_wind_on_the_card_that_belies_the_trend_counts_as_the_newest() {
    Card card = card(16, -4).wind(wind(19)).build();

    assertThat(advise(card).helps()).isEmpty();
    assertThat(advise(card).remark().orElseThrow()).startsWith("Nothing but less wind");
  }
}
