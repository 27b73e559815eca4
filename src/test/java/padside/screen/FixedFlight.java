package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.insight.Confidence;
import padside.preflight.Answer;
import padside.preflight.DragUsed;
import padside.preflight.Outlook;
import padside.preflight.Spread;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;

/** A made-up flight for the looks of screens: its numbers fit together only roughly. */
final class FixedFlight {
  private static final Length APOGEE = Length.ofFeet(913);
  private static final double APOGEE_S = 6.1;
  private static final double BURNOUT_M = 68;
  private static final double BURNOUT_S = 1.86;
  private static final double EJECTION_M = 274;
  private static final double EJECTION_S = 6.9;
  private static final double FLIGHT_S = 71;

  private FixedFlight() {}

  static Outlook outlook() {
    return toldWith(Confidence.usual());
  }

  /** The same with what is told holding more or less. */
  static Outlook toldWith(Confidence confidence) {
    return of(Optional.of(spread()), true, confidence);
  }

  /** The same in a wind nobody looked at the direction of. */
  static Outlook withoutDirection() {
    return of(Optional.empty(), false, Confidence.usual());
  }

  /** An answer with another flight. */
  static Answer in(Answer answer, Outlook flight) {
    return new Answer(
        answer.ruling(),
        answer.headline(),
        Optional.of(flight),
        answer.reminders(),
        answer.advice());
  }

  private static Outlook of(Optional<Spread> spread, boolean bearingKnown, Confidence confidence) {
    return new Outlook(
        Mass.ofOunces(4.2),
        new Impulse(8.8),
        7.6,
        new Speed(18.7),
        new Speed(92),
        new Length(BURNOUT_M),
        new TimeSpan(BURNOUT_S),
        APOGEE,
        new TimeSpan(APOGEE_S),
        new Outlook.Top(APOGEE, Optional.of(Length.ofFeet(600)), Optional.of(Length.ofFeet(900))),
        confidence,
        new DragUsed(0.75, "as typed", Optional.empty()),
        new TimeSpan(4.24),
        List.of(fit("3", -1.2, 11.7, 0.71), fit("5", 0.8, 7.6, 0.968), fit("7", 2.8, 26.9, 0.04)),
        Optional.of(
            new Outlook.Ejection(
                new TimeSpan(EJECTION_S), new Length(EJECTION_M), new Speed(7.6), new Speed(7.6))),
        Optional.of(new Speed(4.3)),
        new TimeSpan(FLIGHT_S),
        new Bearing(45),
        bearingKnown,
        Length.ofFeet(263),
        "thrust curve drawn from four numbers; from memory, high confidence, unverified",
        Length.ofFeet(1240),
        path(),
        spread,
        Optional.of(
            new Outlook.InSun(
                new Bearing(165),
                Angle.ofDegrees(42),
                new Bearing(180),
                Length.ofFeet(60),
                Angle.ofDegrees(71),
                Angle.ofDegrees(80))));
  }

  private static Spread spread() {
    return new Spread(
        1000,
        area(255, 45, 70, 40),
        area(255, 45, 128, 73),
        area(90, 225, 40, 20),
        area(90, 225, 73, 36),
        Optional.of(0.934),
        List.of(
            new Spread.Past("lane NE 280 ft (road)", 0.052),
            new Spread.Past("pond", 0.011),
            new Spread.Past("wood E 330 ft (trees)", 0.003)));
  }

  private static Spread.Area area(double feet, double bearing, double along, double aside) {
    double turn = Math.toRadians(bearing);
    return new Spread.Area(
        Length.ofFeet(feet * Math.sin(turn)),
        Length.ofFeet(feet * Math.cos(turn)),
        Length.ofFeet(along),
        Length.ofFeet(aside),
        new Bearing(bearing));
  }

  /** Parabolas up to burnout and apogee, a straight line down under the parachute. */
  private static List<Outlook.PathPoint> path() {
    List<Outlook.PathPoint> path = new ArrayList<>();
    for (double time = 0; time <= FLIGHT_S; time += 0.25) {
      Length drift = Length.ofFeet(263 * Math.sqrt(0.5) * time / FLIGHT_S);
      path.add(new Outlook.PathPoint(new TimeSpan(time), drift, drift, new Length(heightM(time))));
    }
    return path;
  }

  private static double heightM(double time) {
    if (time <= BURNOUT_S) {
      return BURNOUT_M * Math.pow(time / BURNOUT_S, 2);
    }
    double below = Math.pow((APOGEE_S - time) / (APOGEE_S - BURNOUT_S), 2);
    double coastM = APOGEE.metres() - (APOGEE.metres() - BURNOUT_M) * below;
    return time <= EJECTION_S ? coastM : EJECTION_M * (FLIGHT_S - time) / (FLIGHT_S - EJECTION_S);
  }

  private static Outlook.DelayFit fit(String delay, double error, double speed, double safe) {
    return new Outlook.DelayFit(
        delay,
        new TimeSpan(error),
        Length.ofFeet(880),
        new Speed(speed),
        new Speed(speed),
        Optional.of(safe));
  }
}
