package padside.app;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padside.motor.MotorStack;
import padside.preflight.Card;
import padside.preflight.DragUsed;
import padside.preflight.Outlook;
import padside.units.Length;

/** A predicted flight as the JSON object of {@code predict --json}: SI, units in the names. */
final class PredictionJson {
  private PredictionJson() {}

  static Map<String, Object> of(Card card, Outlook flight) {
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
    json.put("top", top(flight.top()));
    json.put("drag", drag(flight.drag()));
    json.put("best_delay_s", flight.bestDelay().seconds());
    json.put("delays", delays(flight));
    json.put("ejection", flight.ejection().map(PredictionJson::ejection).orElse(null));
    json.put(
        "descent_rate_mps", flight.descentRate().map(rate -> rate.metresPerSecond()).orElse(null));
    json.put("flight_time_s", flight.flightTime().seconds());
    json.put("landing", landing(flight));
    json.put("density_altitude_m", flight.densityAltitude().metres());
    card.motors()
        .filter(stack -> stack.motors().size() > 1)
        .ifPresent(stack -> json.put("stages", stages(stack)));
    json.put("confidence_share", flight.confidence().share());
    json.put(
        "spread",
        flight.spread().map(each -> SpreadJson.of(each, flight.confidence())).orElse(null));
    json.put("sun", flight.sun().map(PredictionJson::sun).orElse(null));
    return json;
  }

  private static Map<String, Object> top(Outlook.Top top) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("height_m", top.height().metres());
    json.put("low_m", top.low().map(Length::metres).orElse(null));
    json.put("high_m", top.high().map(Length::metres).orElse(null));
    return json;
  }

  private static Map<String, Object> drag(DragUsed drag) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("coefficient", drag.coefficient());
    json.put("why", drag.why());
    drag.learned()
        .ifPresent(
            learned -> {
              json.put("learned", learned.middle());
              json.put("low", learned.low());
              json.put("high", learned.high());
              json.put("flights", learned.flights().size());
              json.put("left_out", learned.odd().size());
            });
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
              row.put("safe_share", fit.safeShare().orElse(null));
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

  /** From the ground up. */
  private static List<Map<String, Object>> stages(MotorStack stack) {
    return stack.stages().stream()
        .map(
            stage -> {
              Map<String, Object> row = new LinkedHashMap<>();
              row.put("motor", stage.motor().designation());
              row.put("count", stage.count());
              return row;
            })
        .toList();
  }

  private static Map<String, Object> sun(Outlook.InSun sun) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("azimuth_deg", sun.azimuth().degrees());
    json.put("elevation_deg", Math.toDegrees(sun.elevation().radians()));
    json.put("stand_deg", sun.stand().degrees());
    json.put("stand_off_m", sun.standOff().metres());
    json.put("clearance_deg", Math.toDegrees(sun.clearance().radians()));
    json.put("apogee_clearance_deg", Math.toDegrees(sun.apogeeClearance().radians()));
    return json;
  }
}
