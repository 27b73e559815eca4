package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.MemoryFlightLog;
import padside.motor.MotorTable;

class PastReadingTest {
  private final MemoryFlightLog log = new MemoryFlightLog();
  private final PastReading past = new PastReading();

  private RecordId flown(String burn) {
    return log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.MOTOR, "C6-5")
            .with(Flight.BURN, burn));
  }

  private Logbook book() throws Fault {
    return Logbook.read(log, new MotorTable(List.of()));
  }

  private static int flights(Logbook book, String burn) {
    return book.past().burns().entrySet().stream()
        .filter(each -> each.getKey().burn().equals(Optional.of(burn)))
        .mapToInt(java.util.Map.Entry::getValue)
        .sum();
  }

  private void throughAll() throws Fault {
    while (past.more(log)) {
      assertThat(past.begins(book())).isFalse();
    }
  }

  @Test
  void few_flights_need_no_looking_through() throws Fault {
    flown("nominal");

    assertThat(past.begins(book())).isFalse();
    assertThat(flights(past.over(book()), "nominal")).isEqualTo(1);
  }

  @Test
  void an_old_burst_is_found_and_a_change_of_it_too() throws Fault {
    RecordId first = flown("cato_case");
    for (int i = 0; i < 1200; i++) {
      flown("nominal");
    }
    assertThat(flights(past.over(book()), "cato_case")).isZero();
    assertThat(past.begins(book())).isTrue();
    throughAll();
    assertThat(flights(past.over(book()), "cato_case")).isEqualTo(1);
    assertThat(flights(past.over(book()), "nominal")).isEqualTo(1200);
    assertThat(past.begins(book())).isFalse();

    Action mended = Action.change("", Kind.FLIGHT, first, Facts.none().with(Flight.BURN, "weak"));
    Logbook before = book();
    log.save(mended);
    past.changed(mended, before);
    assertThat(past.begins(book())).isTrue();
    throughAll();
    assertThat(flights(past.over(book()), "cato_case")).isZero();
    assertThat(flights(past.over(book()), "weak")).isEqualTo(1);
  }

  @Test
  void a_card_that_is_filled_changes_nothing() throws Fault {
    for (int i = 0; i < 600; i++) {
      flown("nominal");
    }
    assertThat(past.begins(book())).isTrue();
    throughAll();
    RecordId card = log.has(Kind.FLIGHT, Facts.none().with(Flight.STATUS, Flight.Status.CARD));

    past.changed(
        Action.change("", Kind.FLIGHT, card, Facts.none().with(Flight.MOTOR, "D12-5")), book());
    assertThat(past.begins(book())).isFalse();
  }
}
