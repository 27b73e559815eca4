package padside.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import padside.flight.Kind;

/**
 * A form as a flier fills it: how it is reached from the Day screen, and its fields in order, each
 * with what may be typed there.
 */
enum FilledForm {
  CARD(
      Kind.FLIGHT,
      List.of("n", "Enter"),
      List.of(
          new Field("Motor", "", ""),
          new Field("Lot", "", ""),
          new Field("Recovery", "", ""),
          new Field("Altimeter", "", ""),
          new Field("Bare mass", "mass_kg", "%d.%02doz"),
          new Field("Rod length", "rod_m", "3%d.%02din"),
          new Field("Rod tilt", "", ""),
          new Field("Tilt toward", "", ""),
          new Field("Wind", "wind_mean_mps", "%d.%02d SW"),
          new Field("Note", "note", "card %d of %02d, mind the fin"))),
  WEATHER(
      Kind.WEATHER,
      List.of("w"),
      List.of(
          new Field("Wind", "wind_mean_mps", "%d.%02d NW"),
          new Field("Height of reading", "wind_height_m", "%d.%02dft"),
          new Field("Temperature", "temperature_k", "5%d.%02dF"),
          new Field("Station pressure", "pressure_pa", "29.%d%02dinHg"),
          new Field("Humidity", "", ""),
          new Field("Cloud base", "cloud_base_m", "1%d%02dft"),
          new Field("Sky", "sky", "showers %d north, %02d"),
          new Field("Note", "note", "reading %d of %02d"))),
  DEBRIEF(
      Kind.FLIGHT,
      List.of("d"),
      List.of(
          new Field("Altitude", "altitude_m", "3%d.%02dft"),
          new Field("Lies toward", "", ""),
          new Field("Distance", "landing_distance_m", "1%d%02dft"))),
  DAY(
      Kind.DAY,
      List.of("e"),
      List.of(
          new Field("Field", "", ""),
          new Field("Date", "", ""),
          new Field("Permission", "", ""),
          new Field("Fire ban", "", ""),
          new Field("Pads", "", ""),
          new Field("Note", "note", "day %d of %02d, gate code")));

  private final Kind kind;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list
  private final List<String> keys;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of records of texts
  private final List<Field> fields;

  FilledForm(Kind kind, List<String> keys, List<Field> fields) {
    this.kind = kind;
    this.keys = keys;
    this.fields = fields;
  }

  /**
   * A field of the form.
   *
   * @param column where it is kept; empty where nothing is typed
   * @param text a pattern with two counts
   */
  record Field(String label, String column, String text) {
    Optional<String> typed(Random random) {
      boolean left = column.isEmpty() || random.nextInt(4) == 0;
      return left
          ? Optional.empty()
          : Optional.of(text.formatted(1 + random.nextInt(9), random.nextInt(100)));
    }
  }

  Kind kind() {
    return kind;
  }

  /** The keys that lead to it from the Day screen. */
  List<String> keys() {
    return keys;
  }

  List<Field> fields() {
    return fields;
  }

  /** Whether nothing comes after it. */
  boolean endsWith(Field field) {
    return fields.get(fields.size() - 1).equals(field);
  }

  /** Whether every use of it makes a record of its own. */
  boolean isOfNew() {
    return this == CARD || this == WEATHER;
  }

  /** A column that tells its record from others of the kind. */
  String mark() {
    return this == DEBRIEF ? "altitude_m" : "note";
  }

  /** The field the cursor is in, once the form is on the screen. */
  Optional<Field> at(List<String> screen) {
    return fields.stream()
        .filter(
            field ->
                screen.stream()
                    .anyMatch(line -> line.strip().matches("[>!] " + field.label() + "( .*|)")))
        .findFirst();
  }

  /** True when the screen says that all that was typed is kept. */
  static boolean saysKept(List<String> screen) {
    return screen.stream().anyMatch(FilledForm::isKept);
  }

  private static boolean isKept(String line) {
    String own = line.contains("│") ? line.substring(0, line.indexOf('│')) : line;
    return List.of("draft kept", "kept").contains(own.strip()) || line.endsWith("  all kept");
  }

  /** Which of the texts the screen shows in their fields. */
  Map<String, String> shown(List<String> screen, Map<Field, String> texts) {
    Map<String, String> shown = new LinkedHashMap<>();
    texts.forEach(
        (field, text) -> {
          List<String> lines = new ArrayList<>(screen);
          lines.removeIf(line -> !line.contains(field.label()) || !line.contains(text));
          if (!lines.isEmpty()) {
            shown.put(field.column(), text);
          }
        });
    return shown;
  }
}
