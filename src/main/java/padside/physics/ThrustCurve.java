package padside.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.TimeSpan;

/**
 * Thrust against time from ignition, straight between its points, nothing after the last.
 *
 * <p>Points start at ignition and rise strictly in time.
 */
public record ThrustCurve(List<Point> points, Quality quality) {
  /** Thrust at one time after ignition. */
  public record Point(TimeSpan time, Force thrust) {
    static Point of(double seconds, double newtons) {
      return new Point(new TimeSpan(seconds), new Force(newtons));
    }

    double seconds() {
      return time.seconds();
    }

    double newtons() {
      return thrust.newtons();
    }
  }

  /** Where the shape comes from, best first. */
  public enum Quality {
    /** Points of a certification sheet or a static test. */
    ENTERED,
    /** Drawn from impulse, peak and three times. */
    FOUR_NUMBER,
    /** Constant average thrust: the shape is not known. */
    APPROXIMATE
  }

  /** Peak thrust and the times at which it is reached and has fallen to the sustained level. */
  public record Peak(Force thrust, TimeSpan at, TimeSpan sustainFrom) {
    /** The three together, or empty when any is missing. */
    public static Optional<Peak> of(
        Optional<Force> thrust, Optional<TimeSpan> at, Optional<TimeSpan> sustainFrom) {
      return thrust.flatMap(f -> at.flatMap(a -> sustainFrom.map(s -> new Peak(f, a, s))));
    }
  }

  /** Refuses curves that do not start at ignition, go back in time or never push. */
  public ThrustCurve {
    points = List.copyOf(points);
    RefusedInput.unless(
        points.size() >= 2,
        "A thrust curve needs at least two points; %d given.".formatted(points.size()));
    RefusedInput.unless(
        points.get(0).seconds() == 0, "A thrust curve starts at 0 s; add the first point.");
    double before = -1;
    for (Point point : points) {
      RefusedInput.unless(
          point.seconds() > before,
          say("Thrust curve times must rise, but %.4f s follows %.4f s.", point.seconds(), before));
      RefusedInput.unless(
          point.newtons() >= 0,
          say("Thrust %.3f N at %.4f s is negative.", point.newtons(), point.seconds()));
      before = point.seconds();
    }
    RefusedInput.unless(
        points.stream().anyMatch(p -> p.newtons() > 0), "The thrust curve is zero throughout.");
  }

  /**
   * A curve from entered points: one at 0 N is put at ignition when the first comes later, and
   * points after thrust has ended are dropped.
   */
  public static ThrustCurve ofPoints(List<Point> entered) {
    List<Point> points = new ArrayList<>(entered);
    if (!points.isEmpty() && points.get(0).seconds() > 0) {
      points.add(0, Point.of(0, 0));
    }
    int last = points.size() - 1;
    while (last > 1 && points.get(last).newtons() == 0 && points.get(last - 1).newtons() == 0) {
      points.remove(last--);
    }
    return new ThrustCurve(points, Quality.ENTERED);
  }

  /**
   * The best curve that catalogue figures allow: the four-number curve when peak and its times are
   * known, else constant thrust marked {@link Quality#APPROXIMATE}.
   */
  public static ThrustCurve of(Impulse impulse, TimeSpan burnTime, Optional<Peak> peak) {
    RefusedInput.unless(
        impulse.newtonSeconds() > 0,
        say("Total impulse %.3f N·s must be above zero.", impulse.newtonSeconds()));
    RefusedInput.unless(
        burnTime.seconds() > 0, say("Burn time %.3f s must be above zero.", burnTime.seconds()));
    return peak.map(p -> fourNumber(impulse, burnTime, p))
        .orElseGet(() -> constant(impulse, burnTime));
  }

  private static ThrustCurve constant(Impulse impulse, TimeSpan burnTime) {
    double average = impulse.newtonSeconds() / burnTime.seconds();
    return new ThrustCurve(
        List.of(Point.of(0, average), Point.of(burnTime.seconds(), average)), Quality.APPROXIMATE);
  }

  /**
   * Straight up to the peak Fm at tm, straight down to Fs at ts, Fs to burnout at tb: Topics in
   * Advanced Model Rocketry (MIT Press 1973), ch. 4 eqs. 73-75, solved for Fs from I = Fm ts/2 + Fs
   * (tb - tm/2 - ts/2).
   */
  private static ThrustCurve fourNumber(Impulse impulse, TimeSpan burnTime, Peak peak) {
    double fm = peak.thrust().newtons();
    double tm = peak.at().seconds();
    double ts = peak.sustainFrom().seconds();
    double tb = burnTime.seconds();
    RefusedInput.unless(
        0 < tm && tm < ts && ts < tb,
        say("Peak at %.3f s, sustain from %.3f s", tm, ts)
            + say(" and burnout at %.3f s must follow each other; check the motor's times.", tb));
    double fs = (impulse.newtonSeconds() - fm * ts / 2) / (tb - tm / 2 - ts / 2);
    RefusedInput.unless(
        fs >= 0,
        say("A peak of %.2f N lasting to %.3f s alone gives", fm, ts)
            + say(
                " %.3f N·s, more than the total impulse of %.3f N·s; check peak and impulse.",
                fm * ts / 2, impulse.newtonSeconds()));
    RefusedInput.unless(
        fs <= fm,
        say("An impulse of %.3f N·s in %.3f s", impulse.newtonSeconds(), tb)
            + say(" needs more than the peak of %.2f N; check peak and impulse.", fm));
    return new ThrustCurve(
        List.of(Point.of(0, 0), Point.of(tm, fm), Point.of(ts, fs), Point.of(tb, fs)),
        Quality.FOUR_NUMBER);
  }

  /** Area under the whole curve. */
  public Impulse impulse() {
    return impulseUntil(burnTime());
  }

  /** Area under the curve from ignition to a time. */
  public Impulse impulseUntil(TimeSpan time) {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      double end = Math.min(points.get(i).seconds(), time.seconds());
      if (end > a.seconds()) {
        sum += (end - a.seconds()) * (a.newtons() + between(a, points.get(i), end)) / 2;
      }
    }
    return new Impulse(sum);
  }

  /** Ignition to the end of thrust. */
  public TimeSpan burnTime() {
    return points.get(points.size() - 1).time();
  }

  /** Thrust at a time after ignition. */
  public Force thrustAt(TimeSpan time) {
    double t = time.seconds();
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      if (t >= a.seconds() && t <= points.get(i).seconds()) {
        return new Force(between(a, points.get(i), t));
      }
    }
    return new Force(0);
  }

  /** Total impulse over burn time. */
  public Force averageThrust() {
    return new Force(impulse().newtonSeconds() / burnTime().seconds());
  }

  /** The largest thrust. */
  public Force peakThrust() {
    return new Force(points.stream().mapToDouble(Point::newtons).max().orElseThrow());
  }

  private static double between(Point a, Point b, double seconds) {
    double share = (seconds - a.seconds()) / (b.seconds() - a.seconds());
    return a.newtons() + share * (b.newtons() - a.newtons());
  }

  private static String say(String sentence, Object... values) {
    return String.format(Locale.ROOT, sentence, values);
  }
}
