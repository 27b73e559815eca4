package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Facts.Cell;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Field;
import padside.flight.Fix;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.units.Bearing;
import padside.units.Length;

/** The log read with plain SQL, as a person with any SQLite tool would. */
class KindViewsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void every_kind_has_a_view_with_its_columns(Kind kind) throws Exception {
    open().close();

    assertThat(
            LogState.rows(
                folder, "SELECT name FROM pragma_table_info('" + kind.code() + "') ORDER BY cid"))
        .containsExactlyElementsOf(
            Stream.concat(Stream.of("id"), kind.columns().stream().map(Column::name)).toList());
  }

  @Test
  void values_have_the_type_sql_knows_them_by() throws Exception {
    Facts field =
        Facts.none()
            .with(Field.NAME, "Long Meadow")
            .with(Field.ELEVATION, new Length(120), "120 m")
            .with(
                Field.EDGES,
                List.of(new Field.Edge(new Bearing(35), new Length(85.5), "lane", "road")));
    save(Kind.FIELD, field);
    save(Kind.LOT, Facts.none().with(Lot.BOUGHT, 3));
    save(Kind.FIX, Facts.none().with(Fix.DONE, true).with(Fix.ROCKET, new RecordId("x.1")));

    assertThat(
            LogState.rows(
                folder,
                "SELECT name, elevation_m, typeof(elevation_m), edges ->> '$[0].distance_m',"
                    + " typeof(latitude_deg) FROM field"))
        .containsExactly("Long Meadow|120.0|real|85.5|null");
    assertThat(LogState.rows(folder, "SELECT bought + 1, typeof(bought) FROM lot"))
        .containsExactly("4|integer");
    assertThat(LogState.rows(folder, "SELECT done, typeof(done), rocket FROM fix"))
        .containsExactly("1|integer|x.1");
  }

  @Test
  void a_value_of_the_wrong_form_shows_as_null_and_not_as_zero() throws Exception {
    save(
        Kind.FIELD,
        Facts.none().with("elevation_m", Cell.of("high")).with("name", Cell.of(List.of(1L))));

    assertThat(LogState.rows(folder, "SELECT elevation_m, name FROM field"))
        .containsExactly("null|null");
  }

  @Test
  void removed_records_are_left_out() throws Exception {
    RecordId lot = save(Kind.LOT, Facts.none().with(Lot.BOUGHT, 3));
    try (LogFolder log = open()) {
      log.save(Action.remove("", Kind.LOT, lot));
    }
    assertThat(LogState.rows(folder, "SELECT * FROM lot")).isEmpty();
  }

  @Test
  void views_of_another_version_give_way_to_those_of_this_one() throws Exception {
    open().close();
    LogState.tamper(
        folder,
        "DROP VIEW lot",
        "CREATE VIEW lot AS SELECT 1 AS one",
        "UPDATE meta SET value = 'of another version' WHERE key = 'views'");
    save(Kind.LOT, Facts.none().with(Lot.BOUGHT, 3));

    assertThat(LogState.rows(folder, "SELECT bought FROM lot")).containsExactly("3");
  }

  @Test
  void the_tables_say_what_each_column_is_for() throws SQLException, Fault {
    open().close();
    List<String> tables =
        LogState.rows(folder, "SELECT sql FROM sqlite_schema WHERE type = 'table'");

    assertThat(tables).hasSizeGreaterThan(5).allMatch(sql -> sql.contains("STRICT"));
    assertThat(tables.stream().flatMap(String::lines).filter(line -> line.startsWith("  ")))
        .filteredOn(line -> !line.contains("PRIMARY KEY ("))
        .allMatch(line -> line.contains("-- "));
  }

  private RecordId save(Kind kind, Facts facts) throws Fault {
    try (LogFolder log = open()) {
      return log.save(Action.create("", kind, facts)).get(0);
    }
  }

  private LogFolder open() throws Fault {
    return LogFolder.open(folder, new PretendMachine(++starts));
  }

  private long starts;
}
