package padside.flight;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;

/** Something to mend on a rocket. Open fixes come back in its checks until they are done. */
public record Fix(RecordId id, Facts facts) {
  /** How much it matters. */
  public enum Severity {
    /** Look at it before the next flight. */
    LOOK_AT("look at"),
    /** The rocket does not fly until it is mended. */
    GROUNDS_IT("grounds it");

    private final String words;

    Severity(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Severity> find(String code) {
      return List.of(values()).stream().filter(value -> value.code().equals(code)).findFirst();
    }
  }

  public static final Column<RecordId> ROCKET = Column.reference("rocket", "what is to be mended");
  public static final Column<String> TEXT = Column.text("text", "what is to be done");
  public static final Column<Severity> SEVERITY =
      Column.word("severity", "look_at or grounds_it", Severity::find, Severity::code);
  public static final Column<RecordId> FLIGHT =
      Column.reference("flight", "the flight after which it was raised");
  public static final Column<Boolean> DONE = Column.flag("done", "it has been mended");
  public static final Column<String> DONE_NOTE = Column.text("done_note", "what was done");

  public static final Column<LocalDate> DONE_ON =
      Column.date("done_on", "local date it was mended, ISO 8601");

  static final List<Column<?>> COLUMNS =
      List.of(ROCKET, TEXT, SEVERITY, FLIGHT, DONE, DONE_NOTE, DONE_ON);

  public Optional<RecordId> rocket() {
    return facts.get(ROCKET);
  }

  public String text() {
    return facts.get(TEXT).orElse("something to mend");
  }

  public Severity severity() {
    return facts.get(SEVERITY).orElse(Severity.LOOK_AT);
  }

  /** {@code grounds it: reglue fin 2}. */
  public String words() {
    return severity().words() + ": " + text();
  }

  public boolean open() {
    return !facts.get(DONE).orElse(false);
  }
}
