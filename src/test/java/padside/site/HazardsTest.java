package padside.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.units.Bearing;
import padside.units.Length;

/** Circles on a field, worked by hand, and what a landing is lost to. */
class HazardsTest {
  private static final Field.Hazard POND = hazard(90, 60, 10, "pond");
  private static final Field.Hazard CARS = hazard(90, 65, 10, "parked cars");
  private static final Field.Edge LANE = edge(0, 100, "lane");
  private static final Field.Edge HEDGE = edge(180, 100, "hedge");

  private final FieldShape field = field(List.of(LANE, HEDGE), POND, CARS);

  @Test
  void a_landing_in_a_hazard_is_not_inside_the_field() {
    assertThat(field.contains(49.9, 0)).isTrue();
    assertThat(field.contains(50, 0)).as("on the rim").isFalse();
    assertThat(field.contains(60, 9.9)).isFalse();
    assertThat(field.contains(60, 10.1)).isTrue();
    assertThat(field.contains(new Landing(new Bearing(90), new Length(55)))).isFalse();
    assertThat(field.hazards()).containsExactly(POND, CARS);
  }

  @Test
  void what_a_landing_is_lost_to_is_named() {
    assertThat(field.lossAt(49.9, 0)).isEmpty();
    assertThat(field.lossAt(51, 0)).contains(new Loss.InHazard(POND));
    assertThat(field.lossAt(62, 0)).as("both hold it").contains(new Loss.InHazard(POND));
    assertThat(field.lossAt(74, 0)).contains(new Loss.InHazard(CARS));
    assertThat(field.lossAt(40, 95)).contains(new Loss.PastEdge(LANE));
    assertThat(field.lossAt(40, -95)).contains(new Loss.PastEdge(HEDGE));
  }

  @Test
  void past_the_only_edge_the_loss_is_that_edge_where_it_landed() {
    FieldShape round = field(List.of(LANE));

    assertThat(round.lossAt(-101, 0)).contains(new Loss.PastEdge(edge(270, 100, "lane")));
  }

  @Test
  void a_hazard_beyond_the_edge_leaves_the_loss_to_the_edge() {
    FieldShape round = field(List.of(LANE), hazard(0, 120, 30, "wood"));

    assertThat(round.lossAt(0, 95)).contains(new Loss.InHazard(hazard(0, 120, 30, "wood")));
    assertThat(round.lossAt(0, 110)).containsInstanceOf(Loss.PastEdge.class);
  }

  @Test
  void hazards_change_neither_reach_nor_size() {
    FieldShape plain = field(List.of(LANE, HEDGE));

    assertThat(field.reach(new Bearing(90))).isEqualTo(plain.reach(new Bearing(90)));
    assertThat(field.marginM(60, 0)).isEqualTo(plain.marginM(60, 0)).isEqualTo(40);
    assertThat(field.smallestSide()).isEqualTo(plain.smallestSide());
  }

  @Test
  void a_radius_below_nothing_takes_no_room() {
    FieldShape round = field(List.of(LANE), hazard(0, 30, -5, "slip"));

    assertThat(round.contains(0, 29)).isTrue();
  }

  @Test
  void hazards_alone_make_no_field() {
    Facts facts = Facts.none().with(Field.HAZARDS, List.of(POND));

    assertThat(FieldShape.of(new Field(new RecordId("f"), facts))).isEmpty();
  }

  @Test
  void a_loss_is_told_just_where_the_field_does_not_hold_the_landing() {
    Random random = new Random(31);
    for (int i = 0; i < 500; i++) {
      FieldShape any = any(random);
      for (int k = 0; k < 50; k++) {
        double eastM = 400 * random.nextDouble() - 200;
        double northM = 400 * random.nextDouble() - 200;
        assertThat(any.lossAt(eastM, northM).isEmpty())
            .as("seed 31, case %d: %s, %s", i, eastM, northM)
            .isEqualTo(any.contains(eastM, northM));
      }
    }
  }

  @Test
  void an_edge_that_comes_nearer_or_a_hazard_that_is_added_takes_no_landing_in() {
    Random random = new Random(32);
    for (int i = 0; i < 1000; i++) {
      FieldShape before = any(random);
      List<Field.Edge> edges = new ArrayList<>(before.edges());
      int moved = random.nextInt(edges.size());
      Field.Edge was = edges.get(moved);
      double nearer = was.distance().metres() * random.nextDouble();
      edges.set(moved, new Field.Edge(was.bearing(), new Length(nearer), "", ""));
      List<Field.Hazard> hazards = new ArrayList<>(before.hazards());
      hazards.add(hazard(random));
      FieldShape after = FieldShape.of(edges, Optional.empty()).orElseThrow().withHazards(hazards);
      for (int k = 0; k < 50; k++) {
        double eastM = 400 * random.nextDouble() - 200;
        double northM = 400 * random.nextDouble() - 200;
        assertThat(!after.contains(eastM, northM) || before.contains(eastM, northM))
            .as("seed 32, case %d: %s, %s; %s nearer in %s", i, eastM, northM, was, edges)
            .isTrue();
      }
    }
  }

  private static FieldShape any(Random random) {
    List<Field.Edge> edges =
        IntStream.range(0, 1 + random.nextInt(7))
            .mapToObj(k -> edge(random.nextInt(360), 20 + 200 * random.nextDouble(), "edge " + k))
            .toList();
    List<Field.Hazard> hazards =
        IntStream.range(0, random.nextInt(4)).mapToObj(k -> hazard(random)).toList();
    return FieldShape.of(edges, Optional.empty()).orElseThrow().withHazards(hazards);
  }

  private static Field.Hazard hazard(Random random) {
    return hazard(
        random.nextInt(360), 150 * random.nextDouble(), 30 * random.nextDouble(), "hazard");
  }

  private static FieldShape field(List<Field.Edge> edges, Field.Hazard... hazards) {
    Facts facts = Facts.none().with(Field.EDGES, edges).with(Field.HAZARDS, List.of(hazards));
    return FieldShape.of(new Field(new RecordId("f"), facts)).orElseThrow();
  }

  private static Field.Edge edge(double degrees, double metres, String name) {
    return new Field.Edge(new Bearing(degrees), new Length(metres), name, "");
  }

  private static Field.Hazard hazard(double degrees, double metres, double radius_m, String name) {
    return new Field.Hazard(new Bearing(degrees), new Length(metres), new Length(radius_m), name);
  }
}
