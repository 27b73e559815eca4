package padside.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.flight.Day;
import padside.flight.Flight;

/**
 * What the list of a day's cards has besides where several fly: the cards of one flier together,
 * and their pads. Nothing of it is seen by someone who flies alone from one pad.
 *
 * @param flights as they are listed
 * @param byFlier whether they are of more than one
 * @param pads how many the day has
 */
record DayCrowd(List<Flight> flights, boolean byFlier, int pads) {
  /** No name a flier can be typed in with. */
  private static final String PLANNED = "\n";

  DayCrowd {
    flights = List.copyOf(flights);
  }

  /**
   * The flights of a day, in its order, as they are to be listed: what is planned stays in its own
   * behind the others.
   */
  static DayCrowd of(List<Flight> inOrder, Optional<Day> day) {
    Map<String, List<Flight>> groups = new LinkedHashMap<>();
    for (Flight flight : inOrder) {
      String group = flight.isPlanned() ? PLANNED : flight.flier().orElse("");
      groups.computeIfAbsent(group, name -> new ArrayList<>()).add(flight);
    }
    return new DayCrowd(
        groups.values().stream().flatMap(List::stream).toList(),
        inOrder.stream().map(Flight::flier).distinct().count() > 1,
        day.map(Day::pads).orElse(1));
  }

  /** The headings in front of the rocket's. */
  List<ListPane.Heading> headings() {
    List<ListPane.Heading> headings = new ArrayList<>();
    if (byFlier) {
      headings.add(ListPane.Heading.of("Flier"));
    }
    if (pads > 1) {
      headings.add(ListPane.Heading.of("Pad"));
    }
    return headings;
  }

  /** What stands under them; the flier's name with the first card of each. */
  List<String> cells(Flight flight) {
    List<String> cells = new ArrayList<>();
    if (byFlier) {
      int before = flights.indexOf(flight) - 1;
      boolean first = before < 0 || !flights.get(before).flier().equals(flight.flier());
      cells.add(first ? flight.flier().map(this::brief).orElse("not named") : "");
    }
    if (pads > 1) {
      cells.add(flight.pad().map(pad -> pad + (isTwice(flight) ? " twice" : "")).orElse(""));
    }
    return cells;
  }

  /** The first name, where it says who is meant. */
  private String brief(String flier) {
    String first = first(flier);
    long called =
        flights.stream()
            .flatMap(flight -> flight.flier().stream())
            .distinct()
            .filter(name -> first(name).equals(first))
            .count();
    return called == 1 ? first : flier;
  }

  private static String first(String name) {
    int end = name.indexOf(' ');
    return end < 0 ? name : name.substring(0, end);
  }

  private boolean isTwice(Flight flight) {
    return flight.isOpen()
        && flights.stream().filter(each -> each.isOpen() && each.pad().equals(flight.pad())).count()
            > 1;
  }
}
