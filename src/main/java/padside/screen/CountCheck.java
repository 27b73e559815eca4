package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Ruling;
import padside.preflight.Answer;

/**
 * The check while it is counted: it goes on looking at the wind that stands for now, and tells once
 * when its answer turns against the card. It takes no key and holds nothing.
 *
 * @param heard the verdict as heard last
 */
record CountCheck(LiveCheck check, Optional<Ruling.Verdict> heard) {
  /** What it has come to and what is to be done. */
  record Seen(CountCheck check, List<Effect> effects) {}

  /** Nothing was asked yet. */
  static CountCheck of(World world) {
    return new CountCheck(LiveCheck.of(world.turn()), Optional.empty());
  }

  /** Goes on with the check of the pad. */
  static CountCheck of(LiveCheck pad) {
    return new CountCheck(pad, verdict(pad));
  }

  private static Optional<Ruling.Verdict> verdict(LiveCheck check) {
    return check.current().map(Answer::ruling).map(Ruling::verdict);
  }

  /** After an event: the card asked about anew where the wind is another, the bell at a turn. */
  Seen on(Event event, Flight card, World world) {
    LiveCheck.Asked asked = PadScreen.asking(check.on(event), card, world);
    List<Effect> effects = new ArrayList<>(asked.effects());
    Optional<Ruling.Verdict> now = verdict(asked.check());
    if (now.filter(each -> isWorse(each, heard.or(card::verdict))).isPresent()) {
      effects.add(new Effect.Bell());
    }
    return new Seen(new CountCheck(asked.check(), now.or(() -> heard)), effects);
  }

  private static boolean isWorse(Ruling.Verdict now, Optional<Ruling.Verdict> before) {
    boolean speaksAgainst = now == Ruling.Verdict.NO_GO || now == Ruling.Verdict.UNKNOWN;
    return speaksAgainst && before.filter(each -> each.compareTo(now) < 0).isPresent();
  }

  /** The verdict, where it has turned against the card since that was armed. */
  Optional<Ruling.Verdict> turned(Flight card) {
    return heard.filter(now -> isWorse(now, card.verdict()));
  }

  /** What it says to the meter's wind of this moment, to be kept with it at lift-off. */
  Facts atLiftOff(Flight card, World world) {
    boolean ofNow = PadScreen.asking(check, card, world).effects().isEmpty();
    return check
        .current()
        .filter(any -> ofNow && ByWire.isOn(card.facts(), world))
        .map(Answer::facts)
        .orElse(Facts.none());
  }
}
