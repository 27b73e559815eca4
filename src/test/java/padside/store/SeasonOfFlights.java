package padside.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.Rocket;

/** Any number of flights, every field filled, on fifty rockets and a hundred lots. */
public final class SeasonOfFlights {
  private SeasonOfFlights() {}

  public static List<RecordId> save(FlightLog log, int flights) throws Fault {
    Random random = new Random(7);
    List<RecordId> rockets = new ArrayList<>();
    List<RecordId> lots = new ArrayList<>();
    List<RecordId> saved = new ArrayList<>();
    for (int i = 0; i < flights; i++) {
      if (i % Math.max(1, flights / 50) == 0) {
        rockets.add(create(log, Kind.ROCKET, Facts.none().with(Rocket.NAME, "Rocket " + i)));
      }
      if (i % Math.max(1, flights / 100) == 0) {
        lots.add(create(log, Kind.LOT, Facts.none().with(Lot.BOUGHT, 24)));
      }
      saved.add(
          create(
              log,
              Kind.FLIGHT,
              flight(random)
                  .with(Flight.ROCKET, rockets.get(random.nextInt(rockets.size())))
                  .with(Flight.LOT, lots.get(random.nextInt(lots.size())))));
    }
    return saved;
  }

  private static Facts flight(Random random) {
    Facts facts = Facts.none();
    for (Column<?> column : Kind.FLIGHT.columns()) {
      Object value =
          switch (column.storage()) {
            case NUMBER -> random.nextDouble() * 300;
            case INTEGER -> random.nextInt(100);
            case FLAG -> random.nextBoolean();
            case TEXT, REFERENCE -> "some words " + random.nextInt(1000);
            case LIST -> List.of("a", "b");
          };
      facts = facts.with(column.name(), Facts.Cell.of(value, String.valueOf(value)));
    }
    return facts
        .with(Flight.STATUS, random.nextInt(10) == 0 ? Flight.Status.CARD : Flight.Status.FLOWN)
        .with(Flight.LIFTOFF_AT, Instant.ofEpochSecond(1_790_000_000L + random.nextInt(1 << 24)));
  }

  private static RecordId create(FlightLog log, Kind kind, Facts facts) throws Fault {
    return log.save(Action.create("add", kind, facts)).get(0);
  }
}
