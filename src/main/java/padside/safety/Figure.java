package padside.safety;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Every single number a rule file may hold, named with its unit as in the file. */
enum Figure {
  // Of the codes.
  WIND_LIMIT_MPS,
  LAUNCHER_ANGLE_DEG,
  LIFTOFF_MASS_KG,
  PROPELLANT_MASS_KG,
  TOTAL_IMPULSE_NS,
  MISFIRE_WAIT_S,
  COUNTDOWN_S,
  SPARKS_SHARE,
  SITE_AT_LEAST_M,
  SITE_ALTITUDE_SHARE,
  SMALL_SITE_M,
  SMALL_SITE_IMPULSE_NS,
  SMALL_SITE_MASS_KG,
  SMALL_SITE_ALTITUDE_M,
  MANY_COUNT,
  MANY_COMPLEX_SHARE,
  MANY_MOST_M,
  MANY_ALTITUDE_SHARE,
  // Of a code and of the house.
  LEAST_THRUST_TO_WEIGHT,
  // Of the house.
  MARGINAL_SHARE,
  ADVISED_THRUST_TO_WEIGHT,
  LEAST_ROD_EXIT_MPS,
  ADVISED_ROD_EXIT_MPS,
  LEAST_ROD_DIVISOR,
  ADVISED_ROD_DIVISOR,
  ADVISED_DELAY_ERROR_S,
  ADVISED_EJECTION_AIRSPEED_MPS,
  MOST_EJECTION_AIRSPEED_MPS,
  ADVISED_LANDING_MPS,
  LANDINGS_INSIDE_SHARE,
  COLD_BELOW_K,
  // Of the scatter, one standard deviation each.
  IMPULSE_SCATTER_SHARE,
  DRAG_SCATTER_SHARE,
  DRAG_COEFFICIENT_SHARE,
  ALTIMETER_ERROR_SHARE,
  LEAST_ALTIMETER_ERROR_M,
  SIGHTED_ALTITUDE_ERROR_SHARE,
  ODD_ALTITUDE_SHARE,
  CANOPY_DRAG_SCATTER_SHARE,
  DELAY_SCATTER_SHARE,
  LEAST_DELAY_SCATTER_S,
  WIND_SCATTER_SHARE,
  WIND_DIRECTION_SCATTER_DEG,
  GUST_DEVIATIONS,
  ROD_TILT_SCATTER_DEG;

  /** As rule files name it. */
  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<Figure> find(String key) {
    return List.of(values()).stream().filter(figure -> figure.key().equals(key)).findFirst();
  }
}
