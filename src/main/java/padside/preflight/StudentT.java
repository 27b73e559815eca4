package padside.preflight;

/** Quantiles of Student's t distribution. */
final class StudentT {
  /** The 0.9 quantile of the normal distribution (Abramowitz and Stegun 1964, table 26.5). */
  private static final double X = 1.2815515655446004;

  private static final double X2 = X * X;

  // Abramowitz and Stegun 1964, equation 26.7.5: the four polynomials at the quantile above.
  private static final double G1 = X * (X2 + 1) / 4;
  private static final double G2 = X * ((5 * X2 + 16) * X2 + 3) / 96;
  private static final double G3 = X * (((3 * X2 + 19) * X2 + 17) * X2 - 15) / 384;
  private static final double G4 =
      X * ((((79 * X2 + 776) * X2 + 1482) * X2 - 1920) * X2 - 945) / 92160;

  private StudentT() {}

  /**
   * How many standard errors either side hold the true value in four cases of five: the 0.9
   * quantile. Within 0.13 % of it from two degrees of freedom up.
   */
  static double fourOfFive(int degreesOfFreedom) {
    double v = degreesOfFreedom;
    return X + (G1 + (G2 + (G3 + G4 / v) / v) / v) / v;
  }
}
