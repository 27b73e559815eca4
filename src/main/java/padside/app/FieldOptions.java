package padside.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Field;
import padside.site.FieldShape;
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
      int colon = text.indexOf(':');
      if (colon < 0) {
        throw new TypeConversionException(
            "\"" + text + "\" is not a bearing and a distance; type it like NE:280ft.");
      }
      return new Field.Edge(
          new Written.OfBearing().convert(text.substring(0, colon)),
          new Written.OfDistance().convert(text.substring(colon + 1)),
          "",
          "");
    }
  }
}
