package padside.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import padside.preflight.Outlook;
import padside.units.Notations;
import padside.units.UnitSystem;

/** A predicted flight in lines for people. */
final class OutlookText {
  private OutlookText() {}

  static List<String> lines(Outlook flight, UnitSystem units) {
    List<String> lines = new ArrayList<>();
    boost(lines, flight, units);
    line(lines, "Best delay", Notations.timeSpan().show(flight.bestDelay()));
    for (Outlook.DelayFit fit : flight.delays()) {
      line(lines, "  delay " + fit.delay(), delay(fit, units));
    }
    descent(lines, flight, units);
    line(lines, "Motor data", flight.motorData());
    lines.add("");
    lines.add("A prediction, not a promise: it advises, you decide with your safety code,");
    lines.add("the site's rules and the range officer.");
    return lines;
  }

  private static void boost(List<String> lines, Outlook flight, UnitSystem units) {
    var altitude = Notations.altitude(units);
    var speed = Notations.flightSpeed(units);
    var time = Notations.timeSpan();
    line(lines, "Lift-off mass", Notations.mass(units).show(flight.liftoffMass()));
    line(lines, "Total impulse", Notations.impulse().show(flight.totalImpulse()));
    line(lines, "Thrust to weight", String.format(Locale.ROOT, "%.1f", flight.thrustToWeight()));
    line(lines, "Rod-exit speed", speed.show(flight.rodExitSpeed()));
    line(lines, "Largest speed", speed.show(flight.maxSpeed()));
    line(
        lines,
        "Burnout",
        altitude.show(flight.burnoutAltitude()) + " at " + time.show(flight.burnoutTime()));
    line(
        lines,
        "Apogee",
        altitude.show(flight.apogee()) + " at " + time.show(flight.timeToApogee()));
  }

  private static void descent(List<String> lines, Outlook flight, UnitSystem units) {
    line(
        lines,
        "Descent rate",
        flight
            .descentRate()
            .map(Notations.descentRate(units)::show)
            .orElse("nothing opens: ballistic"));
    line(lines, "Time aloft", Notations.timeSpan().show(flight.flightTime()));
    line(
        lines,
        "Landing",
        Notations.distance(units).show(flight.landingDistance())
            + " toward "
            + Notations.bearing().show(flight.landingBearing()));
  }

  private static String delay(Outlook.DelayFit fit, UnitSystem units) {
    double error = fit.error().seconds();
    return String.format(Locale.ROOT, "%.1f s %s", Math.abs(error), error < 0 ? "early" : "late")
        + ", "
        + Notations.altitude(units).show(fit.altitude())
        + " up at "
        + Notations.flightSpeed(units).show(fit.speed());
  }

  private static void line(List<String> lines, String name, String value) {
    lines.add(String.format(Locale.ROOT, "%-18s %s", name, value));
  }
}
