package padside.preflight;

import java.util.Optional;
import padside.flight.Ruling;
import padside.units.Notations;
import padside.units.UnitSystem;
import padside.units.Wind;

/** The answer in one line: a word, a number and the binding reason. */
final class Headline {
  private Headline() {}

  static String of(Ruling ruling, Optional<Wind> wind, UnitSystem units) {
    String now = wind.map(w -> speeds(w, units)).orElse("no wind entered");
    return ruling.verdict().word() + "  " + now + " · " + ruling.reason();
  }

  /** Without the direction, which no limit is held against. */
  private static String speeds(Wind wind, UnitSystem units) {
    return Notations.wind(units).show(new Wind(wind.mean(), wind.gust(), Optional.empty()));
  }
}
