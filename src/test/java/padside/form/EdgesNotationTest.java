package padside.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import padside.flight.Field.Edge;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.UnitSystem;

class EdgesNotationTest {
  private static final long SEED = 20260502;
  private final EdgesNotation feet = new EdgesNotation(UnitSystem.US);

  private List<Edge> read(String typed) {
    return feet.read(typed).value().orElseThrow(() -> new AssertionError(typed));
  }

  private static Edge edge(double bearing_deg, Length distance, String name, String beyond) {
    return new Edge(new Bearing(bearing_deg), distance, name, beyond);
  }

  @Test
  void edges_are_bearing_distance_name_and_what_lies_beyond() {
    assertThat(read("N 300ft lane > road; NE 280ft;E 450 ft  old barn>trees "))
        .containsExactly(
            edge(0, Length.ofFeet(300), "lane", "road"),
            edge(45, Length.ofFeet(280), "", ""),
            edge(90, Length.ofFeet(450), "old barn", "trees"));
  }

  @ParameterizedTest
  @CsvSource({
    "240 300,240,300",
    "240 120 paces,240,300",
    "sw 50p fence,225,125",
    "240° WSW 100yd,240,300",
    "240 deg 300',240,300",
    "south west 300 ft,225,300",
    "north north east 300 ft,22.5,300",
    "s-w 1/2 mi,225,2640",
    "sw 1 1/2 mi fence,225,7920",
    "sw 300 ft 6 in,225,300.5",
    "sw 300 meadow,225,300",
    "90 120,90,120"
  })
  void bearings_and_distances_are_read_as_everywhere(String typed, double degrees, double feet) {
    Edge edge = read(typed).get(0);
    assertThat(edge.bearing()).isEqualTo(new Bearing(degrees));
    assertThat(edge.distance().inFeet())
        .isCloseTo(feet, org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void a_bare_number_is_in_the_unit_shown() {
    assertThat(new EdgesNotation(UnitSystem.METRIC).read("N 90").value().orElseThrow())
        .containsExactly(edge(0, new Length(90), "", ""));
    assertThat(read("N 90")).containsExactly(edge(0, Length.ofFeet(90), "", ""));
  }

  @Test
  void objections_name_the_faulty_edge_with_an_example() {
    assertThat(feet.read("N 300ft; lane 280ft").objection())
        .contains(
            "Edge 2, \"lane 280ft\", does not begin with a bearing; type it like NE 300ft lane >"
                + " road.");
    assertThat(feet.read("N lane > road").objection().orElseThrow())
        .startsWith("Edge 1, \"N lane > road\", has no distance behind the bearing");
    assertThat(feet.read("N").value()).isEmpty();
    assertThat(feet.read("N -300ft").value()).isEmpty();
    assertThat(feet.read("400 300ft").value()).isEmpty();
    assertThat(feet.read("> road").value()).isEmpty();
    assertThat(feet.read(" ; ").objection())
        .contains("No edge is named; type them like N 300ft lane > road; NE 300ft.");
    assertThat(feet.read("N 300ft;").value().orElseThrow()).hasSize(1);
    assertThat(feet.read(feet.example()).value()).isPresent();
  }

  @ParameterizedTest
  @EnumSource
  void what_is_shown_reads_as_the_same_edges(UnitSystem system) {
    EdgesNotation notation = new EdgesNotation(system);
    Random random = new Random(SEED);
    List<String> names = List.of("", "lane", "m road", "old barn", "fence, low", "W wood");
    for (int i = 0; i < 300; i++) {
      List<Edge> edges = new ArrayList<>();
      for (int count = 1 + random.nextInt(6); count > 0; count--) {
        double bearing_deg = random.nextBoolean() ? 22.5 * random.nextInt(16) : random.nextInt(360);
        String name = names.get(random.nextInt(names.size()));
        String beyond = names.get(random.nextInt(names.size()));
        edges.add(edge(bearing_deg, new Length(random.nextInt(500)), name, beyond));
      }
      String shown = notation.show(edges);
      List<Edge> again = notation.read(shown).value().orElseThrow(() -> new AssertionError(shown));
      assertThat(notation.show(again)).as("seed %s", SEED).isEqualTo(shown);
      assertThat(again)
          .as(shown)
          .extracting(Edge::name, Edge::beyond, Edge::bearing)
          .isEqualTo(
              edges.stream()
                  .map(e -> org.assertj.core.groups.Tuple.tuple(e.name(), e.beyond(), e.bearing()))
                  .toList());
    }
  }
}
