package padside.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;

class OutcomeTableTest {
  private final OutcomeTable shipped = shipped();

  private static OutcomeTable shipped() {
    try (var csv =
        new InputStreamReader(
            OutcomeTableTest.class.getResourceAsStream("/data/outcomes.csv"),
            StandardCharsets.UTF_8)) {
      return OutcomeTable.read(csv);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void every_aspect_is_a_column_of_a_flight_and_begins_with_its_one_nominal_outcome() {
    List<String> aspects =
        shipped.outcomes().stream()
            .map(OutcomeTable.Outcome::aspect)
            .distinct()
            .filter(aspect -> Kind.FLIGHT.column(aspect).isPresent())
            .toList();

    assertThat(aspects)
        .containsExactly("boost", "burn", "ejection", "recovery", "landing", "landed_on");
    assertThat(aspects)
        .allMatch(aspect -> shipped.of(aspect).get(0).mark() == OutcomeTable.Mark.NOMINAL);
  }

  @Test
  void other_words_are_those_of_misfires_and_of_how_parts_come_back() {
    assertThat(shipped.of(Attempt.CAUSE.name())).isNotEmpty();
    assertThat(shipped.of("part")).isNotEmpty();
    assertThat(shipped.of("state")).isNotEmpty();
  }

  @Test
  void a_flight_is_told_by_what_was_not_nominal() {
    Facts nominal = Facts.none().with(Flight.BURN, "nominal").with(Flight.LANDING, "soft");

    assertThat(shipped.told(Facts.none())).isEmpty();
    assertThat(shipped.told(nominal)).isEqualTo("nominal");
    assertThat(shipped.told(nominal.with(Flight.LANDED_ON, "tree").with(Flight.EJECTION, "late")))
        .isEqualTo("ejection late, landed on tree");
    assertThat(shipped.told(nominal.with(Flight.LANDED_ON, OutcomeTable.LOST))).isEqualTo("lost");
  }

  @Test
  void a_code_of_a_newer_version_is_told_as_it_is() {
    assertThat(shipped.words("burn", "sputtered")).isEqualTo("sputtered");
    assertThat(shipped.told(Facts.none().with(Flight.BURN, "sputtered")))
        .isEqualTo("burn sputtered");
    assertThat(shipped.find("burn", "sputtered")).isEqualTo(Optional.empty());
  }
}
