package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The made-up season goes out in each form, and back in where it can. */
class ExportCommandTest {
  /** IUGG mean radius; on the sphere a bearing is off by less than half a percent. */
  private static final double EARTH_RADIUS_M = 6_371_008.8;

  @TempDir static Path home;

  @BeforeAll
  static void write() throws Exception {
    DemoFolder.write(home.resolve("season"));
  }

  private static Ran run(String log, String... arguments) {
    return input("", log, arguments);
  }

  private static Ran input(String input, String log, String... arguments) {
    List<String> line = new ArrayList<>(List.of(arguments));
    line.addAll(1, List.of("--log", home.resolve(log).toString()));
    return Ran.of(input, line.toArray(String[]::new));
  }

  @Test
  void an_export_added_to_an_empty_log_gives_the_same_records() throws Exception {
    Ran out = run("season", "export", "--json");

    Ran added = input(out.out(), "new", "add");
    Ran again = run("new", "export", "--json");

    assertThat(added.err()).isEmpty();
    assertThat(out.json().keySet()).contains("rocket", "flight", "day", "fix");
    assertThat((List<?>) out.json().get("flight")).hasSizeGreaterThan(20);
    assertThat(withoutIds(again)).isEqualTo(withoutIds(out));
  }

  /** Each id is told by its kind and its place among them. */
  private static Object withoutIds(Ran ran) throws Exception {
    Map<String, String> names = new HashMap<>();
    for (Map.Entry<String, Object> kind : ran.json().entrySet()) {
      int place = 0;
      for (Object record : kind.getValue() instanceof List<?> list ? list : List.of()) {
        names.put((String) ((Map<?, ?>) record).get("id"), kind.getKey() + " " + place++);
      }
    }
    String text = ran.out();
    for (String id : names.keySet().stream().sorted((a, b) -> b.length() - a.length()).toList()) {
      text = text.replace(id, names.get(id));
    }
    return JSON.std.anyFrom(text);
  }

  @Test
  void a_whole_log_is_added_whole_or_not_at_all() throws Exception {
    for (String spoilt :
        List.of(
            "{\"padside_log\": 2}",
            "{\"padside_log\": 1}",
            "{\"rocket\": [{\"id\": \"a\", \"name\": \"Alder\"}, {\"id\": \"a\", \"name\": \"Ash\"}]}",
            "{\"rocket\": [{\"name\": \"Alder\"}], \"field\": [{\"nome\": \"Ostrel\"}]}",
            "{\"rocket\": [{\"name\": \"Alder\", \"typed\": {\"mass_kg\": 4}}]}",
            "{\"rocket\": {\"name\": \"Alder\"}}",
            "[1]")) {
      Ran ran = input(spoilt, "spoilt", "add");

      assertThat(ran.status()).as(spoilt).isEqualTo(Exit.USAGE);
      assertThat(ran.err().lines().findFirst().orElse("")).as(spoilt).endsWith(".");
    }
    assertThat(home.resolve("spoilt")).doesNotExist();
  }

  @Test
  void what_was_typed_comes_back_and_controls_are_escaped() throws Exception {
    String rocket =
        "{\"rocket\": [{\"name\": \"A\\u001b[2J\\u202e\", \"mass_kg\": 0.042,"
            + " \"typed\": {\"mass_kg\": \"42g\", \"rod_m\": \"about a yard\"}}]}";
    input(rocket, "typed", "add");

    Ran out = run("typed", "export", "--json");

    Map<?, ?> back = (Map<?, ?>) ((List<?>) out.json().get("rocket")).get(0);
    assertThat(back.get("name")).isEqualTo("A\u001b[2J\u202e");
    assertThat(back.get("typed")).isEqualTo(Map.of("mass_kg", "42g", "rod_m", "about a yard"));
    assertThat(out.out()).doesNotContain("\u001b", "\u202e");
    assertThat(run("typed", "export", "--csv", "--kind", "rocket").out())
        .contains("\"A·[2J·\"", "\"about a yard\"");
  }

  @Test
  void a_file_that_is_there_is_left_as_it_is() throws Exception {
    Path file = home.resolve("flights.csv");

    assertThat(run("season", "export", "--csv", "--to", file.toString()).status()).isZero();
    String written = Files.readString(file);
    Ran again = run("season", "export", "--json", "--to", file.toString());

    assertThat(written).startsWith("\"id\",\"status\",\"date\",\"field\"").endsWith("\"\r\n");
    assertThat(again.status()).isEqualTo(Exit.USAGE);
    assertThat(again.err()).contains("already; name another");
    assertThat(Files.readString(file)).isEqualTo(written);
    assertThat(run("season", "export", "--csv", "--to", file + "/no/x").err())
        .contains("cannot be written");
    assertThat(run("season", "export", "--csv", "--kind", "boat").err()).contains("choose rocket");
    assertThat(run("season", "export", "--json", "--kind", "day").err()).contains("Leave it out");
    assertThat(run("season", "export").status()).isEqualTo(Exit.USAGE);
  }

  /** RFC 7946; the schema is written from its text, what it cannot say is computed here. */
  @Test
  void geojson_keeps_to_rfc_7946() throws Exception {
    String text = run("season", "export", "--geojson").out();
    String schema = Files.readString(Path.of("src/test/resources/geojson/rfc7946.schema.json"));
    var judge = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema);

    assertThat(judge.validate(text, InputFormat.JSON)).isEmpty();
    assertThat(judge.validate(text.replaceFirst("\"Polygon\"", "\"Circle\""), InputFormat.JSON))
        .isNotEmpty();
    Set<String> what = new HashSet<>();
    Map<String, List<Double>> pads = new HashMap<>();
    for (Map<?, ?> feature : features(text)) {
      Map<?, ?> properties = (Map<?, ?>) feature.get("properties");
      Map<?, ?> geometry = (Map<?, ?>) feature.get("geometry");
      String field = (String) properties.get("field");
      what.add((String) properties.get("what"));
      switch ((String) properties.get("what")) {
        case "pad" -> pads.put(field, position(geometry.get("coordinates")));
        case "landing" ->
            isWhereItLay(properties, pads.get(field), position(geometry.get("coordinates")));
        default -> isRing(((List<?>) geometry.get("coordinates")).get(0));
      }
    }
    assertThat(what).containsExactlyInAnyOrder("pad", "field", "hazard", "landing");
    assertThat(pads.get("Harlsedge Meadow")).containsExactly(-0.63, 54.02);
  }

  private static List<Map<?, ?>> features(String text) throws Exception {
    List<Map<?, ?>> features = new ArrayList<>();
    for (Object feature : (List<?>) JSON.std.mapFrom(text).get("features")) {
      features.add((Map<?, ?>) feature);
    }
    return features;
  }

  private static List<Double> position(Object coordinates) {
    return ((List<?>) coordinates).stream().map(number -> ((Number) number).doubleValue()).toList();
  }

  /** Closed, and by the shoelace formula anticlockwise (RFC 7946, 3.1.6). */
  private static void isRing(Object coordinates) {
    List<List<Double>> ring =
        ((List<?>) coordinates).stream().map(ExportCommandTest::position).toList();
    double twiceArea = 0;
    for (int i = 1; i < ring.size(); i++) {
      twiceArea +=
          (ring.get(i - 1).get(0) - ring.get(0).get(0)) * (ring.get(i).get(1) - ring.get(0).get(1))
              - (ring.get(i).get(0) - ring.get(0).get(0))
                  * (ring.get(i - 1).get(1) - ring.get(0).get(1));
    }
    assertThat(ring.get(ring.size() - 1)).isEqualTo(ring.get(0));
    assertThat(twiceArea).isPositive();
    assertThat(new HashSet<>(ring)).hasSize(ring.size() - 1);
  }

  /** Held against plane geometry on a sphere, which knows nothing of the ellipsoid. */
  private static void isWhereItLay(Map<?, ?> told, List<Double> pad, List<Double> lay) {
    double north = Math.toRadians(lay.get(1) - pad.get(1)) * EARTH_RADIUS_M;
    double east =
        Math.toRadians(lay.get(0) - pad.get(0))
            * EARTH_RADIUS_M
            * Math.cos(Math.toRadians(pad.get(1)));
    double distance = ((Number) told.get("landing_distance_m")).doubleValue();
    double bearing = Math.toRadians(((Number) told.get("landing_bearing_deg")).doubleValue());
    assertThat(east).isCloseTo(distance * Math.sin(bearing), within(0.05 + 0.005 * distance));
    assertThat(north).isCloseTo(distance * Math.cos(bearing), within(0.05 + 0.005 * distance));
  }
}
