package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.FlightLog.FlightQuery;
import padside.flight.FlightLog.Past;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.motor.MotorTable;
import padside.units.TimeSpan;

/** What all flights say, read page by page, is what the flights themselves say one by one. */
class FlownPageTest {
  private static final int SEED = 41;

  @TempDir private Path folder;

  @Test
  void pages_say_what_the_flights_say() throws Fault {
    Random random = new Random(SEED);
    try (LogFolder log = LogFolder.open(folder, new PretendMachine(1))) {
      for (int i = 0; i < 700; i++) {
        RecordId id = log.save(Action.create("", Kind.FLIGHT, flight(random))).get(0);
        if (random.nextInt(10) == 0) {
          log.save(Action.remove("", Kind.FLIGHT, id));
        }
      }
      List<Flight> all =
          log.flights(FlightQuery.newest(Integer.MAX_VALUE)).stream()
              .map(stored -> new Flight(stored.id(), stored.facts()))
              .toList();
      Past expected = Past.of(all, true);

      assertSame(Past.of(pages(log, 7), true), expected);
      assertSame(Past.ofAll(log), expected);
      assertSame(Logbook.readWhole(log, new MotorTable(List.of())).past(), expected);
      assertThat(Logbook.read(log, new MotorTable(List.of())).past().whole()).isFalse();
      assertSame(
          Past.of(all.subList(0, 99), true).and(Past.of(all.subList(99, all.size()), true)),
          expected);
    }
  }

  private static Facts flight(Random random) {
    Facts facts =
        Facts.none()
            .with(Flight.STATUS, random.nextInt(5) == 0 ? Flight.Status.CARD : Flight.Status.FLOWN)
            .with(Flight.MOTOR, random.nextBoolean() ? "C6-5" : "C6-0 then C6-7")
            .with(Flight.ROCKET, new RecordId("rocket " + random.nextInt(3)));
    facts = random.nextInt(4) == 0 ? facts : facts.with(Flight.LOT, new RecordId("lot"));
    facts = random.nextInt(9) == 0 ? facts.with(Flight.LOT.name(), Facts.Cell.of("  ")) : facts;
    facts = random.nextBoolean() ? facts : facts.with(Flight.BURN, "nominal");
    facts = random.nextBoolean() ? facts : facts.with(Flight.EJECTION, "late");
    Optional<TimeSpan> delay =
        Optional.of(new TimeSpan(3 + 4 * random.nextDouble())).filter(d -> random.nextBoolean());
    return facts
        .with(Flight.MEASURED_DELAY, delay)
        .with(Flight.PREDICTED_BEST_DELAY, new TimeSpan(random.nextInt(9)));
  }

  private static List<Flight> pages(LogFolder log, int most) throws Fault {
    List<Flight> flights = new ArrayList<>();
    for (OptionalLong after = OptionalLong.of(0); after.isPresent(); ) {
      FlightLog.Page page = log.flown(after.getAsLong(), most);
      assertThat(page.flights()).hasSizeLessThanOrEqualTo(most);
      flights.addAll(page.flights());
      after = page.end();
    }
    return flights;
  }

  /** Sums are added up in another order, so moments agree but for rounding. */
  private static void assertSame(Past past, Past expected) {
    assertThat(past.burns()).as("seed " + SEED).isEqualTo(expected.burns());
    assertThat(past.ejections().keySet()).isEqualTo(expected.ejections().keySet());
    past.ejections()
        .forEach(
            (alike, told) -> {
              FlightLog.Told other = expected.ejections().get(alike);
              assertThat(told.flights()).isEqualTo(other.flights());
              assertClose(told.delays(), other.delays());
              assertClose(told.off(), other.off());
            });
    assertThat(past.whole()).isTrue();
  }

  private static void assertClose(FlightLog.Moments one, FlightLog.Moments other) {
    assertThat(one.count()).isEqualTo(other.count());
    assertThat(one.mean()).isCloseTo(other.mean(), org.assertj.core.api.Assertions.within(1e-9));
    assertThat(one.squares())
        .isCloseTo(other.squares(), org.assertj.core.api.Assertions.within(1e-6));
  }
}
