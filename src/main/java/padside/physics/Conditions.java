package padside.physics;

/**
 * What one flight meets beside its burn, as planned or as drawn; plain SI numbers.
 *
 * @param rod the direction along the rod
 * @param climb the air's motion at the reading height from rod exit to ejection
 * @param drift the same from ejection to the ground
 * @param canopyDragAreaM2 zero when nothing opens
 */
record Conditions(
    Lean rod,
    Flow climb,
    Flow drift,
    double dragAreaM2,
    double canopyDragAreaM2,
    Lateness lateness) {

  /** A unit vector along the rod. */
  record Lean(double east, double north, double up) {}

  /** Where the air moves to, in metres per second. */
  record Flow(double eastMps, double northMps) {
    /** The wind of this speed from this direction, radians clockwise from north. */
    static Flow from(double mps, double radians) {
      return new Flow(-mps * Math.sin(radians), -mps * Math.cos(radians));
    }

    double mps() {
      return Math.hypot(eastMps, northMps);
    }
  }

  /**
   * How far every delay is from its label: so many standard deviations late, each a share of the
   * delay, or {@code leastS} where that is more.
   */
  record Lateness(double deviations, double share, double leastS) {
    static final Lateness NONE = new Lateness(0, 0, 0);

    /** Seconds from burnout to the charge of a delay; the charge never fires before burnout. */
    double firesAfterS(double delayS) {
      return Math.max(0, delayS + deviations * Math.max(share * delayS, leastS));
    }
  }

  /** The launch as planned, in its mean wind. */
  static Conditions planned(Launch launch) {
    Flow mean = launch.wind().flow();
    return new Conditions(
        launch.rod().lean(),
        mean,
        mean,
        launch.airframe().dragAreaM2(),
        launch.recovery().map(CanopyDrag::dragAreaM2).orElse(0.0),
        Lateness.NONE);
  }

  /** The same for a rocket of another drag area. */
  Conditions withDragArea(double squareMetres) {
    return new Conditions(rod, climb, drift, squareMetres, canopyDragAreaM2, lateness);
  }
}
