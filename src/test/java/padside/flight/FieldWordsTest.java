package padside.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static padside.units.UnitSystem.METRIC;
import static padside.units.UnitSystem.US;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.motor.MotorType;
import padside.units.Bearing;
import padside.units.Length;

/** What bounds a landing, in words, and what fits a mount. */
class FieldWordsTest {
  private static final Bearing NORTH_EAST = new Bearing(45);

  @Test
  void an_edge_is_named_by_where_it_lies_and_whole_by_all_that_is_known() {
    Field.Edge lane = new Field.Edge(NORTH_EAST, Length.ofFeet(280), "lane", "road");
    Field.Edge plain = new Field.Edge(NORTH_EAST, Length.ofFeet(280), "", "");

    assertThat(lane.words(US)).isEqualTo("field edge NE 280 ft");
    assertThat(lane.whole(US)).isEqualTo("lane NE 280 ft (road)");
    assertThat(plain.whole(METRIC)).isEqualTo("field edge NE 85 m");
  }

  @Test
  void a_hazard_is_named_by_its_name_and_its_middle() {
    Length far = Length.ofFeet(120);

    assertThat(new Field.Hazard(NORTH_EAST, far, new Length(9), "pond").words(US))
        .isEqualTo("pond NE 120 ft");
    assertThat(new Field.Hazard(NORTH_EAST, far, new Length(9), "").whole(US))
        .isEqualTo("hazard NE 120 ft");
  }

  @Test
  void a_motor_meets_a_mount_with_half_a_millimetre_of_play() {
    assertThat(fit(18, 18.4)).isEqualTo(MotorType.Fit.SNUG);
    assertThat(fit(18, 17.6)).isEqualTo(MotorType.Fit.SNUG);
    assertThat(fit(18, 17.4)).isEqualTo(MotorType.Fit.TOO_WIDE);
    assertThat(fit(18, 24)).isEqualTo(MotorType.Fit.WITH_ADAPTER);
    assertThat(new MotorType(new RecordId("t.1"), Facts.none()).fit(Optional.of(new Length(0.018))))
        .isEqualTo(MotorType.Fit.SNUG);
  }

  private static MotorType.Fit fit(double motorMm, double mountMm) {
    Facts facts = Facts.none().with(MotorType.DIAMETER, Length.ofMillimetres(motorMm));
    return new MotorType(new RecordId("t.1"), facts)
        .fit(Optional.of(Length.ofMillimetres(mountMm)));
  }
}
