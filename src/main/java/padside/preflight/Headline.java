package padside.preflight;

import java.util.Optional;
import padside.flight.Ruling;
import padside.units.Notations;
import padside.units.UnitSystem;
import padside.units.Wind;

/** The answer in one line: a word, a number and the binding reason. */
final class Headline {
  private Headline() {}

  static String of(Ruling ruling, Card card, UnitSystem units) {
    boolean typed = card.unread().contains(Unread.WIND);
    String none = typed ? "wind cannot be read" : "no wind entered";
    String now = card.wind().map(wind -> speeds(wind, units)).orElse(none);
    return ruling.verdict().word() + "  " + now + " · " + ruling.reason();
  }

  /** Without the direction, which no limit is held against. */
  private static String speeds(Wind wind, UnitSystem units) {
    return Notations.wind(units).show(new Wind(wind.mean(), wind.gust(), Optional.empty()));
  }
}
