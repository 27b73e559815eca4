package padside.flight;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.units.TimeSpan;

/** A misfire: the key was pressed and the motor did not light. A card may see several. */
public record Attempt(RecordId id, Facts facts) {
  public static final Column<RecordId> FLIGHT = Column.reference("flight", "the card it was for");
  public static final Column<Instant> AT =
      Column.instant("at", "when it was told, ISO 8601 in UTC, by the machine's clock");
  public static final Column<TimeSpan> UP =
      Column.quantity(
          "up_s",
          "when it was told, seconds since the machine was started",
          TimeSpan::new,
          TimeSpan::seconds);
  public static final Column<String> BOOT =
      Column.text("boot", "that start of the machine, as its operating system names it");
  public static final Column<String> IGNITER = Column.text("igniter", "the igniter used");
  public static final Column<String> CAUSE =
      Column.text("cause", "why it did not light; a word of the outcome table or own words");
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  static final List<Column<?>> COLUMNS = List.of(FLIGHT, AT, UP, BOOT, IGNITER, CAUSE, NOTE);

  public Optional<RecordId> flight() {
    return facts.get(FLIGHT);
  }
}
