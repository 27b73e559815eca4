package padside.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Logbook;
import padside.flight.Rocket;
import padside.motor.MotorText;

/** The flights planned for a day in their order, each held against what the range box has left. */
public record Plan(Day day, List<Line> lines) {
  /**
   * One planned flight.
   *
   * @param rocket absent until one is chosen, and when it was removed
   * @param motors stage by stage from the ground up
   * @param fixes what is open on the rocket
   */
  public record Line(Flight flight, Optional<Rocket> rocket, List<Taken> motors, List<Fix> fixes) {
    /** Keeps its own lists. */
    public Line {
      motors = List.copyOf(motors);
      fixes = List.copyOf(fixes);
    }

    /** What box and rocket lack for it, in few words each. */
    public List<String> lacks() {
      return Stream.concat(
              motors.stream().flatMap(taken -> taken.amiss().stream()),
              fixes.stream().map(Fix::words))
          .toList();
    }

    /** How many motors the range box does not hold for it. */
    public int lacking() {
      return motors.stream().mapToInt(Taken::lacking).sum();
    }

    /** How many motors an igniter lights; an upper stage is lit by the one below it. */
    int lit() {
      return flight.motor().map(motor -> MotorText.of(motor).parts().get(0).count()).orElse(0);
    }
  }

  /** Keeps its own list. */
  public Plan {
    lines = List.copyOf(lines);
  }

  /** The plan of a day as the log has it. */
  public static Plan of(Day day, Logbook book) {
    return of(day, book.plannedFor(day.id()), book);
  }

  /**
   * These flights as the plan of a day, in this order. Cards open on that day have taken their
   * motors before them.
   */
  public static Plan of(Day day, List<Flight> planned, Logbook book) {
    Supply supply = new Supply(book);
    book.flightsOf(day.id()).stream().filter(Flight::isOpen).forEach(supply::take);
    List<Line> lines = new ArrayList<>();
    for (Flight flight : planned) {
      Optional<Rocket> rocket = flight.rocket().flatMap(book::rocket);
      List<Fix> fixes = rocket.map(each -> book.openFixes(each.id())).orElse(List.of());
      lines.add(new Line(flight, rocket, supply.take(flight), fixes));
    }
    return new Plan(day, lines);
  }

  /** How many motors the range box does not hold. */
  public int lacking() {
    return lines.stream().mapToInt(Line::lacking).sum();
  }

  /** Where a flight stands, counted from 0. */
  public Optional<Integer> indexOf(RecordId flight) {
    return IntStream.range(0, lines.size())
        .filter(i -> lines.get(i).flight().id().equals(flight))
        .boxed()
        .findFirst();
  }

  /**
   * The places that change when a flight changes places with the one behind it or before it: those
   * of the two, and of all where their places do not tell their order. None at the ends.
   */
  public Map<RecordId, Integer> moved(RecordId flight, boolean later) {
    int from = indexOf(flight).orElse(-1);
    int to = later ? from + 1 : from - 1;
    if (from < 0 || to < 0 || to >= lines.size()) {
      return Map.of();
    }
    List<Flight> order = new ArrayList<>(lines.stream().map(Line::flight).toList());
    List<Integer> places = places(order);
    java.util.Collections.swap(order, from, to);
    Map<RecordId, Integer> changed = new LinkedHashMap<>();
    for (int i = 0; i < order.size(); i++) {
      if (!order.get(i).place().equals(Optional.of(places.get(i)))) {
        changed.put(order.get(i).id(), places.get(i));
      }
    }
    return changed;
  }

  /** The places in use where they rise from flight to flight, else numbers that do. */
  private static List<Integer> places(List<Flight> order) {
    List<Integer> used = order.stream().flatMap(flight -> flight.place().stream()).toList();
    boolean rise =
        used.size() == order.size()
            && IntStream.range(1, used.size()).allMatch(i -> used.get(i - 1) < used.get(i));
    return rise ? used : IntStream.rangeClosed(1, order.size()).boxed().toList();
  }
}
