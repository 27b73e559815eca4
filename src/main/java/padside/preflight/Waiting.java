package padside.preflight;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Ruling.Verdict;
import padside.flight.Weather;
import padside.safety.Case;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.UnitSystem;
import padside.units.Wind;

/**
 * What less wind would do for a card: its direction and gustiness kept, the field's limit stays as
 * it is.
 */
final class Waiting {
  private static final Case.FieldLimit NONE = new Case.FieldLimit(new Speed(0), Optional.empty());
  private static final RecordId ON_CARD = new RecordId("on the card");
  private static final int HALVINGS = 12;
  private static final long SHOWN_TO_MIN = 5;

  private final Check check;
  private final Card card;
  private final Optional<Case.FieldLimit> limit;

  /**
   * Of a card with a wind.
   *
   * @param limit the field's for this card
   */
  Waiting(Check check, Card card, Optional<Case.FieldLimit> limit) {
    this.check = check;
    this.card = card;
    this.limit = limit;
  }

  /** The largest wind in which the verdict is that or better; absent when calm air is none. */
  Optional<Speed> largest(Verdict wanted) {
    double low = 0;
    double high = card.wind().orElseThrow().tested().metresPerSecond();
    if (!reaches(wanted, low)) {
      return Optional.empty();
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (reaches(wanted, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(new Speed(low)).filter(wind -> wind.metresPerSecond() > 0);
  }

  private boolean reaches(Verdict wanted, double testedMps) {
    return at(new Speed(testedMps)).ruling().verdict().compareTo(wanted) <= 0;
  }

  private Check.Checked at(Speed tested) {
    return check.nominal(in(tested), (flown, field) -> limit.orElse(NONE));
  }

  private Card in(Speed tested) {
    return card.withWind(card.wind().orElseThrow().scaledTo(tested));
  }

  /** Waiting until the day's trend has brought the wind down to that; absent when it does not. */
  Optional<Trial> until(Speed tested, UnitSystem units) {
    return card.at()
        .flatMap(
            now ->
                WindTrend.of(readings(now))
                    .reaching(tested, now)
                    .map(
                        hit ->
                            new Trial(
                                new Change(
                                    List.of(Change.Kind.WAIT),
                                    words(now, hit, units),
                                    false,
                                    0,
                                    it -> in(tested)),
                                at(tested))));
  }

  /** The day's, and the wind on the card as the newest where it is another than was read last. */
  private List<Weather> readings(Instant now) {
    List<Weather> readings = card.readings();
    Optional<Wind> last =
        readings.isEmpty() ? Optional.empty() : readings.get(readings.size() - 1).wind();
    if (last.equals(card.wind())) {
      return readings;
    }
    Facts own = Weather.facts(card.wind().orElseThrow(), Optional.empty()).with(Weather.AT, now);
    return Stream.concat(readings.stream(), Stream.of(new Weather(ON_CARD, own))).toList();
  }

  private static String words(Instant now, WindTrend.Crossing hit, UnitSystem units) {
    return "wait about %d min, until the wind is forecast to have fallen to %s (%d to %d min)"
        .formatted(
            shown(minutes(now, hit.at()) + SHOWN_TO_MIN / 2),
            Notations.windSpeed(units).showDown(hit.limit()),
            shown(minutes(now, hit.from())),
            shown(minutes(now, hit.to()) + SHOWN_TO_MIN - 1));
  }

  private static long minutes(Instant now, Instant then) {
    return Duration.between(now, then).toMinutes();
  }

  private static long shown(long minutes) {
    return minutes / SHOWN_TO_MIN * SHOWN_TO_MIN;
  }
}
