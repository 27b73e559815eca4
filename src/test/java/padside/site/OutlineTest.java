package padside.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import padside.flight.Field;
import padside.units.Bearing;
import padside.units.Length;

/** Holds the outline in the plane against the same reading in polar form. */
class OutlineTest {
  private static final int SEED = 21;

  @Test
  void every_place_lies_where_the_polar_reading_puts_it() {
    Random random = new Random(SEED);
    int inside = 0;
    for (int i = 0; i < 2000; i++) {
      List<Field.Edge> edges = edges(random);
      FieldShape field = FieldShape.of(edges, Optional.empty()).orElseThrow();
      PolarField polar = PolarField.of(edges);
      for (int k = 0; k < 50; k++) {
        double eastM = 400 * random.nextDouble() - 200;
        double northM = 400 * random.nextDouble() - 200;
        assertThat(field.contains(eastM, northM))
            .as("seed %d, case %d: %s, %s of %s", SEED, i, eastM, northM, edges)
            .isEqualTo(polar.contains(eastM, northM));
        inside += field.contains(eastM, northM) ? 1 : 0;
      }
    }
    assertThat(inside).as("both answers are tried").isBetween(20_000, 80_000);
  }

  @Test
  void along_every_bearing_it_reaches_as_far_as_the_polar_reading() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      List<Field.Edge> edges = edges(random);
      FieldShape field = FieldShape.of(edges, Optional.empty()).orElseThrow();
      PolarField polar = PolarField.of(edges);
      for (int k = 0; k < 50; k++) {
        Bearing toward = toward(random, edges);
        double reach = polar.reachM(toward);
        double off = 400 * random.nextDouble();
        Landing landing = new Landing(toward, new Length(off));
        String which = "seed %d, case %d: %s of %s".formatted(SEED, i, toward, edges);

        assertThat(field.reach(toward).metres()).as(which).isCloseTo(reach, within(1e-6));
        assertThat(field.margin(landing).metres()).as(which).isCloseTo(reach - off, within(1e-6));
        assertThat(field.marginM(landing.eastM(), landing.northM()))
            .as(which)
            .isCloseTo(reach - off, within(1e-6));
      }
    }
  }

  @Test
  void a_place_on_the_edge_lies_inside() {
    Random random = new Random(SEED);
    for (int i = 0; i < 2000; i++) {
      List<Field.Edge> edges = edges(random);
      FieldShape field = FieldShape.of(edges, Optional.empty()).orElseThrow();
      Bearing toward = toward(random, edges);

      assertThat(field.contains(new Landing(toward, field.reach(toward))))
          .as("seed %d, case %d: %s of %s", SEED, i, toward, edges)
          .isTrue();
    }
  }

  @Test
  void the_way_straight_north_is_one_way_from_either_side() {
    FieldShape tip =
        FieldShape.of(List.of(edge(0, 300), edge(120, 50)), Optional.empty()).orElseThrow();

    assertThat(tip.contains(0, 200)).isTrue();
    assertThat(tip.contains(-1e-13, 200)).as("rounding").isTrue();
    assertThat(tip.contains(1e-13, 200)).as("rounding").isTrue();
    assertThat(tip.contains(-0.1, 200)).isFalse();
    assertThat(tip.contains(0.1, 200)).isFalse();
  }

  @Test
  void at_the_pad_itself_the_margin_is_the_way_north() {
    FieldShape field =
        FieldShape.of(List.of(edge(0, 30), edge(90, 50), edge(180, 70)), Optional.empty())
            .orElseThrow();

    assertThat(field.marginM(0, 0)).isEqualTo(30);
  }

  /** Now and then one of the paced bearings themselves. */
  private static Bearing toward(Random random, List<Field.Edge> edges) {
    return random.nextInt(10) == 0
        ? edges.get(random.nextInt(edges.size())).bearing()
        : new Bearing(360 * random.nextDouble());
  }

  /** Up to nine edges on whole degrees, now and then one at the pad. */
  private static List<Field.Edge> edges(Random random) {
    return IntStream.range(0, 1 + random.nextInt(9))
        .mapToObj(
            k ->
                edge(
                    random.nextInt(360),
                    random.nextInt(30) == 0 ? 0 : 20 + 230 * random.nextDouble()))
        .toList();
  }

  private static Field.Edge edge(double degrees, double metres) {
    return new Field.Edge(new Bearing(degrees), new Length(metres), "", "");
  }
}
