package padside.flight;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;

/**
 * One line of the checklist at the pad: a standing one for every flight, or a rocket's own. Those
 * shipped with the program have a code; a record with that code stands in the shipped line's place.
 */
public record CheckLine(RecordId id, Facts facts) {
  /** When in the course of getting ready a line is read; lines of one part are ticked together. */
  public enum Part {
    /** The rocket, at the table. */
    ROCKET("rocket"),
    /** Rod, igniter, plug. */
    PAD("pad"),
    /** Sky, field, people. */
    RANGE("range"),
    /** Cap off, key in. */
    KEY("key");

    private final String words;

    Part(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Part> find(String code) {
      return List.of(values()).stream().filter(value -> value.code().equals(code)).findFirst();
    }
  }

  public static final Column<String> CODE =
      Column.text("code", "which shipped line it stands for; none on a line of one's own");
  public static final Column<String> TEXT = Column.text("text", "what is made sure of");
  public static final Column<Part> PART =
      Column.word("part", "rocket, pad, range or key", Part::find, Part::code);
  public static final Column<RecordId> ROCKET =
      Column.reference("rocket", "the rocket it is for; none means every flight");
  public static final Column<Boolean> DROPPED =
      Column.flag("dropped", "the shipped line is not wanted");

  static final List<Column<?>> COLUMNS = List.of(CODE, TEXT, PART, ROCKET, DROPPED);

  /** What a tick is kept under, the same for ever. */
  public String key() {
    return facts.get(CODE).orElse(id.text());
  }

  public String text() {
    return facts.get(TEXT).orElse("?");
  }

  public Part part() {
    return facts.get(PART).orElse(Part.ROCKET);
  }

  public Optional<RecordId> rocket() {
    return facts.get(ROCKET);
  }

  public boolean dropped() {
    return facts.get(DROPPED).orElse(false);
  }
}
