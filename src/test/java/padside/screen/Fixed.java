package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.flight.Ruling;
import padside.flight.Ruling.Verdict;
import padside.preflight.Advice;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.units.Length;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.UnitSystem;
import padside.units.Wind;

/** Made-up answers of a check with a fixed limit on the wind, for the looks of screens. */
final class Fixed {
  /** The largest wind it lets go. */
  static final Speed LIMIT = Speed.ofMph(13);

  static final String REASON = "limit 13 mph (field edge NE 280 ft)";

  private Fixed() {}

  /** GO up to a fixed limit, NO-GO above, UNKNOWN without a wind or a motor. */
  static Answer check(Card card) {
    if (card.wind().isEmpty() || card.motors().isEmpty()) {
      String lacks = card.motors().isEmpty() ? "no motor chosen" : "no wind entered";
      Ruling unknown = new Ruling(Verdict.UNKNOWN, Optional.empty(), lacks, List.of(), List.of());
      return new Answer(
          unknown, "UNKNOWN  " + lacks, Optional.empty(), List.of(), Optional.empty());
    }
    Wind wind = card.wind().get();
    boolean past = wind.tested().metresPerSecond() > LIMIT.metresPerSecond();
    Verdict verdict = past ? Verdict.NO_GO : Verdict.GO;
    String now =
        Notations.wind(UnitSystem.US).show(new Wind(wind.mean(), wind.gust(), Optional.empty()));
    return new Answer(
        new Ruling(verdict, Optional.of(LIMIT), REASON, limits(), findings(past)),
        verdict.word() + "  " + now + " · " + REASON,
        Optional.of(FixedFlight.outlook()),
        List.of(
            new Answer.Reminder("Never into cloud.", "read in a copy"),
            new Answer.Reminder("Count down aloud.", "read in a copy")),
        Optional.empty());
  }

  private static List<Ruling.Limit> limits() {
    return List.of(
        new Ruling.Limit("code", Speed.ofMph(20), Verdict.NO_GO, "US model code", "read in a copy"),
        new Ruling.Limit(
            "rod",
            Speed.ofMph(15.4),
            Verdict.MARGINAL,
            "rod exit 61 ft/s ÷ 4",
            "common practice, no source"),
        new Ruling.Limit(
            "field", LIMIT, Verdict.NO_GO, "edge NE 280 ft", "an old leaflet, from memory"));
  }

  private static List<Ruling.Finding> findings(boolean late) {
    return List.of(
        new Ruling.Finding("tilt", Verdict.GO, "The rod stands upright.", "read in a copy"),
        new Ruling.Finding(
            "delay",
            late ? Verdict.MARGINAL : Verdict.GO,
            "Delay 5 fires 0.8 s late, at 25 ft/s.",
            "common practice, no source"));
  }

  /** Two changes for the better. */
  static Advice advice() {
    return new Advice(
        List.of(
            new Advice.Help(
                "with the 12 in flat",
                Verdict.GO,
                Optional.of(Speed.ofMph(14.4)),
                "rod exit 61 ft/s ÷ 4",
                Optional.of(Length.ofFeet(915)),
                Optional.of(new TimeSpan(0.8))),
            new Advice.Help(
                "with B6-4",
                Verdict.MARGINAL,
                Optional.of(Speed.ofMph(15.2)),
                "edge NE 280 ft",
                Optional.of(Length.ofFeet(410)),
                Optional.of(new TimeSpan(-0.3)))),
        Optional.empty());
  }
}
