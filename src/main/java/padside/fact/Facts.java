package padside.fact;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The fields of one record by name, in the order they were given. Fields this version does not know
 * stay in and are passed on.
 */
public record Facts(Map<String, Cell> cells) {
  private static final Facts NONE = new Facts(Map.of());

  /**
   * One field: the value as JSON holds it (text, number, boolean, list, map) and the text the flier
   * typed. A value without typed text was computed; typed text without a value could not be read
   * and is kept as it stands; neither means the field was emptied.
   */
  public record Cell(Optional<Object> value, Optional<String> typed) {
    public static Cell of(Object value) {
      return new Cell(Optional.of(value), Optional.empty());
    }

    private static <T> Cell of(Column<T> column, T value) {
      return of(column.write().apply(value));
    }

    public static Cell of(Object value, String typed) {
      return new Cell(Optional.of(value), Optional.of(typed));
    }

    public static Cell unread(String typed) {
      return new Cell(Optional.empty(), Optional.of(typed));
    }

    public static Cell emptied() {
      return new Cell(Optional.empty(), Optional.empty());
    }
  }

  /** Gathers many cells, which {@link #with} would copy for each. */
  public static final class Gathering {
    private final Map<String, Cell> cells = new LinkedHashMap<>();

    public <T> Gathering with(Column<T> column, T value) {
      cells.put(column.name(), Cell.of(column, value));
      return this;
    }

    /** As {@link #with(Column, Object)} where there is a value. */
    public <T> Gathering with(Column<T> column, Optional<T> value) {
      return value.map(present -> with(column, present)).orElse(this);
    }

    public Facts facts() {
      return new Facts(cells);
    }
  }

  /** Keeps an own copy in the same order. */
  public Facts {
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }

  public static Facts none() {
    return NONE;
  }

  /** These columns emptied. */
  public static Facts emptied(Collection<? extends Column<?>> columns) {
    Map<String, Cell> cells = new LinkedHashMap<>();
    columns.forEach(column -> cells.put(column.name(), Cell.emptied()));
    return new Facts(cells);
  }

  /** Without the cells that were emptied. */
  public Facts filled() {
    Map<String, Cell> filled = new LinkedHashMap<>(cells);
    filled.values().removeIf(Cell.emptied()::equals);
    return new Facts(filled);
  }

  /** The value of a column, empty when absent or when what is stored cannot be one. */
  public <T> Optional<T> get(Column<T> column) {
    return value(column.name()).flatMap(value -> read(column, value));
  }

  /** The text typed for a column. */
  public Optional<String> typed(Column<?> column) {
    return Optional.ofNullable(cells.get(column.name())).flatMap(Cell::typed);
  }

  public <T> Facts with(Column<T> column, T value) {
    return with(column.name(), Cell.of(column, value));
  }

  /** As {@link #with(Column, Object)} where there is a value, unchanged where there is none. */
  public <T> Facts with(Column<T> column, Optional<T> value) {
    return value.map(present -> with(column, present)).orElse(this);
  }

  /** A value together with the text it was read from. */
  public <T> Facts with(Column<T> column, T value, String typed) {
    return with(column.name(), Cell.of(column.write().apply(value), typed));
  }

  public Facts with(String name, Cell cell) {
    Map<String, Cell> more = new LinkedHashMap<>(cells);
    more.put(name, cell);
    return new Facts(more);
  }

  /** These facts with the other's cells put over them. */
  public Facts with(Facts other) {
    Map<String, Cell> more = new LinkedHashMap<>(cells);
    more.putAll(other.cells);
    return new Facts(more);
  }

  public Facts without(String name) {
    Map<String, Cell> fewer = new LinkedHashMap<>(cells);
    fewer.remove(name);
    return new Facts(fewer);
  }

  /** The cells in which these facts differ from {@code before}. */
  public Facts changedSince(Facts before) {
    Map<String, Cell> changed = new LinkedHashMap<>(cells);
    changed.entrySet().removeIf(entry -> entry.getValue().equals(before.cells.get(entry.getKey())));
    return new Facts(changed);
  }

  public boolean isEmpty() {
    return cells.isEmpty();
  }

  private Optional<Object> value(String name) {
    return Optional.ofNullable(cells.get(name)).flatMap(Cell::value);
  }

  private static <T> Optional<T> read(Column<T> column, Object value) {
    if (!column.storage().accepts(value)) {
      return Optional.empty();
    }
    try {
      return Optional.of(column.read().apply(value));
    } catch (IllegalArgumentException | ClassCastException | NullPointerException e) {
      return Optional.empty(); // foreign data: kept in the log, unusable here
    }
  }
}
