package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.insight.Drag;
import padside.preflight.Card;
import padside.preflight.Outlook;
import padside.preflight.Spread;
import padside.report.FlightWords;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** The flight to expect, as lines of one width: what decides at the pad first. */
final class OutlookText {
  private static final int LABEL_WIDTH = 15;
  private static final String SAFELY = " fire safely";
  private static final int SHARE_WIDTH = 10;
  private static final int WIDTH_FOR_SENTENCES = 50;

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
    delays();
    row("Landing", landing());
    outlook.spread().ifPresent(this::spread);
    outlook.sun().ifPresent(sun -> row("Sun", SunText.of(sun)));
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
    row("Air", air(outlook.densityAltitude(), units));
    row("Drag", outlook.drag().words());
    outlook.drag().learned().map(Drag::odd).orElse(List.of()).forEach(this::odd);
    row("Motor data", outlook.motorData());
    return lines;
  }

  /** The share that fires safely takes the place of words where the lines are short. */
  private void delays() {
    boolean shares = outlook.delays().stream().anyMatch(fit -> fit.safeShare().isPresent());
    boolean table = shares && width < WIDTH_FOR_SENTENCES;
    String best = CheckText.pad("Best delay", LABEL_WIDTH) + seconds(outlook.bestDelay());
    lines.add(Line.plain(table ? best + CheckText.padLeft(SAFELY, width - best.length()) : best));
    outlook.delays().forEach(fit -> lines.add(Line.plain(table ? cells(fit) : sentence(fit))));
  }

  private String sentence(Outlook.DelayFit fit) {
    String safely =
        fit.safeShare()
            .map(share -> "  " + CheckText.padLeft(share(share), SHARE_WIDTH) + SAFELY)
            .orElse("");
    return CheckText.pad(mark(fit) + "delay " + fit.delay(), LABEL_WIDTH)
        + CheckText.pad(early(fit.error()), 12)
        + CheckText.padLeft(airspeed(fit), 9)
        + safely;
  }

  private String cells(Outlook.DelayFit fit) {
    String text =
        CheckText.pad(mark(fit) + fit.delay(), 6)
            + CheckText.pad(early(fit.error()), 12)
            + CheckText.padLeft(airspeed(fit), 9);
    return text
        + CheckText.padLeft(
            fit.safeShare().map(OutlookText::share).orElse(""), width - text.length());
  }

  private String mark(Outlook.DelayFit fit) {
    return chosen.equals(Optional.of(fit.delay())) ? "> " : "  ";
  }

  private String airspeed(Outlook.DelayFit fit) {
    return Notations.flightSpeed(units).show(fit.airspeed());
  }

  /** Rounded down: what should be large must not look larger. */
  static String share(double share) {
    return (int) Math.floor(share * 100 + 1e-9) + " in 100";
  }

  private void spread(Spread spread) {
    spread.inside().ifPresent(inside -> row("Lands inside", share(inside)));
    for (Spread.Past past : spread.past()) {
      Paragraph.hanging("  lost: ", past(past), width).forEach(line -> lines.add(Line.plain(line)));
    }
  }

  /** How thin the air is: {@code as at 1240 ft (density altitude)}. */
  static String air(Length densityAltitude, UnitSystem units) {
    return "as at " + Notations.altitude(units).show(densityAltitude) + " (density altitude)";
  }

  /** How many of the landings something takes: {@code 5 to lane NE 280 ft (road)}. */
  static String past(Spread.Past past) {
    long of = Math.round(past.share() * 100);
    return (of == 0 ? "under 1" : of) + " to " + past.words();
  }

  /** An altitude that does not go with the others. */
  private void odd(Drag.Odd odd) {
    row(
        "  left out",
        height(odd.measured())
            + ", where "
            + Notations.altitude(units).showBare(odd.low())
            + " to "
            + height(odd.high())
            + " was likely: "
            + odd.cause());
  }

  private void ejection(Outlook.Ejection ejection) {
    row(
        "Ejection",
        "at "
            + height(ejection.altitude())
            + ", "
            + Notations.flightSpeed(units).show(ejection.airspeed()));
  }

  /** How far and where to it lands. */
  String landing() {
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
    Paragraph.hanging(CheckText.pad(label, LABEL_WIDTH), text, width)
        .forEach(line -> lines.add(Line.plain(line)));
  }

  static String seconds(TimeSpan span) {
    return FlightWords.seconds(span);
  }

  /** Tenths rounded down: what should be large must not look larger. */
  private static double notAbove(double value) {
    return Math.floor(value * 10) / 10.0;
  }
}
