package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog.FlightQuery;
import padside.flight.FlightLog.Passing;
import padside.flight.FlightLog.Sought;
import padside.flight.FlightLog.Stored;
import padside.flight.FlightLog.Stretch;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.units.Length;

/** Flights that pass by, against the same flights read whole. */
class PassingFlightsTest {
  private static final int FLIGHTS = 60;

  /** One of every storage: text, number, whole number, yes or no, list, reference. */
  private static final List<Column<?>> SOME =
      List.of(
          Flight.MOTOR,
          Flight.ALTITUDE,
          Flight.PAD,
          Flight.CONDITION,
          Flight.NOTE,
          Flight.ROCKET,
          Flight.STATUS);

  @TempDir Path folder;

  private LogFolder log;
  private final List<RecordId> rockets = new ArrayList<>();

  @BeforeEach
  void fill() throws Fault {
    log = LogFolder.open(folder, new PretendMachine(1));
    for (String name : List.of("Heron", "Kite")) {
      Facts rocket = Facts.none().with(Rocket.NAME, name);
      rockets.add(log.save(Action.create("add rocket", Kind.ROCKET, rocket)).get(0));
    }
    for (int i = 0; i < FLIGHTS; i++) {
      Facts facts =
          Facts.none()
              .with(Flight.STATUS, i % 5 == 0 ? Flight.Status.SCRUBBED : Flight.Status.FLOWN)
              .with(Flight.ROCKET, rockets.get(i % 2))
              .with(Flight.MOTOR.name(), Facts.Cell.of("C6-" + 2 * (i % 3), "c6 " + i))
              .with(Flight.PAD.name(), Facts.Cell.of((long) i, "" + i))
              .with(Flight.NOTE, "said \"" + i + "\", she\n[nothing]");
      facts = i % 4 == 0 ? facts : facts.with(Flight.ALTITUDE, new Length(100 + i / 8.0));
      facts =
          i % 6 == 0
              ? facts.with(Flight.CONDITION, List.of(new Flight.PartState("body", "torn")))
              : facts;
      log.save(Action.create("save card", Kind.FLIGHT, facts));
    }
    RecordId gone = log.flights(FlightQuery.newest(10)).get(3).id();
    log.save(Action.remove("remove flight", Kind.FLIGHT, gone));
  }

  @AfterEach
  void close() throws Fault {
    log.close();
  }

  private List<Passing> pass(Sought sought, int atOnce) throws Fault {
    List<Passing> all = new ArrayList<>();
    Optional<RecordId> after = Optional.empty();
    do {
      Stretch stretch = log.pass(sought, after, atOnce);
      assertThat(stretch.flights().size()).isLessThanOrEqualTo(atOnce);
      all.addAll(stretch.flights());
      after = stretch.end();
    } while (after.isPresent());
    return all;
  }

  private List<Stored> whole(Optional<RecordId> rocket) throws Fault {
    List<Stored> flights =
        new ArrayList<>(log.flights(new FlightQuery(rocket, Optional.empty(), Integer.MAX_VALUE)));
    Collections.reverse(flights);
    return flights;
  }

  private static void assertSame(List<Passing> passing, List<Stored> whole) {
    assertThat(passing).extracting(Passing::id).isEqualTo(whole.stream().map(Stored::id).toList());
    for (int i = 0; i < whole.size(); i++) {
      Facts facts = passing.get(i).flight().facts();
      Facts same = whole.get(i).facts();
      for (Column<?> column : SOME) {
        assertThat(facts.get(column)).as("%d %s", i, column.name()).isEqualTo(same.get(column));
      }
    }
  }

  @Test
  void however_they_are_split_they_say_what_the_whole_ones_say() throws Fault {
    for (int split = 0; split <= SOME.size(); split++) {
      Sought sought = Sought.of(SOME.subList(0, split), SOME.subList(split, SOME.size()));
      assertSame(pass(sought, 7), whole(Optional.empty()));
    }
  }

  @Test
  void those_of_one_rocket_come_alone() throws Fault {
    Sought sought = new Sought(SOME, List.of(), Optional.of(rockets.get(1)));

    assertSame(pass(sought, 7), whole(Optional.of(rockets.get(1))));
    assertThat(pass(sought, 1000)).hasSizeBetween(29, 30);
  }

  @Test
  void each_hands_over_all_of_them() throws Fault {
    List<Passing> all = new ArrayList<>();
    log.each(Sought.of(SOME, List.of()), all::add);

    assertSame(all, whole(Optional.empty()));
  }

  @Test
  void what_many_say_alike_is_one_object() throws Fault {
    Sought sought = Sought.of(List.of(Flight.MOTOR, Flight.STATUS), List.of(Flight.ALTITUDE));

    List<Facts> alike =
        log.pass(sought, Optional.empty(), 1000).flights().stream().map(Passing::alike).toList();

    assertThat(alike.stream().map(System::identityHashCode).distinct().count())
        .isEqualTo(alike.stream().distinct().count())
        .isEqualTo(6);
  }

  @Test
  void a_stretch_behind_a_flight_that_was_removed_meanwhile_goes_on_there() throws Fault {
    Sought sought = Sought.of(SOME, List.of());
    List<Stored> before = whole(Optional.empty());
    Stretch first = log.pass(sought, Optional.empty(), 10);
    log.save(Action.remove("remove flight", Kind.FLIGHT, first.end().orElseThrow()));

    Stretch next = log.pass(sought, first.end(), 10);

    assertThat(next.flights().get(0).id()).isEqualTo(before.get(10).id());
  }
}
