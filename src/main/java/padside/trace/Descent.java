package padside.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way down after the ejection: one straight line, or two that meet where a second device opens
 * (segmented regression; Muggeo, Stat. Med. 22, 2003, 3055), whichever Schwarz's criterion (Ann.
 * Stat. 6, 1978, 461) favours and the rates tell apart.
 */
final class Descent {
  private static final double SETTLING_S = 1.5;
  private static final double LEAST_APART = 1.25;
  private static final int BREAKS = 60;

  /**
   * One piece of it.
   *
   * @param from by the file's time
   * @param rate downward
   */
  record Piece(double from, double to, double rate, double within) {}

  /**
   * All of it.
   *
   * @param end height of the last line at the last sample used
   */
  record Lines(List<Piece> pieces, double end, double endTime, double endWithin) {}

  private Descent() {}

  /** Between the ejection and a time still well above the ground. */
  static Optional<Lines> of(Curve curve, double ejection, double to) {
    double from = ejection + Math.min(SETTLING_S, (to - ejection) / 3);
    if (to - from < Math.max(1.5, 3 * curve.interval) || curve.calmBetween(from, to) < 4) {
      return Optional.empty();
    }
    Optional<LeastSquares.Solution> one = curve.fit(from, to, to, 2);
    Optional<Two> two = two(curve, from, to);
    double n = curve.calmBetween(from, to);
    double variance = curve.noise * curve.noise;
    boolean split =
        two.isPresent()
            && one.isPresent()
            && two.get().apart() > LEAST_APART
            && one.get().misfit() - two.get().found.misfit()
                > Math.max(2 * Math.log(n) * spread(two.get(), n, variance), 0);
    return split
        ? two.map(t -> lines(curve, t, from, to))
        : one.map(o -> lines(curve, o, from, to));
  }

  private static double spread(Two two, double n, double variance) {
    return Math.max(variance, two.found.misfit() / Math.max(1, n - 4));
  }

  /** Two lines that meet at a break. */
  private record Two(LeastSquares.Solution found, double at) {
    double upper() {
      return -found.values()[1];
    }

    double lower() {
      return -(found.values()[1] + found.values()[2]);
    }

    double apart() {
      double least = Math.min(upper(), lower());
      return least <= 0.3 ? 0 : Math.max(upper(), lower()) / least;
    }
  }

  private static Optional<Two> two(Curve curve, double from, double to) {
    double margin = Math.max(2, 3 * curve.interval);
    Optional<Two> best = Optional.empty();
    for (int k = 0; k <= BREAKS; k++) {
      double at = from + margin + (to - from - 2 * margin) * k / BREAKS;
      if (at < from + margin || at > to - margin) {
        continue;
      }
      LeastSquares squares = new LeastSquares(3);
      for (int i = curve.at(from); i < curve.size && curve.t[i] <= to; i++) {
        if (!curve.wild[i]) {
          double s = curve.t[i] - at;
          squares.add(new double[] {1, s, Math.max(0, s)}, curve.h[i], 1);
        }
      }
      Optional<Two> here = squares.solve().map(found -> new Two(found, at));
      if (here.isPresent()
          && here.get().found.misfit() < best.map(b -> b.found.misfit()).orElse(Double.MAX_VALUE)) {
        best = here;
      }
    }
    return best;
  }

  private static Lines lines(Curve curve, LeastSquares.Solution one, double from, double to) {
    double sigma = sigma(curve, one, from, to);
    Piece piece = new Piece(from, to, -one.values()[1], sigma * Math.sqrt(one.inverse()[1][1]));
    return new Lines(List.of(piece), one.values()[0], to, sigma * Math.sqrt(one.inverse()[0][0]));
  }

  private static Lines lines(Curve curve, Two two, double from, double to) {
    double[] v = two.found.values();
    double[][] inverse = two.found.inverse();
    double sigma = sigma(curve, two.found, from, to);
    double lower = inverse[1][1] + inverse[2][2] + 2 * inverse[1][2];
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Piece(from, two.at, two.upper(), sigma * Math.sqrt(inverse[1][1])));
    pieces.add(new Piece(two.at, to, two.lower(), sigma * Math.sqrt(Math.max(0, lower))));
    double end = v[0] + (v[1] + v[2]) * (to - two.at);
    return new Lines(pieces, end, to, sigma * Math.sqrt(inverse[0][0]));
  }

  /** Gusts and swinging show as more scatter than the noise. */
  private static double sigma(Curve curve, LeastSquares.Solution found, double from, double to) {
    int free = Math.max(1, curve.calmBetween(from, to) - found.values().length);
    return Math.max(curve.noise, Math.sqrt(found.misfit() / free));
  }
}
