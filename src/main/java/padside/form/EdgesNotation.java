package padside.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import padside.flight.Field;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Reading;
import padside.units.UnitSystem;

/**
 * The edges of a field in one line, divided by semicolons: bearing and distance from the pad, then
 * what the edge is called and, behind a {@code >}, what lies beyond; both may be left out. {@code N
 * 300ft lane > road; NE 280ft; 240 450ft > trees}.
 */
public final class EdgesNotation implements Notation<List<Field.Edge>> {
  /** {@code north north east} is the longest way to write a bearing. */
  private static final int LONGEST_BEARING = 3;

  /** {@code 1 1/2 mi}, {@code 300 ft 6 in}: a unit is one word, what follows it is the name. */
  private static final int LONGEST_DISTANCE = 4;

  private final Notation<Bearing> bearings = Notations.bearing();
  private final Notation<Length> distances;

  public EdgesNotation(UnitSystem system) {
    this.distances = Notations.distance(system);
  }

  /** What stands at the start of a list of words, and how many of them it takes. */
  private record Head<T>(T value, int words) {}

  @Override
  public Reading<List<Field.Edge>> read(String typed) {
    List<Field.Edge> edges = new ArrayList<>();
    int number = 0;
    for (String part : typed.split(";", -1)) {
      if (!part.isBlank()) {
        number++;
        Reading<Field.Edge> edge = edge(part.strip());
        if (edge.objection().isPresent()) {
          return refused(number, part.strip(), edge.objection().get());
        }
        edges.add(edge.value().orElseThrow());
      }
    }
    return edges.isEmpty()
        ? Reading.refused("No edge is named; type them like " + example() + ".")
        : Reading.of(List.copyOf(edges));
  }

  /** The objection to one edge is the middle of a sentence. */
  private Reading<Field.Edge> edge(String typed) {
    int mark = typed.indexOf('>');
    String beyond = mark < 0 ? "" : typed.substring(mark + 1).strip();
    List<String> words =
        List.of((mark < 0 ? typed : typed.substring(0, mark)).strip().split("\\s+"));
    Optional<Head<Bearing>> bearing = head(words, LONGEST_BEARING, bearings);
    if (bearing.isEmpty()) {
      return Reading.refused("does not begin with a bearing");
    }
    List<String> rest = words.subList(bearing.get().words, words.size());
    Optional<Head<Length>> distance = head(rest, distanceWords(rest), distances);
    if (distance.isEmpty()) {
      return Reading.refused("has no distance behind the bearing");
    }
    String name = String.join(" ", rest.subList(distance.get().words, rest.size()));
    return Reading.of(new Field.Edge(bearing.get().value, distance.get().value, name, beyond));
  }

  /** How many words may belong to the distance: none behind two words without a digit. */
  private static int distanceWords(List<String> words) {
    int count = 1;
    while (count < LONGEST_DISTANCE
        && count < words.size()
        && (hasDigit(words.get(count)) || hasDigit(words.get(count - 1)))) {
      count++;
    }
    return count;
  }

  private static boolean hasDigit(String word) {
    return word.chars().anyMatch(Character::isDigit);
  }

  /** The most words from the start that can be read together. */
  private static <T> Optional<Head<T>> head(List<String> words, int most, Notation<T> notation) {
    for (int count = Math.min(most, words.size()); count > 0; count--) {
      Optional<T> value = notation.read(String.join(" ", words.subList(0, count))).value();
      if (value.isPresent()) {
        return Optional.of(new Head<>(value.get(), count));
      }
    }
    return Optional.empty();
  }

  @Override
  public String show(List<Field.Edge> edges) {
    return edges.stream().map(this::show).collect(Collectors.joining("; "));
  }

  private String show(Field.Edge edge) {
    String name = edge.name().isEmpty() ? "" : " " + edge.name();
    String beyond = edge.beyond().isEmpty() ? "" : " > " + edge.beyond();
    return point(edge.bearing()) + " " + distances.show(edge.distance()) + name + beyond;
  }

  /** A compass point where it says the bearing exactly, else degrees. */
  private String point(Bearing bearing) {
    String point = bearing.compassPoint();
    boolean exact = bearings.read(point).value().equals(Optional.of(bearing));
    return exact ? point : bearings.show(bearing);
  }

  @Override
  public String example() {
    return "N " + distances.example() + " lane > road; NE " + distances.example();
  }

  private Reading<List<Field.Edge>> refused(int number, String part, String why) {
    return Reading.refused(
        "Edge "
            + number
            + ", "
            + Reading.echo(part)
            + ", "
            + why
            + "; type it like NE "
            + distances.example()
            + " lane > road.");
  }
}
