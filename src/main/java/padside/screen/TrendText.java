package padside.screen;

import java.util.Optional;
import padside.flight.Day;
import padside.preflight.Card;
import padside.preflight.WindTrend;
import padside.units.Speed;

/** How the wind goes, in the words of the day and of a card. */
final class TrendText {
  private TrendText() {}

  /** The trend of a day; absent while there are too few readings. */
  static Optional<String> of(Day day, World world) {
    return Optional.of(WindTrend.of(world.log().weatherOf(day.id())))
        .filter(trend -> trend.course().isPresent())
        .map(trend -> "Wind " + trend.sentence(world.settings().units()));
  }

  /** When the wind of a card's day reaches the card's limit, where that can be told. */
  static Optional<String> crossing(LiveCheck check, World world) {
    Optional<WindTrend> trend = check.asked().map(Card::readings).map(WindTrend::of);
    Optional<Speed> limit = check.answer().flatMap(answer -> answer.ruling().limit());
    return trend
        .filter(each -> limit.flatMap(l -> each.reaching(l, world.now())).isPresent())
        .map(
            each ->
                "Wind "
                    + each.sentence(
                        limit.orElseThrow(), world.now(), world.settings().units(), world.zone()));
  }
}
