package padside.flight;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Length;

/** One line of sight to a rocket from a spot on the field. Bearings are true. */
public record Sighting(RecordId id, Facts facts) {
  /** What was sighted. */
  public enum Target {
    /** The highest point, for an altitude. */
    APOGEE,
    /** Where it came down, for a search. */
    LANDING;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Target> find(String code) {
      return List.of(values()).stream().filter(value -> value.code().equals(code)).findFirst();
    }
  }

  public static final Column<RecordId> FLIGHT = Column.reference("flight", "the flight sighted");
  public static final Column<Target> TARGET =
      Column.word("target", "apogee or landing", Target::find, Target::code);
  public static final Column<Bearing> STATION_BEARING =
      Column.quantity(
          "station_bearing_deg",
          "bearing from the pad of the spot sighted from; none at the pad itself",
          Bearing::new,
          Bearing::degrees);
  public static final Column<Length> STATION_DISTANCE =
      Column.quantity(
          "station_distance_m",
          "distance from the pad of the spot sighted from",
          Length::new,
          Length::metres);
  public static final Column<Bearing> BEARING =
      Column.quantity(
          "bearing_deg", "bearing of the line of sight", Bearing::new, Bearing::degrees);
  public static final Column<Angle> ELEVATION =
      Column.quantity(
          "elevation_deg",
          "angle of the line of sight above the horizon",
          Angle::ofDegrees,
          Angle::inDegrees);
  public static final Column<String> NOTE = Column.text("note", "anything worth knowing");

  static final List<Column<?>> COLUMNS =
      List.of(FLIGHT, TARGET, STATION_BEARING, STATION_DISTANCE, BEARING, ELEVATION, NOTE);

  public Optional<RecordId> flight() {
    return facts.get(FLIGHT);
  }

  public Optional<Target> target() {
    return facts.get(TARGET);
  }
}
