package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Weather;
import padside.form.Place;
import padside.units.Bearing;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.Wind;
import padside.units.WindNotation;
import padside.wire.WireWind;

/**
 * Which wind is gone by. What the flier typed stands; only where nothing is typed, or where it says
 * {@code by wire}, it is the meter's of now. The text beside the value says which, so that both are
 * kept in the columns of any wind.
 */
final class ByWire {
  /** The key that takes the wind by wire, wherever a wind stands. */
  static final String KEY = "<f6>";

  static final String MEANING = "go by the wind meter, not by what was typed";

  static final Binding TAKE = Binding.of(KEY, "", MEANING);

  /** A meter that says otherwise by less is none to look at; common practice, no source. */
  private static final double MATTERS_MPS = 1.0;

  private static final double MATTERS_DEG = 30;

  private static final String TAKES = "F6 takes ";
  private static final String BY_WIRE = " by wire";

  private ByWire() {}

  /** Whether these facts, a flight's or a reading's, leave the wind to the meter. */
  private static boolean follows(Facts facts, World world) {
    Optional<String> typed = facts.typed(Weather.WIND_MEAN).filter(text -> !text.isBlank());
    return typed
        .map(WindNotation::isByWire)
        .orElse(world.wire().set() && Weather.windIn(facts).isEmpty());
  }

  /** Whether a card goes by the meter: before it flies, on its day. */
  static boolean isOn(Facts card, World world) {
    boolean open =
        card.get(Flight.STATUS)
            .filter(status -> status == Flight.Status.CARD || status == Flight.Status.DRAFT)
            .isPresent();
    return open && isOfToday(card, world) && follows(card, world);
  }

  /** Whether a card or a reading belongs to a day of today. */
  private static boolean isOfToday(Facts facts, World world) {
    return isToday(facts.get(Flight.DAY).flatMap(world.log()::day), world);
  }

  private static boolean isToday(Optional<Day> day, World world) {
    return day.flatMap(Day::date).equals(Optional.of(DayScreen.today(world)));
  }

  /** Whether a day's wind is the meter's of now: as its newest reading says. */
  static boolean isOn(Day day, World world) {
    Facts newest = world.log().latestWeather(day.id()).map(Weather::facts).orElse(Facts.none());
    return isToday(Optional.of(day), world) && follows(newest, world);
  }

  /** A card in the wind that stands for now; without a wind where the meter tells none. */
  static Facts standing(Facts card, World world) {
    if (!isOn(card, world)) {
      return card;
    }
    return card.with(taken(world).orElse(Place.wind().put("")));
  }

  /** What a card that leaves the pad now is to keep of the wind, beside a reading of the day. */
  static Facts atLiftOff(Facts card, World world) {
    return taken(world).filter(any -> isOn(card, world)).orElse(Facts.none());
  }

  /** That reading. */
  static List<Action.Change> reading(Facts card, World world) {
    Facts wind = atLiftOff(card, world);
    return wind.isEmpty() ? List.of() : CardStart.reading(card.with(wind), world);
  }

  /** The meter's wind as facts; absent while none counts. */
  static Optional<Facts> taken(World world) {
    WindNotation notation = notation(world);
    return text(world)
        .flatMap(text -> notation.read(text).value().map(wind -> Place.wind().put(wind, text)));
  }

  /** The same for a card or a reading, which the wind of now is for only on its day. */
  static Optional<Facts> taken(Facts of, World world) {
    return taken(world).filter(any -> isOfToday(of, world));
  }

  static Optional<String> text(Facts of, World world) {
    return text(world).filter(any -> isOfToday(of, world));
  }

  /** The same as text: {@code 6g9 mph 225 by wire}. */
  static Optional<String> text(World world) {
    return world.wire().counting(up(world)).map(notation(world)::showByWire);
  }

  private static TimeSpan up(World world) {
    return world.machine().up();
  }

  private static WindNotation notation(World world) {
    return Notations.wind(world.settings().units());
  }

  /** Why there is nothing to take, a sentence. */
  static String refusal(World world) {
    return "No wind by wire: " + world.wire().lack(up(world)) + ".";
  }

  /** The same for a card or a reading. */
  static String refusal(Facts of, World world) {
    return isOfToday(of, world)
        ? refusal(world)
        : "The meter tells the wind of now, and this is another day than today.";
  }

  /** A wind as it was kept, told as one by wire where it came so. */
  static Optional<String> shown(Facts facts, World world) {
    String behind =
        facts
            .typed(Weather.WIND_MEAN)
            .filter(WindNotation::isByWire)
            .map(any -> BY_WIRE)
            .orElse("");
    return Weather.windIn(facts).map(wind -> notation(world).show(wind) + behind);
  }

  /** The wind of now, behind a word, with its age; or why there is none. */
  static Line line(String before, World world) {
    WireWind wire = world.wire();
    Style style = wire.isSilent(up(world)) ? Style.OBJECTION : Style.STRONG;
    return wire.counting(up(world))
        .map(wind -> notation(world).show(wind) + BY_WIRE + " · " + wire.age(up(world)))
        .map(text -> new Line(before + text + wire.doubt(), style))
        .orElseGet(
            () ->
                new Line(
                    "No wind by wire: " + wire.lack(up(world)) + "; w types one", Style.OBJECTION));
  }

  /** For where the wind itself stands beside: its age, or why there is none. */
  static Line brief(World world) {
    WireWind wire = world.wire();
    boolean counts = wire.counting(up(world)).isPresent();
    Style style = counts && !wire.isSilent(up(world)) ? Style.PLAIN : Style.OBJECTION;
    String text = counts ? "Wind by wire, " + wire.age(up(world)) : refusal(world);
    return new Line(text, style);
  }

  /** The meter's wind beside one that was typed, where they differ enough to matter. */
  private static Optional<Line> beside(Optional<Wind> typed, String lead, World world) {
    return typed
        .filter(own -> world.wire().counting(up(world)).filter(o -> differs(own, o)).isPresent())
        .flatMap(any -> told(lead, world));
  }

  private static Optional<Line> beside(Facts card, String lead, World world) {
    return isOfToday(card, world) ? beside(Weather.windIn(card), lead, world) : Optional.empty();
  }

  /** The same for a card of today. */
  static Optional<Line> beside(Facts card, World world) {
    return beside(card, TAKES, world);
  }

  /** The same for a reading that is typed, also where it has no wind yet. */
  static Optional<Line> offer(Facts reading, World world) {
    boolean none = Weather.windIn(reading).isEmpty() && isOfToday(reading, world);
    return none ? told(TAKES, world) : beside(reading, world);
  }

  private static Optional<Line> told(String lead, World world) {
    return text(world)
        .map(text -> new Line(lead + text + " · " + world.wire().age(up(world)), Style.OBJECTION));
  }

  /** The same where no key takes it: how old the meter's wind is, or that it says otherwise. */
  static Optional<Line> atCount(Facts card, World world) {
    return isOn(card, world) ? Optional.of(brief(world)) : beside(card, "The meter says ", world);
  }

  /** The same for a day, and that the meter of its flier tells nothing. */
  static Optional<Line> beside(Day day, World world) {
    if (!world.wire().set() || isOn(day, world)) {
      return Optional.empty();
    }
    return world.wire().counting(up(world)).isPresent()
        ? beside(world.log().latestWeather(day.id()).flatMap(Weather::wind), TAKES, world)
        : Optional.of(new Line(refusal(world), Style.OBJECTION));
  }

  private static boolean differs(Wind one, Wind other) {
    double mean = one.mean().metresPerSecond() - other.mean().metresPerSecond();
    double gust = one.gust().metresPerSecond() - other.gust().metresPerSecond();
    boolean faster = Math.max(Math.abs(mean), Math.abs(gust)) >= MATTERS_MPS;
    boolean blows =
        Math.min(one.mean().metresPerSecond(), other.mean().metresPerSecond()) >= MATTERS_MPS;
    return faster || (blows && isTurned(one.from(), other.from()));
  }

  private static boolean isTurned(Optional<Bearing> one, Optional<Bearing> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return false;
    }
    double turn = Math.abs(one.get().degrees() - other.get().degrees());
    return Math.min(turn, 360 - turn) >= MATTERS_DEG;
  }
}
