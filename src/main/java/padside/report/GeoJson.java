package padside.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.site.FieldShape;
import padside.site.Ground;
import padside.site.Landing;

/**
 * What of the log has coordinates, as a feature collection by RFC 7946: pads, the ground inside the
 * edges, hazards, and where flights came down. Positions are longitude before latitude, WGS84, to
 * seven decimals (a centimetre); outer rings run anticlockwise and end where they begin.
 *
 * @param leftOut a sentence for each thing that has coordinates and is not in it
 */
public record GeoJson(Map<String, Object> collection, List<String> leftOut) {
  /** What the features are of, in their properties. */
  public static final String WHAT = "what";

  private static final double DECIMALS = 1e7;
  private static final double HALF_TURN_DEG = 180;
  private static final int LEAST_CORNERS = 3;

  private static final List<Column<?>> TOLD =
      List.of(Flight.MOTOR, Flight.ALTITUDE, Flight.LANDED_ON);

  /** Of fields whose pad has coordinates, and of flights on days at them. */
  public static GeoJson of(FlightLog log) throws Fault {
    Drawing drawing = new Drawing(Names.of(log));
    Map<RecordId, Field> fields = new HashMap<>();
    for (Stored stored : log.list(Kind.FIELD)) {
      Field field = new Field(stored.id(), stored.facts());
      fields.put(field.id(), field);
      drawing.field(field);
    }
    Map<RecordId, Field> byDay = new HashMap<>();
    for (Stored day : log.list(Kind.DAY)) {
      day.facts().get(Day.FIELD).map(fields::get).ifPresent(at -> byDay.put(day.id(), at));
    }
    for (Stored stored : log.list(Kind.FLIGHT)) {
      Flight flight = new Flight(stored.id(), stored.facts());
      flight.day().map(byDay::get).ifPresent(at -> drawing.landing(flight, at));
    }
    Map<String, Object> collection = new LinkedHashMap<>();
    collection.put("type", "FeatureCollection");
    collection.put("features", List.copyOf(drawing.features));
    return new GeoJson(collection, List.copyOf(drawing.leftOut));
  }

  /** The features as they come. */
  private static final class Drawing {
    private final Names names;
    private final List<Object> features = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    Drawing(Names names) {
      this.names = names;
    }

    void field(Field field) {
      if (field.coordinates().isEmpty()) {
        return;
      }
      Ground ground = new Ground(field.coordinates().get());
      Map<String, Object> pad = properties("pad", field);
      field.elevation().ifPresent(height -> pad.put(Field.ELEVATION.name(), height.metres()));
      point(pad, ground.pad());
      FieldShape.of(field)
          .ifPresent(shape -> polygon(properties("field", field), shape.corners(), ground));
      for (Field.Hazard hazard : field.hazards()) {
        Map<String, Object> properties = properties("hazard", field);
        properties.put("name", hazard.name());
        properties.put("radius_m", hazard.radius().metres());
        boolean hasRoom = hazard.radius().metres() > 0;
        polygon(properties, hasRoom ? FieldShape.rim(hazard) : List.of(), ground);
      }
    }

    void landing(Flight flight, Field field) {
      Optional<Landing> landing =
          flight
              .facts()
              .get(Flight.LANDING_BEARING)
              .flatMap(
                  toward ->
                      flight
                          .facts()
                          .get(Flight.LANDING_DISTANCE)
                          .filter(distance -> distance.metres() >= 0)
                          .map(distance -> new Landing(toward, distance)));
      if (landing.isEmpty() || field.coordinates().isEmpty()) {
        return;
      }
      Map<String, Object> properties = properties("landing", field);
      properties.put(Sheet.DATE, names.day(flight.day()).get(0));
      properties.put(
          Flight.ROCKET.name(), flight.rocket().map(id -> names.of(id.text())).orElse(null));
      for (Column<?> column : TOLD) {
        properties.put(column.name(), value(flight.facts(), column));
      }
      properties.put(Flight.LANDING_BEARING.name(), landing.get().bearing().degrees());
      properties.put(Flight.LANDING_DISTANCE.name(), landing.get().distance().metres());
      point(properties, new Ground(field.coordinates().get()).coordinates(landing.get()));
    }

    private static Object value(Facts facts, Column<?> column) {
      return facts.cells().getOrDefault(column.name(), Facts.Cell.emptied()).value().orElse(null);
    }

    private static Map<String, Object> properties(String what, Field field) {
      Map<String, Object> properties = new LinkedHashMap<>();
      properties.put(WHAT, what);
      properties.put(Sheet.FIELD, field.name());
      return properties;
    }

    private void point(Map<String, Object> properties, Field.Coordinates at) {
      feature(properties, "Point", position(at));
    }

    /** The corners come clockwise; RFC 7946, 3.1.6 wants an outer ring the other way round. */
    private void polygon(Map<String, Object> properties, List<Landing> corners, Ground ground) {
      String name = "The " + properties.get(WHAT) + " of " + properties.get(Sheet.FIELD);
      List<List<Double>> ring = new ArrayList<>();
      corners.forEach(corner -> ring.add(0, position(ground.coordinates(corner))));
      if (ring.size() < LEAST_CORNERS) {
        leftOut.add(name + " encloses nothing and is left out; look at its distances.");
      } else if (ring.stream().anyMatch(place -> isFar(place, ring.get(0)))) {
        leftOut.add(name + " lies across the 180th meridian or a pole and is left out.");
      } else {
        ring.add(ring.get(0));
        feature(properties, "Polygon", List.of(List.copyOf(ring)));
      }
    }

    private static boolean isFar(List<Double> place, List<Double> from) {
      return Math.abs(place.get(0) - from.get(0)) > HALF_TURN_DEG / 2;
    }

    private void feature(Map<String, Object> properties, String type, Object coordinates) {
      Map<String, Object> geometry = new LinkedHashMap<>();
      geometry.put("type", type);
      geometry.put("coordinates", coordinates);
      Map<String, Object> feature = new LinkedHashMap<>();
      feature.put("type", "Feature");
      feature.put("geometry", geometry);
      feature.put("properties", properties);
      features.add(feature);
    }

    private static List<Double> position(Field.Coordinates at) {
      return List.of(rounded(at.longitudeDeg()), rounded(at.latitudeDeg()));
    }

    private static double rounded(double degrees) {
      return Math.round(degrees * DECIMALS) / DECIMALS;
    }
  }
}
