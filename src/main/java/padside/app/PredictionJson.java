package padside.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padside.preflight.Outlook;

/** A predicted flight as the JSON object of {@code predict --json}: SI, units in the names. */
final class PredictionJson {
  private PredictionJson() {}

  static Map<String, Object> of(Outlook flight) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("liftoff_mass_kg", flight.liftoffMass().kilograms());
    json.put("total_impulse_ns", flight.totalImpulse().newtonSeconds());
    json.put("thrust_to_weight", flight.thrustToWeight());
    json.put("rod_exit_speed_mps", flight.rodExitSpeed().metresPerSecond());
    json.put("max_speed_mps", flight.maxSpeed().metresPerSecond());
    json.put("burnout_altitude_m", flight.burnoutAltitude().metres());
    json.put("burnout_time_s", flight.burnoutTime().seconds());
    json.put("apogee_m", flight.apogee().metres());
    json.put("time_to_apogee_s", flight.timeToApogee().seconds());
    json.put("best_delay_s", flight.bestDelay().seconds());
    json.put("delays", delays(flight));
    json.put("ejection", flight.ejection().map(PredictionJson::ejection).orElse(null));
    json.put(
        "descent_rate_mps", flight.descentRate().map(rate -> rate.metresPerSecond()).orElse(null));
    json.put("flight_time_s", flight.flightTime().seconds());
    json.put("landing", landing(flight));
    return json;
  }

  private static List<Map<String, Object>> delays(Outlook flight) {
    return flight.delays().stream()
        .map(
            fit -> {
              Map<String, Object> row = new LinkedHashMap<>();
              row.put("delay_s", Double.parseDouble(fit.delay()));
              row.put("error_s", fit.error().seconds());
              row.put("altitude_m", fit.altitude().metres());
              row.put("speed_mps", fit.speed().metresPerSecond());
              return row;
            })
        .toList();
  }

  private static Map<String, Object> ejection(Outlook.Ejection ejection) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("time_s", ejection.time().seconds());
    json.put("altitude_m", ejection.altitude().metres());
    json.put("speed_mps", ejection.speed().metresPerSecond());
    return json;
  }

  private static Map<String, Object> landing(Outlook flight) {
    double distance = flight.landingDistance().metres();
    double bearing = flight.landingBearing().inRadians();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("east_m", distance * Math.sin(bearing));
    json.put("north_m", distance * Math.cos(bearing));
    json.put("distance_m", distance);
    json.put("bearing_deg", flight.landingBearing().degrees());
    return json;
  }
}
