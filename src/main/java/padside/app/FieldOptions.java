package padside.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.site.FieldShape;
import padside.units.Bearing;
import padside.units.Length;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options that describe where a flight goes. */
final class FieldOptions {
  @Option(
      names = "--elevation",
      paramLabel = "LENGTH",
      converter = Written.OfAltitude.class,
      defaultValue = "0m",
      description = "field above sea level (${DEFAULT-VALUE})")
  private Length elevation;

  @Option(
      names = "--edge",
      paramLabel = "BEARING:DISTANCE",
      converter = EdgeConverter.class,
      description = "field edge along a bearing, such as NE:280ft; repeat for more")
  private List<Field.Edge> edges = new ArrayList<>();

  @Option(
      names = "--hazard",
      paramLabel = "BEARING:DISTANCE:RADIUS",
      converter = HazardConverter.class,
      description =
          "something round inside to keep clear of, such as E:160ft:50ft; repeat for more")
  private List<Field.Hazard> hazards = new ArrayList<>();

  @Option(
      names = "--field-radius",
      paramLabel = "LENGTH",
      converter = Written.OfDistance.class,
      description = "a round field with the pad in its middle")
  private Length radius;

  @Option(
      names = "--lat",
      paramLabel = "DEGREES",
      converter = Written.OfLatitude.class,
      description = "latitude of the pad, WGS84, such as 43.652 or 43.652N")
  private Double latitude;

  @Option(
      names = "--lon",
      paramLabel = "DEGREES",
      converter = Written.OfLongitude.class,
      description = "longitude of the pad, WGS84, such as -93.2 or 93.2W")
  private Double longitude;

  Field field(RecordId id) {
    if (radius != null && !edges.isEmpty()) {
      throw new TypeConversionException(
          "--edge and --field-radius describe the field in two ways; give one of them.");
    }
    if ((latitude == null) != (longitude == null)) {
      throw new TypeConversionException(
          "--lat and --lon belong together; give both or neither of them.");
    }
    Facts outline =
        radius == null
            ? Facts.none().with(Field.EDGES, List.copyOf(edges))
            : FieldShape.circle(radius);
    return new Field(
        id,
        outline
            .with(Field.HAZARDS, List.copyOf(hazards))
            .with(Field.NAME, "this field")
            .with(Field.ELEVATION, elevation)
            .with(Field.LATITUDE, Optional.ofNullable(latitude))
            .with(Field.LONGITUDE, Optional.ofNullable(longitude)));
  }

  /** True when it is told where on the earth the pad stands. */
  boolean hasPlace() {
    return latitude != null && longitude != null;
  }

  /** Reads {@code NE:280ft}. */
  static final class EdgeConverter implements ITypeConverter<Field.Edge> {
    @Override
    public Field.Edge convert(String text) {
      List<String> parts = parts(text, 2, "a bearing and a distance; type it like NE:280ft.");
      return new Field.Edge(bearing(parts.get(0)), length(parts.get(1)), "", "");
    }
  }

  /** Reads {@code E:160ft:50ft}. */
  static final class HazardConverter implements ITypeConverter<Field.Hazard> {
    @Override
    public Field.Hazard convert(String text) {
      List<String> parts =
          parts(text, 3, "a bearing, a distance and a radius; type it like E:160ft:50ft.");
      Length radius = length(parts.get(2));
      if (radius.metres() <= 0) {
        throw new TypeConversionException(
            "\"" + text + "\" has no radius; give what is to be kept clear of, like E:160ft:50ft.");
      }
      return new Field.Hazard(bearing(parts.get(0)), length(parts.get(1)), radius, "");
    }
  }

  private static List<String> parts(String text, int count, String wanted) {
    List<String> parts = List.of(text.split(":", -1));
    if (parts.size() != count) {
      throw new TypeConversionException("\"" + text + "\" is not " + wanted);
    }
    return parts;
  }

  private static Bearing bearing(String text) {
    return new Written.OfBearing().convert(text);
  }

  private static Length length(String text) {
    return new Written.OfDistance().convert(text);
  }
}
