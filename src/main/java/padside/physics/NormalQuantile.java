package padside.physics;

/**
 * The standard normal deviate below which a given share lies: Wichura, Applied Statistics 37 (1988)
 * 477-484, algorithm AS 241, routine PPND16, exact to about one part in 10^16. The minimax
 * polynomials are the published ones, highest power first, rounded to doubles.
 */
final class NormalQuantile {
  private static final double[] A = {
    2509.0809287301227,
    33430.57558358813,
    67265.7709270087,
    45921.95393154987,
    13731.69376550946,
    1971.5909503065513,
    133.14166789178438,
    3.3871328727963665
  };

  private static final double[] B = {
    5226.495278852854,
    28729.085735721943,
    39307.89580009271,
    21213.794301586597,
    5394.196021424751,
    687.1870074920579,
    42.31333070160091,
    1.0
  };

  private static final double[] C = {
    0.0007745450142783414,
    0.022723844989269184,
    0.2417807251774506,
    1.2704582524523684,
    3.6478483247632045,
    5.769497221460691,
    4.630337846156546,
    1.4234371107496835
  };

  private static final double[] D = {
    1.0507500716444169e-09,
    0.0005475938084995345,
    0.015198666563616457,
    0.14810397642748008,
    0.6897673349851,
    1.6763848301838038,
    2.053191626637759,
    1.0
  };

  private static final double[] E = {
    2.0103343992922881e-07,
    2.7115555687434876e-05,
    0.0012426609473880784,
    0.026532189526576124,
    0.29656057182850487,
    1.7848265399172913,
    5.463784911164114,
    6.657904643501103
  };

  private static final double[] F = {
    2.0442631033899397e-15,
    1.421511758316446e-07,
    1.8463183175100548e-05,
    0.0007868691311456133,
    0.014875361290850615,
    0.1369298809227358,
    0.599832206555888,
    1.0
  };

  private NormalQuantile() {}

  /** The deviate of a share above 0 and below 1. */
  static double of(double share) {
    double q = share - 0.5;
    if (Math.abs(q) <= 0.425) {
      double r = 0.180625 - q * q;
      return q * polynomial(A, r) / polynomial(B, r);
    }
    double r = Math.sqrt(-Math.log(q < 0 ? share : 1 - share));
    double deviate =
        r <= 5
            ? polynomial(C, r - 1.6) / polynomial(D, r - 1.6)
            : polynomial(E, r - 5) / polynomial(F, r - 5);
    return q < 0 ? -deviate : deviate;
  }

  private static double polynomial(double[] highestFirst, double x) {
    double sum = 0;
    for (double coefficient : highestFirst) {
      sum = sum * x + coefficient;
    }
    return sum;
  }
}
