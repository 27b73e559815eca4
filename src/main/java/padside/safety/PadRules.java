package padside.safety;

import java.util.Optional;
import padside.motor.MotorStack;
import padside.units.Angle;
import padside.units.Impulse;
import padside.units.Notations;
import padside.units.Speed;

/** Rules about the pad: the rod, and how far people stand back. */
record PadRules(Basis basis) {
  void on(Case flown, Findings out) {
    out.atLeast(
        new Findings.Floor(
                "rod-exit speed",
                basis.house().sourced(Figure.LEAST_ROD_EXIT_MPS),
                basis.house().sourced(Figure.ADVISED_ROD_EXIT_MPS))
            .raised(
                flown.craft().own().rodExit().map(Speed::metresPerSecond).map(OwnLimits::sourced)),
        flown.predicted().rodExitSpeed().map(Speed::metresPerSecond),
        speed -> basis.shown().flightSpeed(new Speed(speed)));
    tilt(flown.craft().tilt(), out);
    standBack(flown.craft(), out);
  }

  private void tilt(Angle tilt, Findings out) {
    Optional<Sourced<Angle>> most = basis.code().launcherAngle();
    double degrees = Math.abs(tilt.inDegrees());
    if (most.isEmpty()) {
      String sentence = "tilt " + angle(degrees) + "; no largest angle is known here";
      out.told("tilt", sentence, basis.code().title());
      return;
    }
    out.atMost("tilt", degrees, most.get().map(Angle::inDegrees), PadRules::angle);
  }

  private void standBack(Case.Craft craft, Findings out) {
    Optional<Impulse> installed = craft.totalImpulse();
    if (installed.isEmpty()) {
      return;
    }
    basis
        .code()
        .standBack(installed.get(), craft.motors().filter(MotorStack::isComplex).isPresent())
        .ifPresentOrElse(
            far ->
                out.told(
                    Rules.STAND_BACK,
                    "stand back " + basis.shown().distance(far.value()),
                    far.cited()),
            () ->
                out.told(
                    Rules.STAND_BACK,
                    "no distance to stand back is known here",
                    basis.code().title()));
  }

  private static String angle(double degrees) {
    return Notations.angle().show(Angle.ofDegrees(degrees));
  }
}
