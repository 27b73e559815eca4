package padside.site;

import java.util.List;
import java.util.Optional;
import padside.flight.Field;

/** Circles on the ground to keep clear of, rims included, made for many questions. */
final class Hazards {
  private final List<Field.Hazard> list;
  private final double[] eastM;
  private final double[] northM;
  private final double[] radiusM;

  Hazards(List<Field.Hazard> hazards) {
    list = List.copyOf(hazards);
    eastM = new double[list.size()];
    northM = new double[list.size()];
    radiusM = new double[list.size()];
    for (int i = 0; i < list.size(); i++) {
      Field.Hazard hazard = list.get(i);
      double toward = hazard.bearing().inRadians();
      eastM[i] = hazard.distance().metres() * Math.sin(toward);
      northM[i] = hazard.distance().metres() * Math.cos(toward);
      // A slip's negative radius, squared below, would take room.
      radiusM[i] = Math.max(0, hazard.radius().metres());
    }
  }

  List<Field.Hazard> list() {
    return list;
  }

  boolean hold(double placeEastM, double placeNorthM) {
    return first(placeEastM, placeNorthM) >= 0;
  }

  /** Of several that overlap the one named first. */
  Optional<Field.Hazard> at(double placeEastM, double placeNorthM) {
    int at = first(placeEastM, placeNorthM);
    return at < 0 ? Optional.empty() : Optional.of(list.get(at));
  }

  private int first(double placeEastM, double placeNorthM) {
    for (int i = 0; i < radiusM.length; i++) {
      double east = placeEastM - eastM[i];
      double north = placeNorthM - northM[i];
      if (east * east + north * north <= radiusM[i] * radiusM[i]) {
        return i;
      }
    }
    return -1;
  }
}
