package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.preflight.OpenCards;

/** What a new card and a new weather reading start from. */
final class CardStart {
  private static final List<Column<?>> USUAL =
      List.of(Rocket.MASS, Rocket.ROD, Rocket.DEVICE, Rocket.FLIER);
  private static final List<Column<?>> WIND =
      List.of(Weather.WIND_MEAN, Weather.WIND_GUST, Weather.WIND_FROM);

  private CardStart() {}

  /**
   * The set-up of the rocket's last flight; what that does not say, as the rocket usually has it;
   * emptied what neither says.
   */
  static Facts setUp(RecordId rocket, World world) {
    Facts last =
        world
            .log()
            .lastFlight(rocket)
            .map(flight -> only(flight.facts(), Flight.SET_UP))
            .orElse(Facts.none());
    return withLots(
        Facts.emptied(Flight.SET_UP)
            .with(usual(Optional.of(rocket), world))
            .with(last)
            .with(Flight.ROCKET, rocket),
        world);
  }

  /**
   * A planned flight as the card it becomes on its day: a draft in the wind of the day, with what
   * the plan leaves open as the rocket usually has it.
   */
  static Facts begun(Flight planned, World world) {
    Facts draft =
        usual(planned.rocket(), world)
            .with(only(planned.facts(), Kind.FLIGHT.columns()))
            .with(Flight.STATUS, Flight.Status.DRAFT);
    Optional<Integer> place = planned.day().map(day -> world.log().nextPlace(day, false));
    Facts inWind = draft.with(Flight.PLACE, place).with(wind(draft, world));
    OpenCards others = OpenCards.beside(planned, world.log());
    return withLots(CrowdFields.onFreePad(inWind, others, world), world);
  }

  private static Facts usual(Optional<RecordId> rocket, World world) {
    return rocket
        .flatMap(world.log()::rocket)
        .map(each -> only(each.facts(), USUAL))
        .orElse(Facts.none());
  }

  /** The wind of the day's latest reading. */
  static Facts wind(Facts card, World world) {
    return latest(card, world).map(reading -> only(reading.facts(), WIND)).orElse(Facts.none());
  }

  /** A weather reading of now, with the slower values of the one before. */
  static Facts weather(RecordId day, World world) {
    return world
        .log()
        .latestWeather(day)
        .map(reading -> only(reading.facts(), Weather.SLOW))
        .orElse(Facts.none())
        .with(now(day, world));
  }

  private static Facts now(RecordId day, World world) {
    return Facts.none()
        .with(Weather.DAY, day)
        .with(Weather.AT, world.now())
        .with(Weather.UP, world.moment().up())
        .with(Weather.BOOT, world.moment().boot());
  }

  /** The lots of a card's motors: kept while they are of those motors and not used up. */
  static Facts withLots(Facts card, World world) {
    return StageLots.of(card, world).named(card, world);
  }

  /**
   * The wind typed on a card as a weather reading of its day, unless the latest one says the same.
   * It says nothing of the air, which nobody has looked at anew.
   */
  static List<Action.Change> reading(Facts card, World world) {
    boolean news =
        Weather.windIn(card).isPresent()
            && !latest(card, world).flatMap(Weather::wind).equals(Weather.windIn(card));
    return news ? looked(card, world) : List.of();
  }

  /** The wind of a card as a weather reading of its day, looked at now. */
  static List<Action.Change> looked(Facts card, World world) {
    return card.get(Flight.DAY)
        .map(day -> now(day, world).with(only(card, WIND)))
        .map(facts -> List.of(new Action.Change(Kind.WEATHER, Optional.empty(), facts)))
        .orElse(List.of());
  }

  private static Optional<Weather> latest(Facts card, World world) {
    return card.get(Flight.DAY).flatMap(world.log()::latestWeather);
  }

  private static Facts only(Facts facts, List<Column<?>> columns) {
    Facts some = Facts.none();
    for (Column<?> column : columns) {
      Facts.Cell cell = facts.cells().get(column.name());
      boolean filled = cell != null && !cell.equals(Facts.Cell.emptied());
      some = filled ? some.with(column.name(), cell) : some;
    }
    return some;
  }
}
