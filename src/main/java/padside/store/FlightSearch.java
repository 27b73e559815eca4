package padside.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.RecordId;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.OutcomeTable;
import padside.search.Found;
import padside.search.Search;
import padside.search.Search.Filter;

/**
 * Finds flights by going through a narrow table from the newest on, which ends where a page is
 * full; counting the others goes through the rest. Names are compared before: a flight is found by
 * the numbers of those that fit.
 */
final class FlightSearch {
  private static final String NEWEST_FIRST =
      " ORDER BY t DESC, run DESC, part DESC, flight DESC LIMIT ?";

  private static final String NAME =
      "SELECT (SELECT name FROM find_name WHERE id = flight) FROM find_flight";

  private final Database database;
  private final SearchNames names;
  private Optional<SearchRows> rows = Optional.empty();

  FlightSearch(Database database) {
    this.database = database;
    this.names = new SearchNames(database);
  }

  /** A condition of SQL with its values. */
  private record Condition(String sql, List<Object> values) {
    private static final Condition NEVER = new Condition("0", List.of());

    static Condition says(String column, String word) {
      return new Condition("instr(" + column + ", ?) > 0", List.of(word));
    }

    /** The column is one of these; never where there are none. */
    static Condition in(String column, String ids) {
      return ids.isEmpty() ? NEVER : new Condition(column + " IN (" + ids + ")", List.of());
    }

    static Condition any(List<Condition> some) {
      return joined(some.stream().filter(each -> !each.equals(NEVER)).toList(), " OR ", NEVER);
    }

    static Condition all(List<Condition> some) {
      return joined(some, " AND ", new Condition("1", List.of()));
    }

    private static Condition joined(List<Condition> some, String by, Condition none) {
      return some.isEmpty()
          ? none
          : new Condition(
              some.stream().map(each -> "(" + each.sql + ")").collect(Collectors.joining(by)),
              some.stream().flatMap(each -> each.values.stream()).toList());
    }

    Object[] with(Object... more) {
      return Stream.concat(values.stream(), Stream.of(more)).toArray();
    }
  }

  /** Takes up a part of what was not looked through yet; false where nothing was. */
  boolean more(OutcomeTable outcomes) throws SQLException {
    return rows(outcomes).more();
  }

  private SearchRows rows(OutcomeTable outcomes) {
    if (rows.filter(each -> each.areIn(outcomes)).isEmpty()) {
      rows = Optional.of(new SearchRows(database, outcomes));
    }
    return rows.get();
  }

  Found<Stored> find(Search search, OutcomeTable outcomes, int most) throws SQLException {
    names.refresh();
    Condition condition = condition(search);
    String where = " WHERE " + condition.sql;
    List<String> page =
        database.once(row -> row.getString(1), NAME + where + NEWEST_FIRST, condition.with(most));
    int count =
        page.size() < most
            ? page.size()
            : database
                .once(
                    row -> row.getInt(1),
                    "SELECT count(*) FROM find_flight" + where,
                    condition.with())
                .get(0);
    List<Stored> newest = new ArrayList<>();
    for (String name : page) {
      new Records(database).find(Kind.FLIGHT, new RecordId(name)).ifPresent(newest::add);
    }
    return new Found<>(newest, count, rows(outcomes).areWhole());
  }

  private Condition condition(Search search) {
    List<Condition> all = new ArrayList<>();
    search.filters().forEach(filter -> all.add(filter(filter)));
    // First those that are no names: fewer flights have them, and they are soon looked for.
    search.words().stream()
        .sorted(Comparator.comparing(names::called))
        .forEach(word -> all.add(word(word)));
    if (search.open()) {
      all.add(new Condition("flight IN (SELECT flight FROM find_note WHERE open = 1)", List.of()));
    }
    return Condition.all(all);
  }

  private Condition word(String word) {
    List<Condition> any =
        new ArrayList<>(
            List.of(
                Condition.says("text", word),
                Condition.says("outcome", word),
                Condition.says("motor", word)));
    Predicate<SearchNames.Name> says = name -> name.says(word);
    any.add(Condition.in("rocket", names.ids(Kind.ROCKET, says)));
    any.add(Condition.in("day", names.ids(Kind.DAY, says)));
    any.addAll(lots(says));
    any.add(Condition.in("device", names.ids(Kind.DEVICE, says)));
    any.add(Condition.in("altimeter", names.ids(Kind.ALTIMETER, says)));
    any.add(
        new Condition(
            "flight IN (SELECT flight FROM find_note WHERE instr(text, ?) > 0)", List.of(word)));
    return Condition.any(any);
  }

  private List<Condition> lots(Predicate<SearchNames.Name> says) {
    String lots = names.ids(Kind.LOT, says);
    return List.of(Condition.in("lot", lots), Condition.in("booster_lot", lots));
  }

  private Condition filter(Filter filter) {
    return switch (filter.part()) {
      case ROCKET ->
          Condition.in("rocket", names.ids(Kind.ROCKET, name -> filter.passes(name.name())));
      case MOTOR -> Condition.says("motor", filter.value());
      case LOT ->
          Condition.any(lots(name -> filter.passes(name.name()) || filter.passes(name.more())));
      case FIELD -> Condition.in("day", names.ids(Kind.DAY, name -> filter.passes(name.more())));
      case OUTCOME -> Condition.says("outcome", filter.value());
      case ON, FROM, TO ->
          Condition.in(
              "day",
              names.ids(Kind.DAY, name -> !name.name().isEmpty() && filter.passes(name.name())));
    };
  }
}
