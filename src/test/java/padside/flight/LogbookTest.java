package padside.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.motor.MotorTable;

class LogbookTest {
  private final MemoryFlightLog log = new MemoryFlightLog();

  private RecordId day(String date) {
    return log.has(Kind.DAY, Facts.none().with(Day.DATE, LocalDate.parse(date)));
  }

  private Logbook book() throws Fault {
    return Logbook.read(log, new MotorTable(List.of()));
  }

  @Test
  void the_day_opened_last_is_the_latest_whatever_a_clock_called_it() throws Fault {
    RecordId first = day("2026-05-02");
    day("2026-05-09");
    RecordId fiftyYearsBack = day("1976-05-16");

    assertThat(book().latestDay().map(Day::id)).contains(fiftyYearsBack);
    assertThat(book().latestDay(day -> day.id().equals(first)).map(Day::id)).contains(first);
  }

  @Test
  void days_behind_the_one_found_are_not_asked_about() throws Fault {
    day("2026-05-02");
    day("2026-05-16");
    day("2026-05-09");
    List<String> asked = new ArrayList<>();

    book().latestDay(day -> asked.add(day.date().orElseThrow().toString()) && asked.size() == 2);

    assertThat(asked).containsExactly("2026-05-09", "2026-05-16");
  }
}
