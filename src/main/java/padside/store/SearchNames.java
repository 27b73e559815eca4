package padside.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.flight.Kind;
import padside.search.Folding;

/**
 * What those records are called that flights name: some thousands in the largest log, read anew
 * when an operation has come. So a rocket is found by the name it has now.
 */
final class SearchNames {
  /** Removed ones too: the flights are still theirs. */
  private static final String SQL =
      """
      SELECT find_name.id, record.kind,
        coalesce(record.doc ->> '$.name.v', record.doc ->> '$.code.v', record.doc ->> '$.date.v'),
        record.doc ->> '$.date_code.v', field.doc ->> '$.name.v'
      FROM record JOIN find_name ON find_name.name = record.name
        LEFT JOIN record AS field ON record.kind = 'day'
          AND field.name = record.doc ->> '$.field.v' AND field.kind = 'field'
      WHERE record.kind IN ('rocket', 'lot', 'day', 'device', 'altimeter')""";

  private final Database database;
  private List<Name> names = List.of();
  private Optional<List<Long>> asOf = Optional.empty();

  /**
   * What one record is called.
   *
   * @param name of a day its date
   * @param more the date code of a lot, the field of a day; empty where there is none
   */
  record Name(long id, String kind, String name, String more) {
    boolean isOf(Kind wanted) {
      return kind.equals(wanted.code());
    }

    boolean says(String word) {
      return name.contains(word) || more.contains(word);
    }
  }

  SearchNames(Database database) {
    this.database = database;
  }

  /** Reads them anew where something has changed. */
  void refresh() throws SQLException {
    List<Long> now =
        List.of(
            database.number("SELECT max(rowid) FROM op"),
            database.number("SELECT max(id) FROM find_name"));
    if (!asOf.equals(Optional.of(now))) {
      names = database.list(SearchNames::name, SQL);
      asOf = Optional.of(now);
    }
  }

  private static Name name(ResultSet row) throws SQLException {
    return new Name(row.getLong(1), row.getString(2), text(row, 3), text(row, 4) + text(row, 5));
  }

  private static String text(ResultSet row, int column) throws SQLException {
    return Folding.of(Optional.ofNullable(row.getString(column)).orElse(""));
  }

  /** The ids of those a condition holds of, for a list in SQL; empty where there is none. */
  String ids(Kind kind, Predicate<Name> condition) {
    return of(kind)
        .filter(condition)
        .map(each -> String.valueOf(each.id()))
        .collect(Collectors.joining(","));
  }

  /** How many are called so. */
  long called(String word) {
    return names.stream().filter(name -> name.says(word)).count();
  }

  private Stream<Name> of(Kind kind) {
    return names.stream().filter(name -> name.isOf(kind));
  }
}
