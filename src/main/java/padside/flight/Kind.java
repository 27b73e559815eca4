package padside.flight;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.clock.Anchor;
import padside.fact.Column;
import padside.motor.MotorType;

/** The kinds of record the log keeps, each with its fields. */
public enum Kind {
  ROCKET(Rocket.COLUMNS),
  MOTOR(MotorType.COLUMNS),
  LOT(Lot.COLUMNS),
  DEVICE(RecoveryDevice.COLUMNS),
  ALTIMETER(Altimeter.COLUMNS),
  FIELD(Field.COLUMNS),
  DAY(Day.COLUMNS),
  WEATHER(Weather.COLUMNS),
  FLIGHT(Flight.COLUMNS),
  FIX(Fix.COLUMNS),
  ATTEMPT(Attempt.COLUMNS),
  SIGHTING(Sighting.COLUMNS),
  CHECKLINE(CheckLine.COLUMNS),
  CLOCK(Anchor.COLUMNS);

  /** On every kind: marked as removed. Nothing is ever taken out of the log. */
  public static final Column<Boolean> REMOVED = Column.flag("removed", "marked as removed");

  @SuppressWarnings("ImmutableEnumChecker") // List.copyOf of immutable columns
  private final List<Column<?>> columns;

  Kind(List<Column<?>> columns) {
    this.columns = List.copyOf(columns);
  }

  /** Its fields in the order they are shown and exported. */
  public List<Column<?>> columns() {
    return columns;
  }

  /** Its name in journal, tables and commands. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Kind> find(String code) {
    return List.of(values()).stream().filter(kind -> kind.code().equals(code)).findFirst();
  }

  /** The column of that name, {@link #REMOVED} included. */
  public Optional<Column<?>> column(String name) {
    if (name.equals(REMOVED.name())) {
      return Optional.of(REMOVED);
    }
    return columns.stream().filter(column -> column.name().equals(name)).findFirst();
  }
}
