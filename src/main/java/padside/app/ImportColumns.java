package padside.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.form.FormField;
import padside.report.Sheet;
import padside.screen.KindFields;
import padside.screen.World;
import padside.units.Notation;
import padside.units.Reading;

/**
 * Which column of a spreadsheet fills what of a flight. Headers are compared with the names of the
 * columns, the labels of the forms and some more words of the trade, whatever their case, blanks
 * and underscores; a unit in a header is that of the numbers below it.
 */
final class ImportColumns {
  /** The delay where it stands beside the motor. */
  static final String DELAY = "delay";

  /** More words for what a label says. */
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("day", Sheet.DATE),
          Map.entry("flown on", Sheet.DATE),
          Map.entry("site", Sheet.FIELD),
          Map.entry("location", Sheet.FIELD),
          Map.entry("place flown", Sheet.FIELD),
          Map.entry("model", Flight.ROCKET.name()),
          Map.entry("rocket name", Flight.ROCKET.name()),
          Map.entry("engine", Flight.MOTOR.name()),
          Map.entry("max height", Flight.ALTITUDE.name()),
          Map.entry("max altitude", Flight.ALTITUDE.name()),
          Map.entry("height", Flight.ALTITUDE.name()),
          Map.entry("apogee", Flight.ALTITUDE.name()),
          Map.entry("notes", Flight.NOTE.name()),
          Map.entry("remarks", Flight.NOTE.name()),
          Map.entry("comment", Flight.NOTE.name()),
          Map.entry("comments", Flight.NOTE.name()),
          Map.entry("outcome", Flight.RECOVERY.name()),
          Map.entry("ejection delay", DELAY),
          Map.entry("parachute", Flight.DEVICE.name()),
          Map.entry("chute", Flight.DEVICE.name()),
          Map.entry("recovery device", Flight.DEVICE.name()),
          Map.entry("batch", Flight.LOT.name()),
          Map.entry("pilot", Flight.FLIER.name()),
          Map.entry("mass", Flight.MASS.name()),
          Map.entry("rod", Flight.ROD.name()));

  /**
   * One that is matched.
   *
   * @param name of the flight's column; date, field or delay, or wind
   * @param unit of the numbers below the header, perhaps empty
   * @param exact the header is the column's own name, so that values stand as they are stored
   */
  record Match(int column, String header, String name, String unit, boolean exact) {}

  private final Map<String, FormField<?>> fields = new LinkedHashMap<>();
  private final Map<String, String> names = new LinkedHashMap<>();

  ImportColumns(World world) {
    Facts bent = Facts.none().with(Flight.BOOST, "arced").with(Flight.STATUS, Flight.Status.FLOWN);
    for (FormField<?> field : KindFields.of(Kind.FLIGHT, bent, world)) {
      fields.putIfAbsent(field.name(), field);
      names.putIfAbsent(folded(field.label()), field.name());
    }
    // The card calls the device so; of an outcome it is how it worked.
    names.put("recovery", Flight.RECOVERY.name());
    names.putAll(WORDS);
    for (Column<?> column : Kind.FLIGHT.columns()) {
      names.put(folded(column.name()), column.name());
    }
    List.of(Sheet.DATE, Sheet.FIELD, DELAY, "wind").forEach(name -> names.put(name, name));
    names.remove(folded(Flight.DAY.name()));
    names.put("day", Sheet.DATE);
  }

  /** How a flight's column is typed into a form, where it is. */
  Optional<FormField<?>> field(String name) {
    return Optional.ofNullable(fields.get(name));
  }

  /** What a header means; nothing where no word fits. */
  Optional<Match> match(int column, String header) {
    String text = header.strip();
    if (Kind.FLIGHT.columns().stream().anyMatch(each -> each.name().equals(text))
        && !text.equals(Flight.DAY.name())) {
      return Optional.of(new Match(column, header, text, "", true));
    }
    String bare = text.replaceAll("[(\\[].*?[)\\]]", " ");
    String bracketed = bare.equals(text) ? "" : text.replaceAll("(?s).*?[(\\[](.*?)[)\\]].*", "$1");
    String words = folded(bare);
    int last = words.lastIndexOf(' ');
    Optional<Match> whole =
        Optional.ofNullable(names.get(words))
            .filter(name -> bracketed.isBlank() || takes(name, bracketed))
            .map(name -> new Match(column, header, name, bracketed.strip(), false));
    return whole.or(
        () ->
            Optional.ofNullable(last < 0 ? null : names.get(words.substring(0, last)))
                .filter(name -> takes(name, words.substring(last + 1)))
                .map(name -> new Match(column, header, name, words.substring(last + 1), false)));
  }

  /** As {@link #match} for a column that the flier names. */
  Reading<Match> told(int column, String header, String wanted) {
    Optional<String> name = Optional.ofNullable(names.get(folded(wanted)));
    if (name.isEmpty()) {
      return Reading.refused(
          "A flight has no \"" + wanted + "\"; choose " + String.join(", ", choices()) + ".");
    }
    String text = folded(header.replaceAll("[()\\[\\]]", " "));
    String unit = text.substring(text.lastIndexOf(' ') + 1);
    return Reading.of(
        new Match(column, header, name.get(), takes(name.get(), unit) ? unit : "", false));
  }

  private List<String> choices() {
    List<String> all = new ArrayList<>(List.of(Sheet.DATE, Sheet.FIELD, DELAY));
    fields.keySet().forEach(all::add);
    return all;
  }

  private boolean takes(String name, String unit) {
    FormField<?> field = fields.get(name);
    boolean isUnit = !unit.isBlank() && !unit.strip().matches(".*[0-9].*");
    return field == null
        ? name.equals(DELAY) && unit.strip().matches("s|sec|seconds")
        : isUnit && field.choices().isEmpty() && isQuantity(field.notation(), unit.strip());
  }

  private static boolean isQuantity(Notation<?> notation, String unit) {
    return notation.read("1" + unit).value().isPresent()
        && notation.read("1 no unit").value().isEmpty();
  }

  private static String folded(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_\\-:.]+", " ").strip();
  }
}
