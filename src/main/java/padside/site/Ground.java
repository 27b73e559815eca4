package padside.site;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import padside.flight.Field;
import padside.units.Bearing;
import padside.units.Length;

/**
 * The ground around a pad whose coordinates are known, on the WGS84 ellipsoid (semi-major axis
 * 6378137 m, flattening 1/298.257223563; NIMA TR8350.2, 2000). Distances are along geodesics,
 * bearings those at the pad; C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013).
 */
public record Ground(Field.Coordinates pad) {
  /** The coordinates of a place seen from the pad: the direct problem. */
  public Field.Coordinates coordinates(Landing landing) {
    GeodesicData to =
        Geodesic.WGS84.Direct(
            pad.latitudeDeg(),
            pad.longitudeDeg(),
            landing.bearing().degrees(),
            landing.distance().metres());
    return new Field.Coordinates(to.lat2, to.lon2);
  }

  /** Where a place with such coordinates lies from the pad: the inverse problem. */
  public Landing landing(Field.Coordinates place) {
    GeodesicData to =
        Geodesic.WGS84.Inverse(
            pad.latitudeDeg(), pad.longitudeDeg(), place.latitudeDeg(), place.longitudeDeg());
    return new Landing(new Bearing(to.s12 == 0 ? 0 : to.azi1), new Length(to.s12));
  }
}
