package padside.form;

import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Weather;
import padside.units.Wind;

/** Where a form field's value lies among a record's facts: one column, or several read as one. */
public interface Place<T> {
  /** A name unlike that of any other field of the form. */
  String name();

  Optional<T> get(Facts facts);

  /** The text it was typed as. */
  Optional<String> typed(Facts facts);

  /** Of a record's facts the cells that lie here. */
  Facts part(Facts facts);

  /** The facts of a value read from a typed text. */
  Facts put(T value, String typed);

  /** The facts of a text that could not be read, or of an emptied field when the text is blank. */
  Facts put(String unread);

  /** A single column, value and typed text in one cell. */
  static <T> Place<T> of(Column<T> column) {
    return new ColumnPlace<>(column, true);
  }

  /** A single column whose typed text means nothing by itself, as with a choice from a list. */
  static <T> Place<T> chosen(Column<T> column) {
    return new ColumnPlace<>(column, false);
  }

  /** The wind columns of a weather reading or of a flight. */
  static Place<Wind> wind() {
    return new WindPlace();
  }

  /** One cell. */
  record ColumnPlace<T>(Column<T> column, boolean keepsTyped) implements Place<T> {
    @Override
    public String name() {
      return column.name();
    }

    @Override
    public Optional<T> get(Facts facts) {
      return facts.get(column);
    }

    @Override
    public Optional<String> typed(Facts facts) {
      return facts.typed(column);
    }

    @Override
    public Facts part(Facts facts) {
      return cells(facts, List.of(column));
    }

    @Override
    public Facts put(T value, String typed) {
      return keepsTyped
          ? Facts.none().with(column, value, typed)
          : Facts.none().with(column, value);
    }

    @Override
    public Facts put(String unread) {
      return Facts.none().with(column.name(), cell(unread));
    }
  }

  /** Mean, gust and direction, the text kept with the mean. */
  record WindPlace() implements Place<Wind> {
    @Override
    public String name() {
      return "wind";
    }

    @Override
    public Optional<Wind> get(Facts facts) {
      return Weather.windIn(facts);
    }

    @Override
    public Optional<String> typed(Facts facts) {
      return facts.typed(Weather.WIND_MEAN);
    }

    @Override
    public Facts part(Facts facts) {
      return cells(facts, List.of(Weather.WIND_MEAN, Weather.WIND_GUST, Weather.WIND_FROM));
    }

    @Override
    public Facts put(Wind wind, String typed) {
      return Weather.facts(wind, Optional.of(typed));
    }

    @Override
    public Facts put(String unread) {
      return Facts.none()
          .with(Weather.WIND_MEAN.name(), cell(unread))
          .with(Weather.WIND_GUST.name(), Facts.Cell.emptied())
          .with(Weather.WIND_FROM.name(), Facts.Cell.emptied());
    }
  }

  private static Facts cells(Facts facts, List<Column<?>> columns) {
    Facts part = Facts.none();
    for (Column<?> column : columns) {
      Facts.Cell cell = facts.cells().get(column.name());
      part = cell == null ? part : part.with(column.name(), cell);
    }
    return part;
  }

  private static Facts.Cell cell(String unread) {
    return unread.isBlank() ? Facts.Cell.emptied() : Facts.Cell.unread(unread);
  }
}
