package padside.flight;

import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;

/** Motors of one designation bought from one production batch, as they lie in the range box. */
public record Lot(RecordId id, Facts facts) {
  public static final Column<String> MOTOR =
      Column.text("motor", "full designation with delay, such as C6-5");
  public static final Column<String> CODE =
      Column.text("code", "the batch or date code printed on the motor or the box");
  public static final Column<String> DATE_CODE =
      Column.text("date_code", "the maker's date code as printed on the case");
  public static final Column<Integer> BOUGHT = Column.integer("bought", "how many were bought");
  public static final Column<Integer> CORRECTION =
      Column.integer("correction", "added to the count after a look into the box; may be negative");
  public static final Column<String> BOUGHT_ON =
      Column.text("bought_on", "date bought, ISO 8601 where known");
  public static final Column<String> PLACE = Column.text("place", "where it is kept");
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  static final List<Column<?>> COLUMNS =
      List.of(MOTOR, CODE, DATE_CODE, BOUGHT, CORRECTION, BOUGHT_ON, PLACE, NOTE);

  public String motor() {
    return facts.get(MOTOR).orElse("?");
  }

  public String code() {
    return facts.get(CODE).orElse("no code");
  }

  /** The maker's date code, where it was told. */
  public Optional<String> dateCode() {
    return facts.get(DATE_CODE).map(String::strip).filter(code -> !code.isEmpty());
  }

  /** How many are left when {@code fired} of them were fired; absent when never counted. */
  public Optional<Integer> left(int fired) {
    return facts.get(BOUGHT).map(bought -> bought + facts.get(CORRECTION).orElse(0) - fired);
  }
}
