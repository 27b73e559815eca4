package padside.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.physics.Air;
import padside.units.Length;
import padside.units.Pressure;
import padside.units.Speed;
import padside.units.TimeSpan;

/** Finds one thing after the other in the samples of one flight. */
final class TraceSearch {
  /** Slower than this the way up is too few samples to take a speed from. */
  private static final double SPEED_INTERVAL_S = 0.11;

  private static final double SPEED_HALF_S = 0.25;
  private static final double SPEED_SHARE = 0.1;
  private static final double BEFORE_S = 2;
  private static final double AFTER_S = 3;

  private final TraceFile file;
  private final TraceAir air;
  private final Curve curve;
  private final LiftOff liftOff;
  private final double fastestAt;
  private final Optional<Double> level;
  private final double lastAloft;
  private final Optional<Ejection.Bend> bend;
  private final Apex apex;
  private final Optional<Descent.Lines> lines;

  TraceSearch(TraceFile file, Samples samples, TraceAir air) {
    this.file = file;
    this.air = air;
    double interval = samples.interval().orElse(1);
    double[] heights = samples.levels();
    curve = new Curve(samples.times(), file.hasPressures() ? heights(heights) : heights, interval);
    liftOff = LiftOff.of(curve);
    double top = curve.calm[curve.highest()];
    fastestAt = fastestAt();
    level = TouchDown.level(curve, top - 0.3 * (top - liftOff.ground()));
    double clear = Math.max(1.5, 3 * curve.noise);
    int last = level.map(l -> TouchDown.lastAbove(curve, l, clear)).orElse(curve.size - 1);
    lastAloft = curve.t[Math.max(0, last)];
    bend = Ejection.of(curve, fastestAt, lastAloft);
    apex = Apex.of(curve, bend.map(Ejection.Bend::time).orElse(Double.MAX_VALUE));
    lines = bend.flatMap(b -> Descent.of(curve, Math.max(b.time(), apex.time()), lastAloft));
  }

  /** Above the first pressures, which are those on the pad. */
  private double[] heights(double[] pressures) {
    double pad = Medians.of(pressures, 0, Math.min(pressures.length, 9));
    double[] heights = new double[pressures.length];
    for (int i = 0; i < heights.length; i++) {
      heights[i] =
          Air.heightAt(new Pressure(pressures[i]), new Pressure(pad), air.atGround()).metres();
    }
    return heights;
  }

  private double fastestAt() {
    int top = curve.highest();
    double half = Math.max(0.2, curve.interval / 2);
    double best = 0;
    double at = Math.min(liftOff.time(), curve.t[top]);
    for (int i = curve.at(liftOff.time()); i <= top; i++) {
      int before = curve.at(curve.t[i] - half);
      int after = Math.min(top, curve.at(curve.t[i] + half));
      double time = curve.t[after] - curve.t[before];
      double climb = time > 0 ? (curve.calm[after] - curve.calm[before]) / time : 0;
      if (climb > best) {
        best = climb;
        at = curve.t[i];
      }
    }
    return at;
  }

  TraceFinding finding() {
    Found<Length> apogee = apogee();
    List<String> told = new ArrayList<>(file.told());
    told.addAll(said());
    return new TraceFinding(
        new TraceFinding.Source(
            file.name(), file.hasPressures(), curve.size, new TimeSpan(curve.interval)),
        liftOff.time(),
        apogee,
        since(apex.time(), apex.timeWithin()),
        bend.map(b -> since(b.time(), b.within())).orElseGet(this::noEjection),
        bend.filter(Ejection.Bend::spike).isPresent(),
        rates(),
        touchdown(),
        fastest(),
        apogee.value().flatMap(this::otherAir),
        new Length(curve.noise),
        told,
        kept());
  }

  private Found<Length> apogee() {
    double within = Math.hypot(apex.heightWithin(), liftOff.groundWithin());
    return Found.of(new Length(apex.height() - liftOff.ground()), new Length(within));
  }

  private Optional<Length> otherAir(Length apogee) {
    return file.hasPressures()
        ? air.temperature().map(any -> air.asStandard(apogee))
        : air.warmed(apogee);
  }

  /** A time by the file's clock as one from lift-off. */
  private Found<TimeSpan> since(double time, double within) {
    return liftOff.why().isEmpty()
        ? Found.of(
            new TimeSpan(time - liftOff.time()), new TimeSpan(Math.hypot(within, liftOff.within())))
        : Found.absent(liftOff.why() + ", so that no time from lift-off is known");
  }

  private Found<TimeSpan> noEjection() {
    return Found.absent(
        "no spike and no bend from free flight into a steady descent is to be seen");
  }

  private List<TraceFinding.Rate> rates() {
    return lines.stream()
        .flatMap(all -> all.pieces().stream())
        .filter(piece -> piece.rate() > 0)
        .map(
            piece ->
                new TraceFinding.Rate(
                    new TimeSpan(piece.from() - liftOff.time()),
                    new TimeSpan(piece.to() - liftOff.time()),
                    new Speed(piece.rate()),
                    new Speed(piece.within())))
        .toList();
  }

  private Optional<TouchDown> down() {
    return level.flatMap(
        l ->
            lines
                .filter(all -> all.pieces().get(all.pieces().size() - 1).rate() > 0.2)
                .map(all -> TouchDown.of(curve, l, all))
                .or(() -> Optional.of(new TouchDown(l, lastAloft, 2 * curve.interval))));
  }

  private Found<TimeSpan> touchdown() {
    Optional<TouchDown> down = down();
    if (down.isPresent()) {
      return since(down.get().time(), down.get().within());
    }
    return Found.absent(
        String.format(
            Locale.ROOT,
            "the file ends %.0f m above the ground, before it came to rest",
            Math.max(0, curve.calm[curve.size - 1] - liftOff.ground())));
  }

  private Found<Speed> fastest() {
    if (curve.interval > SPEED_INTERVAL_S) {
      return Found.absent("fewer than ten samples a second tell no speed");
    }
    Optional<LeastSquares.Solution> fit =
        curve.fit(fastestAt - SPEED_HALF_S, fastestAt + SPEED_HALF_S, fastestAt, 3);
    if (fit.isEmpty() || !liftOff.why().isEmpty()) {
      return Found.absent("there are too few samples of the climb");
    }
    double speed = fit.get().values()[1];
    double sigma = Math.max(curve.noise, Math.sqrt(fit.get().misfit() / 3));
    double spread = sigma * Math.sqrt(fit.get().inverse()[1][1]);
    double within = Math.hypot(spread, Math.abs(fit.get().values()[2]) * SPEED_HALF_S / 2);
    return within <= SPEED_SHARE * speed
        ? Found.of(new Speed(speed), new Speed(within))
        : Found.absent(
            String.format(
                Locale.ROOT, "the noise leaves it uncertain by %.0f %%", 100 * within / speed));
  }

  private List<String> said() {
    List<String> said = new ArrayList<>();
    said.add(
        String.format(
            Locale.ROOT,
            "%,d samples, one each %.3g s, with a noise of %.2g m.",
            curve.size,
            curve.interval,
            curve.noise));
    if (curve.interval > 0.6) {
      said.add("So few samples a second tell an ejection to a second or two, no better.");
    }
    return said;
  }

  private KeptTrace kept() {
    double from = liftOff.time() - BEFORE_S;
    double to = down().map(d -> d.time() + AFTER_S).orElse(Double.MAX_VALUE);
    int first = curve.at(from);
    int end = Math.min(curve.size, curve.at(to) + 1);
    List<KeptTrace.Point> points = new ArrayList<>();
    for (int i = first; i < end; i++) {
      points.add(point(curve.t[i], curve.h[i]));
    }
    return Thinning.of(points, new Length(curve.noise))
        .named(file.name(), file.crc32(), curve.size, marks());
  }

  private KeptTrace.Point point(double time, double height) {
    return new KeptTrace.Point(
        new TimeSpan(time - liftOff.time()), new Length(height - liftOff.ground()));
  }

  private List<KeptTrace.Mark> marks() {
    List<KeptTrace.Mark> marks = new ArrayList<>();
    marks.add(mark(KeptTrace.Event.APOGEE, apex.time(), apex.height()));
    bend.ifPresent(b -> marks.add(mark(KeptTrace.Event.EJECTION, b.time(), beside(b.time()))));
    lines
        .filter(all -> all.pieces().size() == 2)
        .map(all -> all.pieces().get(1).from())
        .ifPresent(t -> marks.add(mark(KeptTrace.Event.SECOND, t, beside(t))));
    down().ifPresent(d -> marks.add(mark(KeptTrace.Event.TOUCHDOWN, d.time(), d.level())));
    return marks;
  }

  private KeptTrace.Mark mark(KeptTrace.Event event, double time, double height) {
    return new KeptTrace.Mark(event, point(time, height));
  }

  private double beside(double time) {
    return curve.calm[Math.min(curve.size - 1, curve.at(time))];
  }
}
