package padside.form;

import java.util.List;
import padside.flight.Field;
import padside.units.Reading;
import padside.units.UnitSystem;

/**
 * What inside a field to keep clear of, in one line, divided by semicolons: bearing and distance
 * from the pad to its middle, its radius, then what it is, which may be left out. {@code NE 60m 10m
 * pond; 240 90m 5m parked cars}.
 */
public final class HazardsNotation extends SpotsNotation<Field.Hazard> {
  private final UnitSystem system;

  public HazardsNotation(UnitSystem system) {
    super(system, "hazard", List.of("distance", "radius"));
    this.system = system;
  }

  @Override
  Reading<Field.Hazard> one(String typed) {
    return one(
        typed,
        at -> new Field.Hazard(at.bearing(), at.lengths().get(0), at.lengths().get(1), at.name()));
  }

  @Override
  String showOne(Field.Hazard hazard) {
    return show(
        new Spot(hazard.bearing(), List.of(hazard.distance(), hazard.radius()), hazard.name()));
  }

  @Override
  String exampleOne() {
    return switch (system) {
      case US -> "NE 200ft 30ft pond";
      case METRIC -> "NE 60m 10m pond";
    };
  }

  @Override
  public String example() {
    return switch (system) {
      case US -> exampleOne() + "; 240 300ft 15ft mast";
      case METRIC -> exampleOne() + "; 240 90m 5m mast";
    };
  }
}
