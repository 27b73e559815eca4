package padside.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import padside.fact.Column;

class KindTest {
  @ParameterizedTest
  @EnumSource
  void columns_are_named_once_and_without_blanks(Kind kind) {
    List<String> names = kind.columns().stream().map(Column::name).map(String::valueOf).toList();

    assertThat(names).doesNotHaveDuplicates().allMatch(name -> name.matches("[a-z_]+"));
    assertThat(names).doesNotContain(Kind.REMOVED.name(), "id");
  }

  @ParameterizedTest
  @EnumSource
  void numbers_carry_their_unit_in_the_name(Kind kind) {
    assertThat(kind.columns())
        .filteredOn(column -> column.storage() == Column.Storage.NUMBER)
        .extracting(Column::name)
        .allMatch(
            name ->
                name.matches(
                    ".*_(m|kg|mps|ns|n|s|k|pa|deg|share)|(predicted_)?drag_coefficient|relative_humidity"));
  }
}
