package padside.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import padside.flight.Field.Hazard;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.UnitSystem;

class HazardsNotationTest {
  private static final long SEED = 20260503;
  private final HazardsNotation metric = new HazardsNotation(UnitSystem.METRIC);
  private final HazardsNotation feet = new HazardsNotation(UnitSystem.US);

  private static Hazard hazard(
      double bearing_deg, double distance_m, double radius_m, String name) {
    return new Hazard(new Bearing(bearing_deg), new Length(distance_m), new Length(radius_m), name);
  }

  @Test
  void hazards_are_bearing_distance_radius_and_what_they_are() {
    assertThat(metric.read("NE 60m 10m pond; 240 90 5 parked cars;S 30 m 2 m ").value())
        .contains(
            List.of(
                hazard(45, 60, 10, "pond"),
                hazard(240, 90, 5, "parked cars"),
                hazard(180, 30, 2, "")));
  }

  @ParameterizedTest
  @CsvSource({
    "NE 60 10 pond,60,10,pond",
    "NE 60ft 10ft pond,60,10,pond",
    "NE 60 ft 10 ft pond,60,10,pond",
    "NE 60 ft 6 in 10 ft pond,60.5,10,pond",
    "NE 60 ft 6 in pond,60,0.5,pond",
    "NE 60 1/2 pond,60,0.5,pond",
    "NE 1/2 mi 1 1/2 yd three trees,2640,4.5,three trees",
    "north east 60 10 m pond,60,32.808,pond",
    "NE 60 10 3 cars,60,10,3 cars",
    "NE 60' 10' mast of the power line,60,10,mast of the power line"
  })
  void two_lengths_are_told_apart(String typed, double distance, double radius, String name) {
    Hazard hazard = feet.read(typed).value().orElseThrow().get(0);

    assertThat(hazard.bearing()).isEqualTo(new Bearing(45));
    assertThat(hazard.distance().inFeet()).isCloseTo(distance, within(1e-3));
    assertThat(hazard.radius().inFeet()).isCloseTo(radius, within(1e-3));
    assertThat(hazard.name()).isEqualTo(name);
  }

  @Test
  void objections_name_the_faulty_hazard_with_an_example() {
    assertThat(feet.read("N 300ft 20ft; pond 60ft 10ft").objection())
        .contains(
            "Hazard 2, \"pond 60ft 10ft\", does not begin with a bearing; type it like NE 200ft"
                + " 30ft pond.");
    assertThat(metric.read("N 60m pond").objection())
        .contains(
            "Hazard 1, \"N 60m pond\", has no radius behind the distance; type it like NE 60m 10m"
                + " pond.");
    assertThat(metric.read("N pond").objection().orElseThrow())
        .startsWith("Hazard 1, \"N pond\", has no distance behind the bearing");
    assertThat(metric.read("N").value()).isEmpty();
    assertThat(metric.read("N 60m -10m pond").value()).isEmpty();
    assertThat(metric.read(" ; ").objection())
        .contains("No hazard is named; type them like NE 60m 10m pond; 240 90m 5m mast.");
    assertThat(metric.read(metric.example()).value().orElseThrow()).hasSize(2);
    assertThat(feet.read(feet.example()).value().orElseThrow()).hasSize(2);
  }

  @ParameterizedTest
  @EnumSource
  void what_is_shown_reads_as_the_same_hazards(UnitSystem system) {
    HazardsNotation notation = new HazardsNotation(system);
    Random random = new Random(SEED);
    List<String> names = List.of("", "pond", "m road", "parked cars", "fence, low", "W wood");
    for (int i = 0; i < 300; i++) {
      List<Hazard> hazards = new ArrayList<>();
      for (int count = 1 + random.nextInt(6); count > 0; count--) {
        double bearing_deg = random.nextBoolean() ? 22.5 * random.nextInt(16) : random.nextInt(360);
        String name = names.get(random.nextInt(names.size()));
        hazards.add(hazard(bearing_deg, random.nextInt(500), random.nextInt(40), name));
      }
      String shown = notation.show(hazards);
      List<Hazard> again =
          notation.read(shown).value().orElseThrow(() -> new AssertionError(shown));
      assertThat(notation.show(again)).as("seed %s", SEED).isEqualTo(shown);
      assertThat(again).as(shown).extracting(Hazard::name).isEqualTo(names(hazards));
    }
  }

  private static List<String> names(List<Hazard> hazards) {
    return hazards.stream().map(Hazard::name).toList();
  }
}
