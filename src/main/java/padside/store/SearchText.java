package padside.store;

import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Attempt;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.OutcomeTable;
import padside.search.Folding;

/** What is told in words of a record, taken out of its row; folded, as it is looked for. */
final class SearchText {
  /** Between what fields say, so that no two of them together say what is looked for. */
  private static final String BREAK = "\n";

  private static final int MOST_KEPT = 4000;
  private static final int FIRST_FIELD = 18;
  private static final int MOTOR = 14;

  private static final List<Column<?>> TEXTS =
      List.of(
          Flight.FLIER,
          Flight.NOTE,
          Flight.REASON,
          Flight.AGAINST,
          Flight.WENT_ON,
          Flight.DAMAGE,
          Flight.TO_MEND,
          Flight.VERDICT,
          Fix.TEXT,
          Fix.DONE_NOTE,
          Attempt.IGNITER);

  /** Everything that is read of a record; a text that could not be read as it was typed. */
  static final String SELECT =
      """
      SELECT id, name, kind, removed, t, run, part, rocket, day, lot, booster_lot, device, altimeter,
        motor, doc ->> '$.motor.y', doc ->> '$.flight.v', coalesce(doc ->> '$.done.v', 0)\
      """
          + Stream.concat(Flight.ASPECTS.stream(), Stream.of(Flight.STATUS))
              .map(column -> ", doc ->> '$." + column.name() + ".v'")
              .collect(Collectors.joining())
          + TEXTS.stream().map(SearchText::shown).collect(Collectors.joining())
          + shown(Attempt.CAUSE)
          + Stream.of(Flight.UNTICKED, Flight.CONDITION)
              .map(column -> ", doc -> '$." + column.name() + ".v'")
              .collect(Collectors.joining())
          + " FROM record";

  private final OutcomeTable outcomes;
  private final Map<List<String>, String> told = new HashMap<>();

  SearchText(OutcomeTable outcomes) {
    this.outcomes = outcomes;
  }

  private static String shown(Column<?> column) {
    return ", coalesce(doc ->> '$.%1$s.v', doc ->> '$.%1$s.y')".formatted(column.name());
  }

  /** What came of a flight in all words there are for it. */
  String outcome(ResultSet row) throws SQLException {
    List<String> codes = new ArrayList<>();
    for (int i = 0; i <= Flight.ASPECTS.size(); i++) {
      codes.add(Optional.ofNullable(row.getString(FIRST_FIELD + i)).orElse(""));
    }
    if (told.size() > MOST_KEPT) {
      told.clear();
    }
    return told.computeIfAbsent(codes, this::outcome);
  }

  private String outcome(List<String> codes) {
    Map<String, Facts.Cell> cells = new LinkedHashMap<>();
    IntStream.range(0, Flight.ASPECTS.size())
        .filter(i -> !codes.get(i).isEmpty())
        .forEach(i -> cells.put(Flight.ASPECTS.get(i).name(), Facts.Cell.of(codes.get(i))));
    cells.put(Flight.STATUS.name(), Facts.Cell.of(codes.get(Flight.ASPECTS.size())));
    return Folding.of(outcomes.everyWord(new Flight(new RecordId("any"), new Facts(cells))));
  }

  /** Its motors; how they were typed where that is otherwise, too. */
  static String motor(ResultSet row) throws SQLException {
    return Stream.of(row.getString(MOTOR), row.getString(MOTOR + 1))
        .filter(Objects::nonNull)
        .map(Folding::of)
        .distinct()
        .collect(Collectors.joining(BREAK));
  }

  /** Whatever else is told of it. */
  String text(ResultSet row) throws SQLException {
    int field = FIRST_FIELD + Flight.ASPECTS.size() + 1;
    List<String> said = new ArrayList<>();
    for (int i = 0; i < TEXTS.size(); i++) {
      Optional.ofNullable(row.getString(field + i)).ifPresent(said::add);
    }
    field += TEXTS.size();
    Optional.ofNullable(row.getString(field))
        .map(cause -> outcomes.words(Attempt.CAUSE.name(), cause))
        .ifPresent(said::add);
    said.addAll(items(row.getString(field + 1)));
    said.addAll(items(row.getString(field + 2)));
    return said.stream().map(Folding::of).collect(Collectors.joining(BREAK));
  }

  /** The texts of a list; of a part and its state the words. */
  private List<String> items(String json) throws SQLException {
    if (json == null) {
      return List.of();
    }
    try {
      return Json.read(json) instanceof List<?> list
          ? list.stream().map(this::item).toList()
          : List.of();
    } catch (IOException e) {
      throw new SQLException("a list that is no JSON", e);
    }
  }

  private String item(Object item) {
    return item instanceof Map<?, ?> parts
        ? Stream.of("part", "state")
            .map(aspect -> outcomes.words(aspect, String.valueOf(parts.get(aspect))))
            .collect(Collectors.joining(" "))
        : String.valueOf(item);
  }
}
