package padside.flight;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;

/** One date at one field. */
public record Day(RecordId id, Facts facts) {
  public static final Column<LocalDate> DATE = Column.date("date", "local date, ISO 8601");
  public static final Column<RecordId> FIELD = Column.reference("field", "where it is flown");
  public static final Column<Boolean> PERMISSION =
      Column.flag("permission", "the owner of the land has allowed it");
  public static final Column<Boolean> FIRE_BAN = Column.flag("fire_ban", "a fire ban is in force");
  public static final Column<Integer> PADS =
      Column.integer("pads", "how many pads stand in a row, up to 12; one where none is told");
  public static final Column<List<String>> PACKED =
      Column.texts("packed", "what of the packing list is packed, by its key");
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  /** The most pads in a row. */
  public static final int MOST_PADS = 12;

  static final List<Column<?>> COLUMNS =
      List.of(DATE, FIELD, PERMISSION, FIRE_BAN, PADS, PACKED, NOTE);

  public Optional<LocalDate> date() {
    return facts.get(DATE);
  }

  public Optional<RecordId> field() {
    return facts.get(FIELD);
  }

  /** How many pads stand in a row: 1 where nobody told. */
  public int pads() {
    return Math.max(1, Math.min(MOST_PADS, facts.get(PADS).orElse(1)));
  }

  /** What of the packing list is packed, by its key. */
  public List<String> packed() {
    return facts.get(PACKED).orElse(List.of());
  }

  public Optional<Boolean> permission() {
    return facts.get(PERMISSION);
  }

  public Optional<Boolean> fireBan() {
    return facts.get(FIRE_BAN);
  }
}
