package padside.preflight;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.flight.Ruling;
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
 *
 * @param card has a wind
 * @param now what the check says to it
 */
record Waiting(Check check, UnitSystem units, BooleanSupplier abandoned, Card card, Ruling now) {
  private static final RecordId ON_CARD = new RecordId("on the card");
  private static final int HALVINGS = 9;
  private static final long SHOWN_TO_MIN = 5;

  /** Whether the wind is too near to a limit to be GO. */
  boolean windMatters() {
    double limit = now.limit().map(Speed::metresPerSecond).orElse(Double.MAX_VALUE);
    return testedMps() > limit * (1 - check.marginalShare());
  }

  /** The largest wind in which the verdict is that or better; absent when calm air is none. */
  Optional<Speed> largest(Verdict wanted) {
    double low = 0;
    double high = testedMps();
    if (!windMatters() || !reaches(wanted, low)) {
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
    Check.Checked then = at(new Speed(testedMps), Optional.empty());
    return then.ruling().verdict().compareTo(wanted) <= 0;
  }

  private Check.Checked at(Speed tested, Optional<Field.Bound> bound) {
    return check.nominal(in(tested), (flown, field) -> new Case.FieldLimit(fieldLimit(), bound));
  }

  private Speed fieldLimit() {
    return now.limits().stream()
        .filter(limit -> limit.rule().equals("field"))
        .map(Ruling.Limit::wind)
        .findFirst()
        .orElse(new Speed(0));
  }

  private Card in(Speed tested) {
    return card.withWind(card.wind().orElseThrow().scaledTo(tested));
  }

  /**
   * Waiting until the day's trend has brought the wind down so far that the verdict is that or
   * better; absent when it does not.
   */
  Optional<Trial> until(Verdict wanted) {
    Optional<WindTrend> falling =
        card.at()
            .map(this::readings)
            .map(WindTrend::of)
            .filter(trend -> trend.course().equals(Optional.of(WindTrend.Course.FALLING)));
    return falling.flatMap(
        trend ->
            largest(wanted)
                .flatMap(wind -> trend.reaching(wind, card.at().orElseThrow()))
                .map(this::waited));
  }

  private Trial waited(WindTrend.Crossing hit) {
    Change wait = Change.of(Change.Kind.WAIT, words(hit), 0, it -> in(hit.limit()));
    Optional<Field.Bound> bound =
        check
            .measured(card, abandoned)
            .flown()
            .flatMap(Flown::field)
            .flatMap(Case.FieldLimit::bound);
    return new Trial(wait, at(hit.limit(), bound));
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

  private String words(WindTrend.Crossing hit) {
    return "wait about %d min, until the wind is forecast to have fallen to %s (%d to %d min)"
        .formatted(
            toFive(minutesTo(hit.at()) + SHOWN_TO_MIN / 2),
            shown(hit.limit()),
            toFive(minutesTo(hit.from())),
            toFive(minutesTo(hit.to()) + SHOWN_TO_MIN - 1));
  }

  private long minutesTo(Instant then) {
    return Duration.between(card.at().orElseThrow(), then).toMinutes();
  }

  private static long toFive(long minutes) {
    return minutes / SHOWN_TO_MIN * SHOWN_TO_MIN;
  }

  /** A wind in words, never larger than it is. */
  String shown(Speed wind) {
    return Notations.windSpeed(units).showDown(wind);
  }

  private double testedMps() {
    return card.wind().orElseThrow().tested().metresPerSecond();
  }
}
