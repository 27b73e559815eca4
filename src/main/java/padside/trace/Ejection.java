package padside.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When the ejection charge fired: a spike of the pressure in the body, a bend where free flight
 * turns into a settled descent, or both.
 */
final class Ejection {
  /** Free flight is looked at for so long before the bend, the descent for so long after it. */
  private static final double BEFORE_S = 1.5;

  private static final double AFTER_S = 2;
  private static final int LEAST_SAMPLES = 4;

  /** More noise than this wants more of the flight to see a bend in. */
  private static final double NOISY_M = 1;

  private static final double GRAVITY = padside.physics.Flight.STANDARD_GRAVITY_MPS2;

  /** Improvement in chi square a bend has to bring; 99.99 % of two more unknowns is 18. */
  private static final double SURE = 25;

  /** How fast what hangs below a canopy takes its speed: its rate of descent over g. */
  private static final double[] SETTLING_S = {0.15, 0.35, 0.7, 1.2};

  private static final double SPIKE_APART_S = 0.3;
  private static final double SPIKE_NEAR_S = 1.2;

  private final Curve curve;
  private final double from;
  private final double to;
  private final double before;
  private final double after;

  /**
   * What was found.
   *
   * @param time by the file's time
   * @param spike whether there is a spike there
   */
  record Bend(double time, double within, boolean spike) {}

  /** A run of wild samples. */
  private record Spike(double start, double end, double strength, int samples) {}

  private Ejection(Curve curve, double from, double to) {
    this.curve = curve;
    this.from = from;
    this.to = to;
    double longer = curve.noise > NOISY_M ? 1.6 : 1;
    before = Math.max(BEFORE_S * longer, LEAST_SAMPLES * curve.interval);
    after = Math.max(AFTER_S * longer, LEAST_SAMPLES * curve.interval);
  }

  /** Looked for between the fastest climb and the touchdown. */
  static Optional<Bend> of(Curve curve, double from, double to) {
    Ejection search = new Ejection(curve, from, to);
    Optional<Bend> bend = search.bend();
    return search.spike(bend).or(() -> bend);
  }

  private Optional<Bend> bend() {
    double step = Math.max(0.1, curve.interval / 2);
    double best = 0;
    double rough = Double.NaN;
    for (double at = from + step; at < to - Math.min(after, 1.5); at += step) {
      double gain = gain(at);
      if (gain > best) {
        best = gain;
        rough = at;
      } else if (best > SURE && at > rough + 3) {
        break; // the first one: a second device opening further down is no ejection
      }
    }
    return best > SURE ? Optional.of(refined(rough)) : Optional.empty();
  }

  /** By how much a bend here fits better than one arc. */
  private double gain(double at) {
    Optional<LeastSquares.Solution> arc = curve.fit(at - before, at + after, at, 3);
    Optional<Bent> bent = bent(at, at - before, at + after);
    if (arc.isEmpty() || bent.isEmpty() || !bent.get().isEjection()) {
      return 0;
    }
    return (arc.get().misfit() - bent.get().misfit) / (curve.noise * curve.noise);
  }

  /**
   * An arc up to a moment and from there the way a falling body takes up a steady rate.
   *
   * @param slope at the bend
   * @param bow acceleration before it
   * @param rate of the descent, downward
   */
  private record Bent(double misfit, double slope, double bow, double rate) {
    boolean isEjection() {
      boolean falls = bow < -0.45 * GRAVITY;
      boolean braked = slope < -1.6 * rate - 3 && rate > 0;
      return rate > -1 && (falls || braked);
    }
  }

  private Optional<Bent> bent(double at, double start, double end) {
    Optional<Bent> best = Optional.empty();
    for (double tau : SETTLING_S) {
      LeastSquares squares = new LeastSquares(4);
      int earlier = 0;
      int later = 0;
      for (int i = curve.at(start); i < curve.size && curve.t[i] <= end; i++) {
        if (!curve.wild[i]) {
          double s = curve.t[i] - at;
          squares.add(row(s, tau), curve.h[i], 1);
          earlier += s < 0 ? 1 : 0;
          later += s > 0 ? 1 : 0;
        }
      }
      if (earlier < 3 || later < 3) {
        return Optional.empty();
      }
      Optional<Bent> bent =
          squares
              .solve()
              .map(
                  found -> {
                    double[] v = found.values();
                    return new Bent(found.misfit(), v[1], 2 * v[2], v[3]);
                  });
      if (bent.isPresent() && bent.get().misfit < best.map(Bent::misfit).orElse(Double.MAX_VALUE)) {
        best = bent;
      }
    }
    return best;
  }

  private static double[] row(double s, double tau) {
    if (s < 0) {
      return new double[] {1, s, s * s, 0};
    }
    double settled = tau * (1 - Math.exp(-s / tau));
    return new double[] {1, settled, 0, -(s - settled)};
  }

  /** The best moment near a rough one, all held against the same samples. */
  private Bend refined(double rough) {
    double start = rough - before - 0.5;
    double end = rough + after + 0.5;
    double step = Math.max(0.02, curve.interval / 10);
    double reach = Math.max(0.8, 2 * curve.interval);
    List<double[]> costs = new ArrayList<>();
    double[] best = {rough, Double.MAX_VALUE};
    for (double at = rough - reach; at <= rough + reach; at += step) {
      double misfit = bent(at, start, end).map(Bent::misfit).orElse(Double.MAX_VALUE);
      double[] cost = {at, misfit};
      costs.add(cost);
      best = misfit < best[1] ? cost : best;
    }
    double bound = best[1] + curve.noise * curve.noise;
    double low = best[0];
    double high = best[0];
    for (double[] cost : costs) {
      if (cost[1] <= bound) {
        low = Math.min(low, cost[0]);
        high = Math.max(high, cost[0]);
      }
    }
    // A canopy takes a moment to fill, which no bend can tell from the charge.
    double within = Math.max((high - low) / 2, Math.max(0.1, curve.interval / 2));
    return new Bend(best[0], within, false);
  }

  /** The start of the spike at the bend, or without a bend of the one spike there is. */
  private Optional<Bend> spike(Optional<Bend> bend) {
    List<Spike> all = spikes();
    double near = bend.map(b -> Math.max(SPIKE_NEAR_S, 3 * b.within)).orElse(0.0);
    Optional<Spike> beside =
        bend.flatMap(
            b -> strongest(all.stream().filter(s -> Math.abs(s.start - b.time) <= near).toList()));
    Optional<Spike> found = beside.or(() -> alone(all).filter(s -> bend.isEmpty() || isPlain(s)));
    return found.map(
        s -> new Bend(s.start - curve.interval / 2, Math.max(0.01, curve.interval / 2), true));
  }

  private static Optional<Spike> strongest(List<Spike> spikes) {
    return spikes.stream().max((a, b) -> Double.compare(a.strength, b.strength));
  }

  private Optional<Spike> alone(List<Spike> all) {
    Optional<Spike> first = strongest(all);
    double second =
        all.stream()
            .filter(s -> !Optional.of(s).equals(first))
            .mapToDouble(Spike::strength)
            .max()
            .orElse(0);
    return first.filter(s -> s.strength > 2 * second && (s.samples > 1 || curve.interval > 0.08));
  }

  /** Too strong and long for anything but a charge, wherever the bend is. */
  private boolean isPlain(Spike spike) {
    return spike.strength > 8 * curve.noise && spike.samples > 2;
  }

  private List<Spike> spikes() {
    List<Spike> all = new ArrayList<>();
    int end = curve.at(to);
    for (int i = curve.at(from); i < end; i++) {
      if (curve.wild[i]) {
        double off = Math.abs(curve.h[i] - curve.calm[i]);
        Spike last = all.isEmpty() ? null : all.get(all.size() - 1);
        if (last != null && curve.t[i] - last.end <= SPIKE_APART_S) {
          all.set(
              all.size() - 1,
              new Spike(last.start, curve.t[i], Math.max(off, last.strength), last.samples + 1));
        } else {
          all.add(new Spike(curve.t[i], curve.t[i], off, 1));
        }
      }
    }
    return all.stream().map(this::atItsRise).toList();
  }

  /** The median before a spike is drawn along by it: it begins where it is half its strength. */
  private Spike atItsRise(Spike spike) {
    int i = curve.at(spike.start);
    while (Math.abs(curve.h[i] - curve.calm[i]) < spike.strength / 2) {
      i++;
    }
    return new Spike(curve.t[i], spike.end, spike.strength, spike.samples);
  }
}
