package padside.fact;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One field of a kind of record: its name in journal, tables and exports (unit-suffixed, SI), how
 * it is stored, what it means, and how its stored value becomes a value of the program and back.
 *
 * @param read makes the program's value; throws {@link IllegalArgumentException} on a stored value
 *     that cannot be one
 */
public record Column<T>(
    String name,
    Storage storage,
    String meaning,
    Function<Object, T> read,
    Function<T, Object> write) {

  /** How a value lies in the journal (JSON) and in the tables. */
  public enum Storage {
    TEXT,
    NUMBER,
    INTEGER,
    FLAG,
    /** The id of another record. */
    REFERENCE,
    /** A list of texts or of objects, JSON in the tables. */
    LIST;

    /** True when a JSON value has this form. */
    public boolean accepts(Object value) {
      return switch (this) {
        case TEXT, REFERENCE -> value instanceof String;
        case NUMBER -> value instanceof Number number && Double.isFinite(number.doubleValue());
        case INTEGER ->
            value instanceof Number number && number.doubleValue() == number.longValue();
        case FLAG -> value instanceof Boolean;
        case LIST -> value instanceof List<?>;
      };
    }
  }

  /** A column of text. */
  public static Column<String> text(String name, String meaning) {
    return new Column<>(name, Storage.TEXT, meaning, String.class::cast, text -> text);
  }

  /** A column of numbers that become a quantity. */
  public static <T> Column<T> quantity(
      String name, String meaning, Function<Double, T> of, Function<T, Double> in) {
    return new Column<>(
        name,
        Storage.NUMBER,
        meaning,
        value -> of.apply(((Number) value).doubleValue()),
        in::apply);
  }

  /** A column of plain numbers without a dimension. */
  public static Column<Double> number(String name, String meaning) {
    return quantity(name, meaning, value -> value, value -> value);
  }

  /** A column of whole numbers. */
  public static Column<Integer> integer(String name, String meaning) {
    return new Column<>(
        name,
        Storage.INTEGER,
        meaning,
        value -> Math.toIntExact(((Number) value).longValue()),
        Integer::longValue);
  }

  /** A column of yes and no. */
  public static Column<Boolean> flag(String name, String meaning) {
    return new Column<>(name, Storage.FLAG, meaning, Boolean.class::cast, flag -> flag);
  }

  /** A column that names another record. */
  public static Column<RecordId> reference(String name, String meaning) {
    return new Column<>(
        name, Storage.REFERENCE, meaning, value -> new RecordId((String) value), RecordId::text);
  }

  /** A column of one word out of a closed family, stored by its code. */
  public static <T> Column<T> word(
      String name, String meaning, Function<String, Optional<T>> of, Function<T, String> in) {
    return new Column<>(
        name,
        Storage.TEXT,
        meaning,
        value ->
            of.apply((String) value)
                .orElseThrow(() -> new IllegalArgumentException("no such word: " + value)),
        in::apply);
  }

  /** A column of moments. */
  public static Column<Instant> instant(String name, String meaning) {
    return new Column<>(
        name, Storage.TEXT, meaning, value -> Instant.parse((String) value), Instant::toString);
  }

  /** A column of dates. */
  public static Column<LocalDate> date(String name, String meaning) {
    return new Column<>(
        name, Storage.TEXT, meaning, value -> LocalDate.parse((String) value), LocalDate::toString);
  }

  /** A column of a list whose items are JSON objects. */
  public static <T> Column<List<T>> list(
      String name, String meaning, Function<Map<?, ?>, T> of, Function<T, Map<String, Object>> in) {
    return new Column<>(
        name,
        Storage.LIST,
        meaning,
        value -> ((List<?>) value).stream().map(item -> of.apply((Map<?, ?>) item)).toList(),
        items -> items.stream().map(in).toList());
  }

  /** A column of a list of texts. */
  public static Column<List<String>> texts(String name, String meaning) {
    return new Column<>(
        name,
        Storage.LIST,
        meaning,
        value -> ((List<?>) value).stream().map(String.class::cast).toList(),
        items -> List.copyOf(items));
  }
}
