package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.preflight.Card;
import padside.preflight.Outlook;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** The flight to expect, as lines of one width: what decides at the pad first. */
final class OutlookText {
  private static final int LABEL_WIDTH = 15;

  private final Outlook outlook;
  private final Optional<String> chosen;
  private final String heading;
  private final int width;
  private final UnitSystem units;
  private final List<Line> lines = new ArrayList<>();

  OutlookText(LiveCheck check, Outlook outlook, int width, UnitSystem units) {
    this.outlook = outlook;
    this.chosen = check.asked().flatMap(Card::motors).map(motors -> motors.top().motor().delay());
    this.heading =
        check.asked().flatMap(Card::wind).isPresent()
            ? "Expected flight"
            : "Expected flight, were it calm";
    this.width = width;
    this.units = units;
  }

  /** One line for where there is little room: apogee and how the chosen delay fits. */
  String brief() {
    String fit =
        outlook.delays().stream()
            .filter(each -> chosen.equals(Optional.of(each.delay())))
            .findFirst()
            .map(each -> " · delay " + each.delay() + ": " + early(each.error()))
            .orElse("");
    return "apogee " + height(outlook.apogee()) + fit + " · best " + seconds(outlook.bestDelay());
  }

  /** How a delay fits, in words. */
  static String early(TimeSpan error) {
    String size = seconds(new TimeSpan(Math.abs(error.seconds())));
    return size.equals("0 s") ? "on time" : size + (error.seconds() < 0 ? " early" : " late");
  }

  /** The whole of it. */
  List<Line> lines() {
    lines.add(Line.strong(heading));
    row("Apogee", height(outlook.apogee()) + " after " + seconds(outlook.timeToApogee()));
    row("Best delay", seconds(outlook.bestDelay()));
    outlook.delays().forEach(this::delay);
    row("Landing", landing());
    row(
        "Descent",
        outlook
            .descentRate()
            .map(rate -> Notations.descentRate(units).show(rate))
            .orElse("nothing opens: it falls"));
    row("Rod exit", Notations.flightSpeed(units).show(outlook.rodExitSpeed()));
    row("Thrust/weight", Notations.number().show(notAbove(outlook.thrustToWeight())));
    row("Lift-off mass", Notations.mass(units).show(outlook.liftoffMass()));
    outlook.ejection().ifPresent(this::ejection);
    row("Flight time", Math.round(outlook.flightTime().seconds()) + " s");
    row("Fastest", Notations.flightSpeed(units).show(outlook.maxSpeed()));
    row("Motor data", outlook.motorData());
    return lines;
  }

  private void delay(Outlook.DelayFit fit) {
    boolean own = chosen.equals(Optional.of(fit.delay()));
    row(
        (own ? "> " : "  ") + "delay " + fit.delay(),
        CheckText.pad(early(fit.error()), 12) + Notations.flightSpeed(units).show(fit.airspeed()));
  }

  private void ejection(Outlook.Ejection ejection) {
    row(
        "Ejection",
        "at "
            + height(ejection.altitude())
            + ", "
            + Notations.flightSpeed(units).show(ejection.airspeed()));
  }

  private String landing() {
    String distance = Notations.distance(units).show(outlook.landingDistance());
    if (distance.startsWith("0 ")) {
      return "at the pad";
    }
    return outlook.bearingKnown()
        ? distance + " toward " + Notations.bearing().show(outlook.landingBearing())
        : distance + ", where is unknown";
  }

  private String height(Length height) {
    return Notations.altitude(units).show(height);
  }

  private void row(String label, String text) {
    List<String> wrapped = Paragraph.lines(text, Math.max(8, width - LABEL_WIDTH));
    for (int i = 0; i < wrapped.size(); i++) {
      lines.add(Line.plain(CheckText.pad(i == 0 ? label : "", LABEL_WIDTH) + wrapped.get(i)));
    }
  }

  /** Tenths: the delay of a motor is not known better. */
  static String seconds(TimeSpan span) {
    return Notations.timeSpan().show(new TimeSpan(tenths(span.seconds())));
  }

  /** Tenths rounded down: what should be large must not look larger. */
  private static double notAbove(double value) {
    return Math.floor(value * 10) / 10.0;
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
