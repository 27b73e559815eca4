package padside.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Altimeter;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;

class PackingTest {
  private final PlannedFlights flights = new PlannedFlights();

  private List<String> told(Packing.Group group) {
    return flights.packing().items().stream()
        .filter(item -> item.group() == group)
        .map(item -> item.counted() + " | " + item.where() + " | " + item.note())
        .toList();
  }

  @Test
  void rockets_motors_recovery_and_altimeters_are_listed_once_each() {
    flights.lot("C6-5", "K7", 2);
    RecordId dome = flights.chute("18 in dome");
    RecordId small = flights.log.has(Kind.ALTIMETER, Facts.none().with(Altimeter.NAME, "small"));
    Facts gear = Facts.none().with(Flight.DEVICE, dome);
    flights.planned(flights.heron, "C6-5", gear.with(Flight.ALTIMETER, small));
    flights.planned(flights.heron, "C6-5", gear);
    flights.planned(flights.wren, "C6-5");

    assertThat(told(Packing.Group.ROCKETS))
        .containsExactly("Grey Heron |  | flies in 2", "Wren |  | ");
    assertThat(told(Packing.Group.MOTORS))
        .containsExactly(
            "2 C6-5 lot K7 | top tray | ",
            "1 C6-5 |  | short: not in the box",
            "6 igniters |  | one a motor and a spare each");
    assertThat(told(Packing.Group.RECOVERY))
        .containsExactly("18 in dome |  | parachute; packed once, flies in 2");
    assertThat(told(Packing.Group.ALTIMETERS)).containsExactly("small |  | altimeter");
  }

  /** A spare for each igniter: common practice, no source. */
  @Test
  void igniters_are_for_the_motors_lit_from_the_ground() {
    flights.planned(flights.heron, "3xC6-5");
    flights.planned(flights.heron, "C6-0 then C6-7");

    assertThat(told(Packing.Group.MOTORS))
        .contains("8 igniters |  | one a motor and a spare each")
        .contains("3 C6-5 |  | ", "1 C6-0 |  | ", "1 C6-7 |  | ");
  }

  @Test
  void a_plan_of_nothing_still_has_what_goes_along_whatever_is_flown() {
    assertThat(flights.packing().items())
        .isNotEmpty()
        .allMatch(item -> item.group() == Packing.Group.BESIDES)
        .extracting(Packing.Item::key)
        .contains("thing.wadding", "thing.key", "thing.aid", "thing.water")
        .doesNotHaveDuplicates();
  }

  @Test
  void a_tick_holds_for_the_count_it_was_given_to() {
    flights.lot("C6-5", "K7", 5);
    flights.planned(flights.heron, "C6-5");
    long all = flights.packing().left();
    Packing.Item motor = flights.packing().items().get(1);
    flights.log.save(
        Action.change(
            "",
            Kind.DAY,
            flights.day,
            Facts.none().with(Day.PACKED, List.of(motor.key(), "thing.key"))));
    assertThat(flights.packing().isPacked(motor)).isTrue();
    assertThat(flights.packing().left()).isEqualTo(all - 2);

    flights.planned(flights.wren, "C6-5");
    assertThat(flights.packing().items())
        .filteredOn(flights.packing()::isPacked)
        .extracting(Packing.Item::key)
        .containsExactly("thing.key");
  }
}
