package padside.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.fact.Facts;
import padside.fact.Facts.Cell;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.FlightLog.FlightQuery;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.flight.Rocket;
import padside.search.Search;
import padside.units.Bearing;
import padside.units.Length;

/** What the log promises to the rest of the program. */
class LogFolderTest {
  @TempDir Path folder;

  @Test
  void what_is_saved_is_found_and_listed() throws Fault {
    try (LogFolder log = open()) {
      RecordId red = rocket(log, "Red Heron");
      RecordId blue = rocket(log, "Blue Heron");

      assertThat(log.find(Kind.ROCKET, red)).map(Stored::facts).contains(named("Red Heron"));
      assertThat(log.list(Kind.ROCKET)).extracting(Stored::id).containsExactly(red, blue);
      assertThat(log.find(Kind.LOT, red)).as("another kind").isEmpty();
      assertThat(log.find(Kind.ROCKET, new RecordId("nobody.1"))).isEmpty();
    }
  }

  @Test
  void a_record_is_named_by_the_operation_that_made_it() throws Fault {
    String run = new PretendMachine(1).freshRun();
    try (LogFolder log = open()) {
      Action two =
          Action.create("two", Kind.ROCKET, named("A")).and(Action.create("", Kind.FIX, none()));

      assertThat(log.save(Action.create("one", Kind.DAY, none())))
          .containsExactly(new RecordId(run + ".1"));
      assertThat(log.save(two))
          .containsExactly(new RecordId(run + ".2"), new RecordId(run + ".2.2"));
      assertThat(log.find(Kind.FIX, new RecordId(run + ".2.2"))).isPresent();
    }
  }

  @Test
  void a_later_cell_takes_the_place_of_an_earlier_one_and_leaves_the_others() throws Fault {
    try (LogFolder log = open()) {
      RecordId rocket =
          log.save(Action.create("", Kind.ROCKET, named("A").with("note", text("x")))).get(0);
      log.save(Action.change("", Kind.ROCKET, rocket, named("B")));

      assertThat(log.find(Kind.ROCKET, rocket).orElseThrow().facts().cells())
          .isEqualTo(Map.of("name", text("B"), "note", text("x")));
    }
  }

  @Test
  void of_two_changes_to_one_cell_in_one_action_the_later_stands() throws Fault {
    try (LogFolder log = open()) {
      RecordId rocket = rocket(log, "A");
      log.save(
          Action.change("", Kind.ROCKET, rocket, named("B"))
              .and(Action.change("", Kind.ROCKET, rocket, named("C"))));

      assertThat(log.find(Kind.ROCKET, rocket).orElseThrow().facts()).isEqualTo(named("C"));
    }
  }

  @Test
  void a_restart_finds_values_and_typed_text_of_every_form() throws Fault {
    Facts facts =
        Facts.none()
            .with(Field.NAME, "Æbleø – \"north\" \\ \u2028 🚀\n\tsecond line")
            .with(Field.ELEVATION, new Length(121.92), "400 ft")
            .with(
                Field.EDGES,
                List.of(new Field.Edge(new Bearing(35), new Length(85.344), "lane", "road")))
            .with("latitude_deg", Cell.unread("5O.1 north"))
            .with("note", Cell.emptied())
            .with("unknown_here", Cell.of(Map.of("a", List.of(1L, 2.5, true, "x"))))
            .with("whole", Cell.of(9_007_199_254_740_993L));
    RecordId id;
    try (LogFolder log = open()) {
      id = log.save(Action.create("", Kind.FIELD, facts)).get(0);
      assertThat(log.find(Kind.FIELD, id)).map(Stored::facts).contains(facts);
    }
    try (LogFolder log = open(2)) {
      assertThat(log.notices()).isEmpty();
      assertThat(log.list(Kind.FIELD)).containsExactly(new Stored(id, facts));
      assertThat(new Field(id, log.list(Kind.FIELD).get(0).facts()).edges().get(0).name())
          .isEqualTo("lane");
    }
  }

  @Test
  void a_removed_record_is_listed_no_more_until_the_mark_is_taken_back() throws Fault {
    try (LogFolder log = open()) {
      RecordId rocket = rocket(log, "A");
      log.save(Action.change("", Kind.ROCKET, rocket, Facts.none().with("note", text("torn"))));
      log.save(Action.remove("remove", Kind.ROCKET, rocket));
      assertThat(log.list(Kind.ROCKET)).isEmpty();
      assertThat(log.find(Kind.ROCKET, rocket)).as("nothing is ever taken out").isPresent();

      log.save(Action.change("back", Kind.ROCKET, rocket, Facts.none().with(Kind.REMOVED, false)));
      assertThat(log.list(Kind.ROCKET)).extracting(Stored::id).containsExactly(rocket);
    }
  }

  @Test
  void flights_come_newest_first_and_by_rocket_and_day() throws Fault {
    try (LogFolder log = open()) {
      RecordId red = rocket(log, "Red");
      RecordId day = log.save(Action.create("", Kind.DAY, none())).get(0);
      RecordId first = flight(log, Facts.none().with(Flight.ROCKET, red));
      RecordId second = flight(log, Facts.none().with(Flight.DAY, day));
      RecordId third = flight(log, Facts.none().with(Flight.ROCKET, red).with(Flight.DAY, day));
      RecordId gone = flight(log, Facts.none().with(Flight.ROCKET, red));
      log.save(Action.remove("", Kind.FLIGHT, gone));

      assertThat(ids(log, FlightQuery.newest(9))).containsExactly(third, second, first);
      assertThat(ids(log, FlightQuery.newest(2))).containsExactly(third, second);
      assertThat(ids(log, query(Optional.of(red), Optional.empty()))).containsExactly(third, first);
      assertThat(ids(log, query(Optional.empty(), Optional.of(day))))
          .containsExactly(third, second);
      assertThat(ids(log, query(Optional.of(red), Optional.of(day)))).containsExactly(third);
    }
  }

  @Test
  void words_are_looked_for_in_texts_and_in_what_was_typed_whatever_their_case() throws Fault {
    try (LogFolder log = open()) {
      RecordId note = flight(log, Facts.none().with(Flight.NOTE, "Landed in the Äpfel tree"));
      RecordId motor = flight(log, Facts.none().with(Flight.MOTOR, "C6-5", "c6 five"));
      flight(log, Facts.none().with(Flight.ROCKET, new RecordId("note.1")));

      assertThat(found(log, "TREE")).containsExactly(note);
      assertThat(found(log, "äPFEL landed")).containsExactly(note);
      assertThat(found(log, "c6-5")).containsExactly(motor);
      assertThat(found(log, "FIVE")).containsExactly(motor);
      assertThat(found(log, "tree five")).as("every word").isEmpty();
      assertThat(found(log, "note")).as("names of fields and ids are no text").isEmpty();
      assertThat(found(log, "100%")).isEmpty();
    }
  }

  @Test
  void the_last_flight_of_a_rocket_is_neither_draft_nor_planned_nor_removed() throws Fault {
    try (LogFolder log = open()) {
      RecordId red = rocket(log, "Red");
      RecordId blue = rocket(log, "Blue");
      flown(log, red, Flight.Status.FLOWN);
      RecordId card = flown(log, red, Flight.Status.CARD);
      flown(log, red, Flight.Status.DRAFT);
      RecordId scrubbed = flown(log, blue, Flight.Status.SCRUBBED);
      log.save(Action.remove("", Kind.FLIGHT, flown(log, blue, Flight.Status.FLOWN)));
      flown(log, rocket(log, "Green"), Flight.Status.DRAFT);
      flown(log, rocket(log, "Grey"), Flight.Status.PLANNED);
      flown(log, blue, Flight.Status.PLANNED);

      assertThat(log.lastFlightOfEachRocket())
          .extracting(Stored::id)
          .containsExactly(scrubbed, card);
    }
  }

  @Test
  void only_flown_flights_that_stand_take_motors_from_a_lot() throws Fault {
    try (LogFolder log = open()) {
      RecordId lot = log.save(Action.create("", Kind.LOT, Facts.none().with(Lot.BOUGHT, 6))).get(0);
      Facts from = Facts.none().with(Flight.LOT, lot);
      flight(log, from.with(Flight.STATUS, Flight.Status.FLOWN));
      flight(log, from.with(Flight.STATUS, Flight.Status.FLOWN));
      flight(log, from.with(Flight.STATUS, Flight.Status.CARD));
      RecordId gone = flight(log, from.with(Flight.STATUS, Flight.Status.FLOWN));
      log.save(Action.remove("", Kind.FLIGHT, gone));

      assertThat(log.firedByLot()).isEqualTo(Map.of(lot, 2));
    }
  }

  @Test
  void a_cluster_takes_all_its_motors_and_a_stack_one_stage_from_each_lot() throws Fault {
    try (LogFolder log = open()) {
      RecordId upper = log.save(Action.create("", Kind.LOT, Facts.none())).get(0);
      RecordId lower = log.save(Action.create("", Kind.LOT, Facts.none())).get(0);
      for (String motor : List.of("C6-7", "3xC6-7", "3xC6-7", "2xC6-0 then C6-7")) {
        flight(log, on(motor).with(Flight.LOT, upper).with(Flight.BOOSTER_LOT, lower));
      }
      flight(log, on("C6-0,2xC6-7").with(Flight.BOOSTER_LOT, lower));
      flight(log, on("C6-7").with(Flight.LOT.name(), Cell.of("  ")));
      flight(log, on("2xC6-7").with(Flight.LOT.name(), Cell.of(7)));
      flight(log, on("9xC6-7").with(Flight.LOT, upper).with(Flight.STATUS, Flight.Status.CARD));

      assertThat(log.firedByLot()).isEqualTo(Map.of(upper, 1 + 3 + 3 + 1, lower, 2 + 1));
    }
  }

  @Test
  void flown_flights_that_stand_use_what_they_name_day_by_day() throws Fault {
    try (LogFolder log = open()) {
      RecordId chute = log.save(Action.create("", Kind.DEVICE, Facts.none())).get(0);
      RecordId blue = log.save(Action.create("", Kind.ALTIMETER, Facts.none())).get(0);
      RecordId may = new RecordId("may");
      Facts both = on("C6-7").with(Flight.DEVICE, chute).with(Flight.ALTIMETER, blue);
      flight(log, both.with(Flight.DAY, may));
      flight(log, both.with(Flight.DAY, may));
      flight(log, on("C6-7").with(Flight.DEVICE, chute));
      flight(log, both.with(Flight.DAY, may).with(Flight.STATUS, Flight.Status.SCRUBBED));
      flight(log, on("C6-7").with(Flight.DEVICE.name(), Cell.of("  ")));
      RecordId gone = flight(log, both);
      log.save(Action.remove("", Kind.FLIGHT, gone));

      assertThat(log.uses())
          .containsExactlyInAnyOrder(
              new FlightLog.Use(chute, Optional.of(may), 2),
              new FlightLog.Use(chute, Optional.empty(), 1),
              new FlightLog.Use(blue, Optional.of(may), 2));
    }
  }

  /** The database passes by what it takes for one motor, so it must see all that may be several. */
  @Test
  void the_database_counts_motors_as_the_flight_itself_does() throws Fault {
    Random random = new Random(31);
    List<String> bits =
        List.of("3", "12", "0", "x", "X", "×", " ", "C6-5", "1/2A6-2", ",", " then ", "\tTHEN ");
    try (LogFolder log = open()) {
      Map<RecordId, Integer> expected = new LinkedHashMap<>();
      for (int i = 0; i < 300; i++) {
        StringBuilder line = new StringBuilder();
        for (int bit = 0; bit <= random.nextInt(7); bit++) {
          line.append(bits.get(random.nextInt(bits.size())));
        }
        RecordId lot = new RecordId(i + " of " + line);
        RecordId booster = new RecordId(i + " below " + line);
        Facts facts = on(line.toString()).with(Flight.LOT, lot).with(Flight.BOOSTER_LOT, booster);
        flight(log, facts);
        expected.putAll(new Flight(lot, facts).fired());
      }

      assertThat(log.firedByLot()).as("seed 31").isEqualTo(expected);
    }
  }

  private static Facts on(String motor) {
    return Facts.none().with(Flight.MOTOR, motor).with(Flight.STATUS, Flight.Status.FLOWN);
  }

  @Test
  void a_value_that_is_not_a_number_is_refused_before_anything_is_written() throws Fault {
    try (LogFolder log = open()) {
      Facts facts = Facts.none().with("mass_kg", Cell.of(Double.NaN));

      assertThatThrownBy(() -> log.save(Action.create("", Kind.ROCKET, facts)))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("mass_kg");
      assertThat(log.list(Kind.ROCKET)).isEmpty();
      rocket(log, "after it");
      assertThat(log.list(Kind.ROCKET)).hasSize(1);
    }
  }

  private LogFolder open() throws Fault {
    return open(1);
  }

  private LogFolder open(long seed) throws Fault {
    return LogFolder.open(folder, new PretendMachine(seed));
  }

  private static Facts none() {
    return Facts.none();
  }

  private static Cell text(String text) {
    return Cell.of(text);
  }

  private static Facts named(String name) {
    return Facts.none().with(Rocket.NAME, name);
  }

  private static RecordId rocket(LogFolder log, String name) throws Fault {
    return log.save(Action.create("add rocket", Kind.ROCKET, named(name))).get(0);
  }

  private static RecordId flight(LogFolder log, Facts facts) throws Fault {
    return log.save(Action.create("keep card", Kind.FLIGHT, facts)).get(0);
  }

  private static RecordId flown(LogFolder log, RecordId rocket, Flight.Status status) throws Fault {
    return flight(log, Facts.none().with(Flight.ROCKET, rocket).with(Flight.STATUS, status));
  }

  private static FlightQuery query(Optional<RecordId> rocket, Optional<RecordId> day) {
    return new FlightQuery(rocket, day, 100);
  }

  private static List<RecordId> found(LogFolder log, String words) throws Fault {
    Search search = Search.read(words).value().orElseThrow();
    return log.foundAmongAll(search, new OutcomeTable(List.of()), 100).newest().stream()
        .map(Stored::id)
        .toList();
  }

  private static List<RecordId> ids(LogFolder log, FlightQuery query) throws Fault {
    return log.flights(query).stream().map(Stored::id).toList();
  }
}
