package padside.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

/** Geometry worked by hand from Euclid: circles, squares, triangles, rectangles about a pad. */
class FieldShapeTest {
  private static final double DIAGONAL = Math.sqrt(2);

  @Test
  void a_field_nobody_paced_has_no_shape() {
    assertThat(FieldShape.of(new Field(new RecordId("f"), Facts.none()))).isEmpty();
  }

  @Test
  void one_paced_edge_is_a_circle() {
    FieldShape circle = shape(edge(77, 60));

    assertThat(IntStream.range(0, 360))
        .allSatisfy(deg -> assertThat(reach(circle, deg)).isEqualTo(60));
    assertThat(circle.smallestSide()).isEqualTo(new Length(120));
    assertThat(circle.contains(-60, 0)).isTrue();
    assertThat(circle.contains(-60.001, 0)).isFalse();
    assertThat(circle.edgeToward(new Bearing(200))).isEqualTo(edge(200, 60));
    FieldShape given =
        FieldShape.of(new Field(new RecordId("test.1"), FieldShape.circle(new Length(60))))
            .orElseThrow();
    assertThat(given.smallestSide()).isEqualTo(new Length(120));
    assertThat(given.unpaced()).as("known to be round").isEmpty();
    assertThat(circle.unpaced()).as("one edge paced").isPresent();
  }

  @Test
  void corners_paced_as_well_make_a_square() {
    FieldShape square = square(0);

    assertThat(reach(square, 0)).isCloseTo(100, within(1e-9));
    assertThat(reach(square, 30)).isCloseTo(100 / Math.cos(Math.toRadians(30)), within(1e-9));
    assertThat(square.contains(99.9, 99.9)).isTrue();
    assertThat(square.contains(99.9, -99.9)).isTrue();
    assertThat(square.contains(100.1, 0)).isFalse();
    assertThat(square.smallestSide().metres()).isCloseTo(200, within(1e-9));
  }

  @Test
  void four_paced_edges_cut_the_corners_nobody_paced() {
    FieldShape diamond = shape(edge(0, 100), edge(90, 100), edge(180, 100), edge(270, 100));

    assertThat(reach(diamond, 45)).isCloseTo(100 / DIAGONAL, within(1e-9));
    assertThat(diamond.contains(49.9, 49.9)).isTrue();
    assertThat(diamond.contains(50.1, 50.1)).isFalse();
    assertThat(diamond.smallestSide().metres()).isCloseTo(100 * DIAGONAL, within(1e-9));
  }

  @Test
  void across_a_wide_gap_the_nearer_distance_holds() {
    FieldShape two = shape(edge(0, 300), edge(120, 50));

    assertThat(reach(two, 0)).as("as paced").isEqualTo(300);
    assertThat(reach(two, 1)).isEqualTo(50);
    assertThat(reach(two, 120)).isEqualTo(50);
    assertThat(reach(two, 240)).isEqualTo(50);
    // The circle of 50 m and the tip 300 m out: no direction is narrower than the circle.
    assertThat(two.smallestSide().metres()).isCloseTo(100, within(1e-9));
  }

  @Test
  void the_least_width_of_a_triangle_is_its_least_height() {
    // Equilateral, corners 100 m from the pad in its middle: 120° gaps are arcs, so paced between.
    FieldShape triangle =
        shape(
            edge(0, 100),
            edge(60, 50),
            edge(120, 100),
            edge(180, 50),
            edge(240, 100),
            edge(300, 50));

    assertThat(triangle.smallestSide().metres()).isCloseTo(150, within(1e-9));
  }

  @Test
  void the_least_width_of_a_rectangle_is_its_short_side_wherever_the_pad_stands() {
    Random random = new Random(11);
    for (int i = 0; i < 50; i++) {
      double east = 15 + 370 * random.nextDouble();
      double north = 15 + 90 * random.nextDouble();
      List<Field.Edge> corners =
          IntStream.range(0, 80).mapToObj(k -> onRectangle(k, east, north)).toList();

      assertThat(FieldShape.of(corners, Optional.empty()).orElseThrow().smallestSide().metres())
          .as("seed 11, case %d: pad at %.1f, %.1f of 400 x 120", i, east, north)
          .isCloseTo(120, within(1e-6));
    }
  }

  @Test
  void a_measured_side_stands_before_the_paced_one() {
    assertThat(
            FieldShape.of(List.of(edge(0, 10)), Optional.of(new Length(90)))
                .orElseThrow()
                .smallestSide())
        .isEqualTo(new Length(90));
  }

  @Test
  void turning_field_and_landing_together_changes_nothing() {
    Random random = new Random(12);
    for (int i = 0; i < 300; i++) {
      List<Field.Edge> edges = paced(random);
      double turn = 360 * random.nextDouble();
      Bearing toward = new Bearing(360 * random.nextDouble());
      FieldShape field = FieldShape.of(edges, Optional.empty()).orElseThrow();
      FieldShape turned =
          FieldShape.of(edges.stream().map(each -> turned(each, turn)).toList(), Optional.empty())
              .orElseThrow();

      String which = "seed 12, case %d: %s".formatted(i, edges);
      assertThat(turned.reach(new Bearing(toward.degrees() + turn)).metres())
          .as(which)
          .isCloseTo(field.reach(toward).metres(), within(1e-6));
      assertThat(turned.smallestSide().metres())
          .as(which)
          .isCloseTo(field.smallestSide().metres(), within(1e-6));
      assertThat(turned.edgeToward(new Bearing(toward.degrees() + turn)).name())
          .as(which)
          .isEqualTo(field.edgeToward(toward).name());
    }
  }

  @Test
  void an_edge_that_comes_nearer_takes_no_landing_in() {
    Random random = new Random(13);
    for (int i = 0; i < 1000; i++) {
      List<Field.Edge> edges = new ArrayList<>(paced(random));
      Landing landing =
          new Landing(
              new Bearing(360 * random.nextDouble()), new Length(300 * random.nextDouble()));
      FieldShape before = FieldShape.of(edges, Optional.empty()).orElseThrow();
      int moved = random.nextInt(edges.size());
      Field.Edge was = edges.get(moved);
      edges.set(
          moved, edge(was.bearing().degrees(), was.distance().metres() * random.nextDouble()));
      FieldShape after = FieldShape.of(edges, Optional.empty()).orElseThrow();

      assertThat(after.margin(landing).metres())
          .as("seed 13, case %d: %s to %s", i, was, edges)
          .isLessThanOrEqualTo(before.margin(landing).metres() + 1e-9);
    }
  }

  @Test
  void the_least_width_is_no_wider_than_any_sampled_width() {
    Random random = new Random(14);
    for (int i = 0; i < 25; i++) {
      List<Field.Edge> edges = paced(random);
      FieldShape field = FieldShape.of(edges, Optional.empty()).orElseThrow();

      double sampled = sampledWidth(field);
      assertThat(field.smallestSide().metres())
          .as("seed 14, case %d: %s", i, edges)
          .isBetween(sampled * 0.97, sampled * 1.03);
    }
  }

  @Test
  void a_landing_outside_goes_past_the_edge_paced_nearest_to_it() {
    FieldShape field =
        FieldShape.of(
                List.of(
                    new Field.Edge(new Bearing(40), new Length(85), "lane", "road"),
                    new Field.Edge(new Bearing(200), new Length(150), "hedge", "crops")),
                Optional.empty())
            .orElseThrow();

    Landing past = new Landing(new Bearing(20), new Length(90));
    assertThat(field.contains(past)).isFalse();
    assertThat(field.margin(past).metres()).isCloseTo(-5, within(1e-9));
    assertThat(field.edgeToward(past.bearing()).name()).isEqualTo("lane");
    assertThat(field.edgeToward(new Bearing(310)).name()).isEqualTo("lane");
    assertThat(field.edgeToward(new Bearing(290)).name()).isEqualTo("hedge");
  }

  @Test
  void of_two_distances_along_one_bearing_the_nearer_counts() {
    FieldShape field = shape(edge(90, 80), edge(90, 40), edge(100, 60));

    assertThat(reach(field, 90)).isEqualTo(40);
    assertThat(field.edges()).hasSize(2);
  }

  @Test
  void an_edge_at_the_pad_leaves_no_room_that_way() {
    FieldShape field = shape(edge(0, 0), edge(80, 100), edge(160, 100), edge(280, -3));

    assertThat(reach(field, 0)).isZero();
    assertThat(reach(field, 40)).isZero();
    assertThat(reach(field, 280)).isZero();
    assertThat(field.contains(0, 0)).as("the pad itself").isTrue();
  }

  @Test
  void a_landing_is_where_its_coordinates_say() {
    assertThat(Landing.of(-3, -4).distance().metres()).isEqualTo(5);
    assertThat(Landing.of(-3, -4).bearing().degrees()).isCloseTo(216.8699, within(1e-4));
  }

  /** The width of many points of the outline, in many directions. */
  private static double sampledWidth(FieldShape field) {
    double[] reach = IntStream.range(0, 3600).mapToDouble(k -> reach(field, k / 10.0)).toArray();
    return IntStream.range(0, 360)
        .mapToDouble(half -> extent(reach, half / 2.0))
        .min()
        .orElseThrow();
  }

  private static double extent(double[] reach, double directionDeg) {
    double[] along =
        IntStream.range(0, reach.length)
            .mapToDouble(k -> reach[k] * Math.cos(Math.toRadians(k / 10.0 - directionDeg)))
            .toArray();
    return IntStream.range(0, along.length).mapToDouble(k -> along[k]).max().orElseThrow()
        - IntStream.range(0, along.length).mapToDouble(k -> along[k]).min().orElseThrow();
  }

  /** Up to seven edges on whole tenths of degrees, so that sampling meets each of them. */
  private static List<Field.Edge> paced(Random random) {
    return IntStream.range(0, 1 + random.nextInt(7))
        .mapToObj(
            k ->
                new Field.Edge(
                    new Bearing(random.nextInt(3600) / 10.0),
                    new Length(20 + 200 * random.nextDouble()),
                    "edge " + k,
                    ""))
        .toList();
  }

  /** A point of the outline of 400 m by 120 m; the first four are its corners. */
  private static Field.Edge onRectangle(int k, double padEast, double padNorth) {
    double[][] corners = {{0, 0}, {400, 0}, {400, 120}, {0, 120}};
    double[] a = corners[k % 4];
    double[] b = corners[(k + 1) % 4];
    double share = Math.floorDiv(k, 4) / 20.0;
    Landing point =
        Landing.of(a[0] + share * (b[0] - a[0]) - padEast, a[1] + share * (b[1] - a[1]) - padNorth);
    return new Field.Edge(point.bearing(), point.distance(), "", "");
  }

  private static FieldShape square(double turn) {
    List<Field.Edge> edges =
        IntStream.range(0, 8)
            .mapToObj(k -> edge(45 * k + turn, k % 2 == 0 ? 100 : 100 * DIAGONAL))
            .toList();
    return FieldShape.of(edges, Optional.empty()).orElseThrow();
  }

  private static Field.Edge turned(Field.Edge edge, double degrees) {
    return new Field.Edge(
        new Bearing(edge.bearing().degrees() + degrees),
        edge.distance(),
        edge.name(),
        edge.beyond());
  }

  private static Field.Edge edge(double degrees, double metres) {
    return new Field.Edge(new Bearing(degrees), new Length(metres), "edge", "");
  }

  private static FieldShape shape(Field.Edge... edges) {
    return FieldShape.of(List.of(edges), Optional.empty()).orElseThrow();
  }

  private static double reach(FieldShape field, double degrees) {
    return field.reach(new Bearing(degrees)).metres();
  }
}
