package padside.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import padside.units.Reading;
import padside.units.UnitSystem;

/**
 * Which columns of a table are read: those the flier names, else by header, else by what they hold.
 */
final class ColumnSearch {
  private static final String SAY = " --columns says otherwise, like time=1s,height=3ft.";

  private final List<String> header;
  private final List<List<String>> rows;
  private final Wanted wanted;
  private final List<String> told = new ArrayList<>();

  /**
   * What was found.
   *
   * @param told what was guessed
   */
  record Found(TableColumn time, TableColumn level, List<String> told) {}

  ColumnSearch(List<String> header, List<List<String>> rows, Wanted wanted) {
    this.header = header;
    this.rows = rows;
    this.wanted = wanted;
  }

  Reading<Found> found() {
    for (Wanted.Pick pick : wanted.picks().values()) {
      if (place(pick) < 0 || place(pick) >= header.size()) {
        return Reading.refused(
            "There is no column "
                + (pick.place() > 0 ? "" + pick.place() : Reading.echo(pick.header()))
                + "; the table has "
                + header.size()
                + ".");
      }
    }
    int time = time();
    if (time < 0) {
      return Reading.refused(
          "No column grows from row to row as time does; say which it is: --columns time=1s.");
    }
    Quantity quantity = level();
    int level = at(quantity).orElseGet(() -> unnamed(time));
    if (level < 0 || level == time) {
      return Reading.refused(
          "No column of heights or pressures was found; say which it is: --columns height=2ft.");
    }
    // Without a name only the size of its numbers tells a pressure from a height.
    boolean named = at(quantity).isPresent();
    Quantity sure = named || !isPressure(level) ? quantity : Quantity.PRESSURE;
    return Reading.of(
        new Found(column(Quantity.TIME, time), column(sure, level), List.copyOf(told)));
  }

  private int place(Wanted.Pick pick) {
    if (pick.place() > 0) {
      return pick.place() - 1;
    }
    for (int i = 0; i < header.size(); i++) {
      if (header.get(i).equalsIgnoreCase(pick.header())) {
        return i;
      }
    }
    return -1;
  }

  /** A height where one is named or said, else a pressure. */
  private Quantity level() {
    if (wanted.picks().containsKey(Quantity.PRESSURE)) {
      return Quantity.PRESSURE;
    }
    boolean height =
        wanted.picks().containsKey(Quantity.HEIGHT) || !named(Quantity.HEIGHT).isEmpty();
    return height || named(Quantity.PRESSURE).isEmpty() ? Quantity.HEIGHT : Quantity.PRESSURE;
  }

  private int time() {
    return at(Quantity.TIME)
        .orElseGet(
            () -> {
              for (int i = 0; i < header.size(); i++) {
                if (grows(i)) {
                  told.add(
                      "No column is called time; column " + (i + 1) + " grows as it does." + SAY);
                  return i;
                }
              }
              return -1;
            });
  }

  private boolean grows(int column) {
    double[] values = values(column);
    long up = 0;
    for (int i = 1; i < values.length; i++) {
      up += values[i] > values[i - 1] ? 1 : 0;
    }
    return values.length >= 3 && up >= 0.9 * (values.length - 1);
  }

  /** The first column of numbers that is not the time. */
  private int unnamed(int time) {
    for (int i = 0; i < header.size(); i++) {
      if (i != time && values(i).length >= 0.5 * rows.size()) {
        told.add(
            "No column is called altitude or pressure; column " + (i + 1) + " was taken." + SAY);
        return i;
      }
    }
    return -1;
  }

  private boolean isPressure(int column) {
    double middle = median(values(column));
    return header.get(column).isBlank() && middle >= 25000 && middle <= 110000;
  }

  private Optional<Integer> at(Quantity quantity) {
    Wanted.Pick pick = wanted.picks().get(quantity);
    if (pick != null) {
      return Optional.of(place(pick));
    }
    List<Integer> named = named(quantity);
    if (named.size() > 1 && told.stream().noneMatch(t -> t.contains("for " + quantity.word()))) {
      told.add(
          "Columns %s would do for %s; the first was taken."
                  .formatted(
                      String.join(" and ", named.stream().map(i -> "" + (i + 1)).toList()),
                      quantity.word())
              + SAY);
    }
    return named.stream().findFirst();
  }

  private List<Integer> named(Quantity quantity) {
    List<Integer> named = new ArrayList<>();
    for (int i = 0; i < header.size(); i++) {
      if (quantity.isNamedBy(words(header.get(i))) && values(i).length > 0) {
        named.add(i);
      }
    }
    return named;
  }

  private static List<String> words(String name) {
    String parted = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ").strip();
    return Arrays.asList(parted.split(" "));
  }

  private TableColumn column(Quantity quantity, int at) {
    String name = header.get(at);
    Wanted.Pick pick = wanted.picks().get(quantity);
    if (pick != null && !pick.unit().isEmpty()) {
      return of(quantity, at, pick.unit());
    }
    List<String> words = words(name);
    for (int i = words.size() - 1; i >= 0; i--) {
      boolean alone = words.size() == 1 || !quantity.isNamedBy(List.of(words.get(i)));
      if ((alone || i > 0) && quantity.inSi(words.get(i)).isPresent()) {
        return of(quantity, at, words.get(i));
      }
    }
    return guessed(quantity, at);
  }

  private TableColumn of(Quantity quantity, int at, String unit) {
    OptionalDouble factor = quantity.inSi(unit);
    return new TableColumn(quantity, at, header.get(at), unit, factor.orElseThrow());
  }

  private TableColumn guessed(Quantity quantity, int at) {
    String unit =
        switch (quantity) {
          case TIME -> isThousandths(at) ? "ms" : "s";
          case HEIGHT -> wanted.units() == UnitSystem.US ? "ft" : "m";
          case PRESSURE -> pressureUnit(median(values(at)));
        };
    told.add(
        "Column "
            + (at + 1)
            + " names no unit of "
            + quantity.word()
            + "; taken for "
            + unit
            + "."
            + SAY);
    return of(quantity, at, unit);
  }

  /** Whole numbers with steps no altimeter has in seconds. */
  private boolean isThousandths(int at) {
    double[] values = values(at);
    double[] steps = new double[Math.max(0, values.length - 1)];
    boolean whole = true;
    for (int i = 0; i < steps.length; i++) {
      steps[i] = values[i + 1] - values[i];
      whole &= values[i] == Math.rint(values[i]);
    }
    return whole && steps.length > 0 && median(steps) >= 5;
  }

  /** The ranges of these units do not meet between the lowest field and 9 km above it. */
  private static String pressureUnit(double value) {
    return value > 2000 ? "Pa" : value > 150 ? "hPa" : value > 34 ? "kPa" : "inHg";
  }

  private double[] values(int column) {
    return rows.stream()
        .map(cells -> Row.number(cells.get(column)))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .toArray();
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
  }
}
