package padside.flight;

import java.util.List;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;

/** An altimeter that moves from rocket to rocket. */
public record Altimeter(RecordId id, Facts facts) {
  public static final Column<String> NAME = Column.text("name", "what its owner calls it");
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  static final List<Column<?>> COLUMNS = List.of(NAME, NOTE);

  public String name() {
    return facts.get(NAME).orElse("unnamed altimeter");
  }
}
