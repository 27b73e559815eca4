package padside.flight;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitSystem;

/** A place to fly, described from the pad as a flier can pace it. */
public record Field(RecordId id, Facts facts) {
  /** What bounds the room to land in. */
  public sealed interface Bound permits Edge, Hazard {
    /** As limits name it: {@code field edge NE 280 ft}, {@code pond NE 120 ft}. */
    String words(UnitSystem units);

    /** With all that is known of it: {@code lane NE 280 ft (road)}. */
    String whole(UnitSystem units);
  }

  /**
   * How far the field reaches from the pad along one bearing.
   *
   * @param name what the edge is called, such as {@code lane}; may be empty
   * @param beyond what lies behind it: road, trees, water, crops; may be empty
   */
  public record Edge(Bearing bearing, Length distance, String name, String beyond)
      implements Bound {
    private static final String UNNAMED = "field edge";

    @Override
    public String words(UnitSystem units) {
      return UNNAMED + place(bearing, distance, units);
    }

    @Override
    public String whole(UnitSystem units) {
      return (name.isEmpty() ? UNNAMED : name)
          + place(bearing, distance, units)
          + (beyond.isEmpty() ? "" : " (" + beyond + ")");
    }

    static Edge of(Map<?, ?> item) {
      return new Edge(
          new Bearing(number(item, "bearing_deg")),
          new Length(number(item, "distance_m")),
          text(item, "name"),
          text(item, "beyond"));
    }

    Map<String, Object> item() {
      Map<String, Object> item = new LinkedHashMap<>();
      item.put("bearing_deg", bearing.degrees());
      item.put("distance_m", distance.metres());
      item.put("name", name);
      item.put("beyond", beyond);
      return item;
    }
  }

  /**
   * A round spot inside the field on which nothing should land.
   *
   * @param bearing toward its middle, from the pad
   * @param distance from the pad to its middle
   * @param radius from its middle to its rim
   * @param name what it is: pond, parked cars, mast of a power line; may be empty
   */
  public record Hazard(Bearing bearing, Length distance, Length radius, String name)
      implements Bound {
    @Override
    public String words(UnitSystem units) {
      return (name.isEmpty() ? "hazard" : name) + place(bearing, distance, units);
    }

    @Override
    public String whole(UnitSystem units) {
      return words(units);
    }

    static Hazard of(Map<?, ?> item) {
      return new Hazard(
          new Bearing(number(item, "bearing_deg")),
          new Length(number(item, "distance_m")),
          new Length(number(item, "radius_m")),
          text(item, "name"));
    }

    Map<String, Object> item() {
      Map<String, Object> item = new LinkedHashMap<>();
      item.put("bearing_deg", bearing.degrees());
      item.put("distance_m", distance.metres());
      item.put("radius_m", radius.metres());
      item.put("name", name);
      return item;
    }
  }

  /**
   * Where something lies on the WGS84 ellipsoid.
   *
   * @param latitudeDeg north positive, from -90 to 90
   * @param longitudeDeg east positive, from -180 to 180
   */
  public record Coordinates(double latitudeDeg, double longitudeDeg) {
    /** Refuses what lies on no globe. */
    public Coordinates {
      if (!areOnGlobe(latitudeDeg, longitudeDeg)) {
        throw new IllegalArgumentException("no coordinates: " + latitudeDeg + ", " + longitudeDeg);
      }
    }

    private static boolean areOnGlobe(double latitudeDeg, double longitudeDeg) {
      return Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= 180;
    }

    private static Optional<Coordinates> find(double latitudeDeg, double longitudeDeg) {
      return areOnGlobe(latitudeDeg, longitudeDeg)
          ? Optional.of(new Coordinates(latitudeDeg, longitudeDeg))
          : Optional.empty();
    }
  }

  private static String place(Bearing bearing, Length distance, UnitSystem units) {
    return " " + bearing.compassPoint() + " " + Notations.distance(units).show(distance);
  }

  private static double number(Map<?, ?> item, String name) {
    return ((Number) item.get(name)).doubleValue();
  }

  private static String text(Map<?, ?> item, String name) {
    return item.get(name) instanceof String text ? text : "";
  }

  public static final Column<String> NAME = Column.text("name", "what the field is called");
  public static final Column<Length> ELEVATION =
      Column.quantity("elevation_m", "height above sea level", Length::new, Length::metres);
  public static final Column<List<Edge>> EDGES =
      Column.list("edges", "distance from the pad to the edge by bearing", Edge::of, Edge::item);
  public static final Column<List<Hazard>> HAZARDS =
      Column.list("hazards", "what inside the edges to keep clear of", Hazard::of, Hazard::item);
  public static final Column<Length> SMALLEST_SIDE =
      Column.quantity(
          "smallest_side_m",
          "smallest side or diameter of the field, when measured",
          Length::new,
          Length::metres);
  public static final Column<Double> LATITUDE =
      Column.number("latitude_deg", "WGS84 latitude of the pad, north positive");
  public static final Column<Double> LONGITUDE =
      Column.number("longitude_deg", "WGS84 longitude of the pad, east positive");
  public static final Column<String> NOTE =
      Column.text("note", "permission, access, anything worth knowing");

  static final List<Column<?>> COLUMNS =
      List.of(NAME, ELEVATION, EDGES, HAZARDS, SMALLEST_SIDE, LATITUDE, LONGITUDE, NOTE);

  public String name() {
    return facts.get(NAME).orElse("unnamed field");
  }

  public Optional<Length> elevation() {
    return facts.get(ELEVATION);
  }

  public List<Edge> edges() {
    return facts.get(EDGES).orElse(List.of());
  }

  public List<Hazard> hazards() {
    return facts.get(HAZARDS).orElse(List.of());
  }

  public Optional<Length> smallestSide() {
    return facts.get(SMALLEST_SIDE);
  }

  /** Where the pad is; absent while one of the two is missing or off the globe. */
  public Optional<Coordinates> coordinates() {
    return facts
        .get(LATITUDE)
        .flatMap(north -> facts.get(LONGITUDE).flatMap(east -> Coordinates.find(north, east)));
  }
}
