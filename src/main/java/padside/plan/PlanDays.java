package padside.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Logbook;

/**
 * The days there is something to plan for: those dated today or later, and those that passed with
 * flights still planned; by date, of two on one date the one opened last first.
 */
public record PlanDays(List<Day> days, LocalDate today, Logbook book) {
  /** Keeps its own list. */
  public PlanDays {
    days = List.copyOf(days);
  }

  /** The days of a log as seen on one of them. */
  public static PlanDays of(Logbook book, LocalDate today) {
    Set<RecordId> planned = planned(book);
    List<Day> days = new ArrayList<>();
    book.days().forEach(day -> days.add(0, day));
    days.removeIf(day -> day.date().isEmpty());
    days.removeIf(day -> day.date().get().isBefore(today) && !planned.contains(day.id()));
    days.sort(Comparator.comparing(day -> day.date().orElseThrow()));
    return new PlanDays(days, today, book);
  }

  /** The next day with a plan, else a plan whose day has passed, else the next day. */
  public Optional<Day> first() {
    Set<RecordId> named = planned(book);
    List<Day> planned = days.stream().filter(day -> named.contains(day.id())).toList();
    return planned.stream()
        .filter(this::isToCome)
        .findFirst()
        .or(() -> planned.stream().reduce((earlier, later) -> later))
        .or(() -> days.stream().findFirst());
  }

  /** The day behind another, the first behind the last. */
  public Optional<Day> after(RecordId day) {
    List<RecordId> ids = days.stream().map(Day::id).toList();
    return days.isEmpty()
        ? Optional.empty()
        : Optional.of(days.get((ids.indexOf(day) + 1) % days.size()));
  }

  /** The days that flights are planned for. */
  private static Set<RecordId> planned(Logbook book) {
    return book.flights().stream()
        .filter(Flight::isPlanned)
        .flatMap(flight -> flight.day().stream())
        .collect(Collectors.toSet());
  }

  private boolean isToCome(Day day) {
    return day.date().filter(date -> !date.isBefore(today)).isPresent();
  }
}
