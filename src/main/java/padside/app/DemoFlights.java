package padside.app;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.motor.MotorTable;
import padside.preflight.Card;
import padside.preflight.Preflight;
import padside.preflight.Settings;

/** Takes the season's flights from the card to the debrief. */
final class DemoFlights {
  /** What a card takes over from its rocket as the flier has entered it. */
  private static final List<Column<?>> USUAL =
      List.of(Rocket.MASS, Rocket.ROD, Rocket.DEVICE, Rocket.FLIER);

  private static final List<Column<?>> WIND =
      List.of(Flight.WIND_MEAN, Flight.WIND_GUST, Flight.WIND_FROM);

  /** Columns that a step tells but a card does not have while it is filled. */
  private static final Set<String> LATER =
      Set.of(
          Flight.AGAINST.name(),
          Flight.MEASURED_DELAY.name(),
          Flight.BOOST_TOWARD.name(),
          Flight.CONDITION.name(),
          Flight.NOTE.name());

  private final FlightLog log;
  private final DemoForms forms;
  private final DemoOutcome outcomes;
  private final MotorTable motors = Shipped.motors();
  private final OutcomeTable words = Shipped.outcomes();
  private final Preflight preflight = new Preflight(Settings.standard());

  DemoFlights(FlightLog log, DemoForms forms, DemoOutcome outcomes) {
    this.log = log;
    this.forms = forms;
    this.outcomes = outcomes;
  }

  /**
   * Fills a card and takes it as far as the step says.
   *
   * @param at when it lifts off
   */
  RecordId play(DemoStep step, RecordId day, Instant at) throws Fault {
    Logbook book = Logbook.read(log, motors);
    Facts filled = card(step, day, book);
    RecordId id = log.save(Action.create("fill in card", Kind.FLIGHT, filled)).get(0);
    String stays = step.find("stays").orElse("flown");
    if (stays.equals("draft")) {
      return id;
    }
    Flight flight = new Flight(id, filled);
    Card card = Card.of(flight, book, words, Optional.empty());
    Facts kept = preflight.answer(card).facts().with(Flight.STATUS, Flight.Status.CARD);
    save("keep card", id, kept);
    if (stays.equals("flown")) {
      save("debrief", id, flown(at).with(outcomes.of(flight, card, step)).with(afterwards(step)));
    } else if (stays.equals("scrubbed")) {
      Facts scrubbed = Facts.none().with(Flight.STATUS, Flight.Status.SCRUBBED);
      save("scrub", id, scrubbed.with(afterwards(step)));
    }
    return id;
  }

  /** Plans a flight at home, behind those planned before. */
  void plan(DemoStep step, RecordId day) throws Fault {
    Logbook book = Logbook.read(log, motors);
    Facts planned =
        card(step, day, book)
            .with(Flight.STATUS, Flight.Status.PLANNED)
            .with(Flight.PLACE, book.nextPlace(day, true));
    log.save(Action.create("plan flight", Kind.FLIGHT, planned));
  }

  private static Facts flown(Instant at) {
    return Facts.none().with(Flight.STATUS, Flight.Status.FLOWN).with(Flight.LIFTOFF_AT, at);
  }

  /** The rocket as it usually flies, the latest wind, and over both what the step says. */
  private Facts card(DemoStep step, RecordId day, Logbook book) {
    Facts said = forms.read(Kind.FLIGHT, step);
    Facts usual = book.rocket(said.get(Flight.ROCKET).orElseThrow()).orElseThrow().facts();
    Facts card = Facts.none().with(Flight.STATUS, Flight.Status.DRAFT).with(Flight.DAY, day);
    card = copied(card, USUAL, usual);
    card = copied(card, WIND, book.latestWeather(day).map(Weather::facts).orElse(Facts.none()));
    card = card.with(said);
    for (String word : LATER) {
      card = card.without(word);
    }
    return card;
  }

  /** What is told of a flight once its card is kept. */
  private Facts afterwards(DemoStep step) {
    Facts some = Facts.none();
    for (var cell : forms.read(Kind.FLIGHT, step).cells().entrySet()) {
      some = LATER.contains(cell.getKey()) ? some.with(cell.getKey(), cell.getValue()) : some;
    }
    return some;
  }

  private static Facts copied(Facts to, List<Column<?>> columns, Facts from) {
    Facts more = to;
    for (Column<?> column : columns) {
      Facts.Cell cell = from.cells().get(column.name());
      more = cell == null ? more : more.with(column.name(), cell);
    }
    return more;
  }

  private void save(String label, RecordId flight, Facts facts) throws Fault {
    log.save(Action.change(label, Kind.FLIGHT, flight, facts));
  }
}
