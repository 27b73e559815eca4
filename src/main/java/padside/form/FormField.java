package padside.form;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import padside.fact.Column;
import padside.fact.Facts;
import padside.units.Notation;

/**
 * One field of a form, as declared: nothing of it changes while the flier types.
 *
 * @param label short, left of the entry
 * @param hint one line told while the cursor is here
 */
public record FormField<T>(
    Place<T> place, String label, Notation<T> notation, Rule<T> rule, String hint) {
  /** A number, or a mean and a gust, without a unit. */
  private static final Pattern BARE = Pattern.compile("[0-9.,/ +-]+(g[0-9.,]+)?");

  public static <T> FormField<T> of(
      Column<T> column, String label, Notation<T> notation, String hint) {
    return new FormField<>(Place.of(column), label, notation, Rule.none(), hint);
  }

  /** A field filled from a list. */
  public static <T> FormField<T> choice(
      Column<T> column, String label, Choices<T> choices, String hint) {
    return new FormField<>(Place.chosen(column), label, choices, Rule.none(), hint);
  }

  /** Doubts what lies outside a range, in this field's own words. */
  public FormField<T> doubtingOutside(ToDoubleFunction<T> size, T least, T most) {
    return doubting(new Range<>(label, notation, size, least, most));
  }

  public FormField<T> doubting(Rule<T> doubt) {
    return new FormField<>(place, label, notation, doubt, hint);
  }

  public String name() {
    return place.name();
  }

  /** The list this field is filled from, if it is. */
  public Optional<Choices<T>> choices() {
    return notation instanceof Choices<T> choices ? Optional.of(choices) : Optional.empty();
  }

  /** Whether typing replaces what stood there: a quantity or a choice, but no free text. */
  boolean startsAnew() {
    return !(notation instanceof Texts
        || notation instanceof SpotsNotation
        || notation instanceof Completing);
  }

  /** What the typed text may become: options of a list, or a line gone on with. */
  List<Choices.Option<T>> suggestions(String typed) {
    return notation instanceof Completing<T> line
        ? line.completions(typed)
        : choices().map(list -> list.matching(typed)).orElse(List.of());
  }

  /** Whether the options go on with the line that stands there. */
  public boolean completes() {
    return notation instanceof Completing;
  }

  /** What the entry shows at first: the text once typed, else the value as shown. */
  public String textIn(Facts facts) {
    Optional<T> value = place.get(facts);
    Optional<String> typed =
        place.typed(facts).filter(text -> value.isEmpty() || stillMeans(text, value));
    return typed.or(() -> value.map(notation::show)).orElse("");
  }

  /** Reads a text into the facts it stands for. */
  public Facts facts(String typed) {
    return typed.isBlank()
        ? place.put("")
        : notation.read(typed).value().map(value -> place.put(value, typed)).orElse(unread(typed));
  }

  /** Whether and why the text cannot be read. */
  public Optional<String> objection(String typed) {
    return typed.isBlank() ? Optional.empty() : notation.read(typed).objection();
  }

  /** Why a text that can be read is unlikely, by itself or beside the other fields. */
  Optional<String> doubt(String typed, Facts form) {
    return typed.isBlank()
        ? Optional.empty()
        : notation.read(typed).value().flatMap(value -> rule.doubt(value, form));
  }

  /** How a number without a unit was understood, where that says more than the text itself. */
  public Optional<String> understood(String typed) {
    String text = typed.strip();
    return notation instanceof Choices || !BARE.matcher(text).matches()
        ? Optional.empty()
        : notation.read(text).value().map(notation::show).filter(shown -> !shown.equals(text));
  }

  private Facts unread(String typed) {
    return place.put(typed);
  }

  /** A bare number typed under another unit setting would mean another value now. */
  private boolean stillMeans(String typed, Optional<T> value) {
    // As stored: on the way into the facts and back the last bit may change.
    return notation.read(typed).value().flatMap(v -> place.get(place.put(v, typed))).equals(value);
  }
}
