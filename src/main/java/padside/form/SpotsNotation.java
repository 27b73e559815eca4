package padside.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Reading;
import padside.units.UnitSystem;

/**
 * Spots on the ground in one line, divided by semicolons: each a bearing from the pad, its lengths
 * and what it is called.
 */
abstract sealed class SpotsNotation<T> implements Notation<List<T>>
    permits EdgesNotation, HazardsNotation {
  /** {@code north north east} is the longest way to write a bearing. */
  private static final int LONGEST_BEARING = 3;

  /** {@code 1 1/2 mi}, {@code 300 ft 6 in}: a unit is one word, what follows it is the name. */
  private static final int LONGEST_LENGTH = 4;

  private final Notation<Bearing> bearings = Notations.bearing();
  private final Notation<Length> distances;
  private final String noun;
  private final List<String> lengths;

  /**
   * For one kind of spot.
   *
   * @param noun one of them, for objections: {@code edge}
   * @param lengths what the lengths behind the bearing are, in their order
   */
  SpotsNotation(UnitSystem system, String noun, List<String> lengths) {
    this.distances = Notations.distance(system);
    this.noun = noun;
    this.lengths = lengths;
  }

  /** A spot as typed. */
  record Spot(Bearing bearing, List<Length> lengths, String name) {}

  /** What stands at the start of a list of words, and how many of them it takes. */
  private record Head<T>(T value, int words) {}

  /** Reads one; the objection is the middle of a sentence. */
  abstract Reading<T> one(String typed);

  abstract String showOne(T value);

  abstract String exampleOne();

  @Override
  public final Reading<List<T>> read(String typed) {
    List<T> spots = new ArrayList<>();
    for (String part : typed.split(";", -1)) {
      if (!part.isBlank()) {
        Reading<T> spot = one(part.strip());
        if (spot.objection().isPresent()) {
          return refused(spots.size() + 1, part.strip(), spot.objection().get());
        }
        spots.add(spot.value().orElseThrow());
      }
    }
    return spots.isEmpty()
        ? Reading.refused("No " + noun + " is named; type them like " + example() + ".")
        : Reading.of(List.copyOf(spots));
  }

  @Override
  public final String show(List<T> spots) {
    return spots.stream().map(this::showOne).collect(Collectors.joining("; "));
  }

  /** Makes one of a typed bearing, its lengths and a name. */
  final Reading<T> one(String typed, Function<Spot, T> made) {
    List<String> words = List.of(typed.strip().split("\\s+"));
    Optional<Head<Bearing>> bearing = bearing(words);
    if (bearing.isEmpty()) {
      return Reading.refused("does not begin with a bearing");
    }
    List<String> rest = words.subList(bearing.get().words, words.size());
    Optional<Head<List<Length>>> found = lengths(rest, lengths.size());
    if (found.isEmpty()) {
      return Reading.refused(lacking(rest));
    }
    String name = String.join(" ", rest.subList(found.get().words, rest.size()));
    return Reading.of(made.apply(new Spot(bearing.get().value, found.get().value, name)));
  }

  final String show(Spot spot) {
    return Stream.of(
            Stream.of(point(spot.bearing)),
            spot.lengths.stream().map(distances::show),
            Stream.of(spot.name).filter(name -> !name.isEmpty()))
        .flatMap(parts -> parts)
        .collect(Collectors.joining(" "));
  }

  final String exampleLength() {
    return distances.example();
  }

  private Optional<Head<Bearing>> bearing(List<String> words) {
    for (int count = Math.min(LONGEST_BEARING, words.size()); count > 0; count--) {
      Optional<Bearing> value = bearings.read(first(words, count)).value();
      if (value.isPresent()) {
        return Optional.of(new Head<>(value.get(), count));
      }
    }
    return Optional.empty();
  }

  /** So many lengths in a row: of each the most words that leave the others theirs. */
  private Optional<Head<List<Length>>> lengths(List<String> words, int many) {
    if (many == 0) {
      return Optional.of(new Head<>(List.of(), 0));
    }
    for (int count = lengthWords(words); count > 0; count--) {
      Optional<Length> value = distances.read(first(words, count)).value();
      if (value.isPresent()) {
        int taken = count;
        Optional<Head<List<Length>>> found =
            lengths(words.subList(taken, words.size()), many - 1)
                .map(rest -> new Head<>(joined(value.get(), rest.value), taken + rest.words));
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static List<Length> joined(Length first, List<Length> rest) {
    return Stream.concat(Stream.of(first), rest.stream()).toList();
  }

  /** How many words may belong to one length: none behind two words without a digit. */
  private static int lengthWords(List<String> words) {
    int count = Math.min(1, words.size());
    while (count < LONGEST_LENGTH
        && count < words.size()
        && (hasDigit(words.get(count)) || hasDigit(words.get(count - 1)))) {
      count++;
    }
    return count;
  }

  private static boolean hasDigit(String word) {
    return word.chars().anyMatch(Character::isDigit);
  }

  private static String first(List<String> words, int count) {
    return String.join(" ", words.subList(0, count));
  }

  /** Which of the lengths is missing. */
  private String lacking(List<String> words) {
    int found = 0;
    while (lengths(words, found + 1).isPresent()) {
      found++;
    }
    String before = found == 0 ? "bearing" : lengths.get(found - 1);
    return "has no " + lengths.get(found) + " behind the " + before;
  }

  /** A compass point where it says the bearing exactly, else degrees. */
  private String point(Bearing bearing) {
    String point = bearing.compassPoint();
    boolean exact = bearings.read(point).value().equals(Optional.of(bearing));
    return exact ? point : bearings.show(bearing);
  }

  private Reading<List<T>> refused(int number, String part, String why) {
    return Reading.refused(
        noun.substring(0, 1).toUpperCase(Locale.ROOT)
            + noun.substring(1)
            + " "
            + number
            + ", "
            + Reading.echo(part)
            + ", "
            + why
            + "; type it like "
            + exampleOne()
            + ".");
  }
}
