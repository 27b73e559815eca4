package padside.physics;

import java.util.List;
import java.util.Optional;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/** Launches for the tests. */
final class Rockets {
  private static final double DENSITY = 1.225;

  private Rockets() {}

  /** A ballistic launch in still air of one density, drag given as k = ½ρCdA in kg/m. */
  static Launch launch(double liftoffKg, double kKgpm, Motor motor, Rod rod) {
    // A body of 1 m² frontal area makes Cd = 2k/ρ.
    Length diameter = new Length(Math.sqrt(4 / Math.PI));
    Mass mass = new Mass(liftoffKg - motor.totalMass().kilograms());
    return new Launch(
        new Airframe(mass, diameter, 2 * kKgpm / DENSITY),
        List.of(Stage.of(motor)),
        rod,
        Air.uniform(new Density(DENSITY)),
        WindProfile.calm(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  /** A curve of four numbers. */
  static ThrustCurve curve(double impulse, double burnS, double peakN, double atS, double fromS) {
    ThrustCurve.Peak peak =
        new ThrustCurve.Peak(new Force(peakN), new TimeSpan(atS), new TimeSpan(fromS));
    return ThrustCurve.of(new Impulse(impulse), new TimeSpan(burnS), Optional.of(peak));
  }

  /** A C6 of the motor table. */
  static Motor c6() {
    return new Motor(curve(8.82, 1.86, 14.09, 0.192, 0.255), Mass.ofGrams(24), Mass.ofGrams(10.8));
  }

  /** A usual flight: 60 g at lift-off, C6-5, 12 inch parachute, 6 mph against the rod's lean. */
  static Launch nominal() {
    Speed wind = Speed.ofMph(6);
    return new Launch(
        new Airframe(Mass.ofGrams(36), Length.ofMillimetres(24.8), 0.75),
        List.of(Stage.of(c6())),
        new Rod(Length.ofCentimetres(90), Angle.ofDegrees(3), new Bearing(240)),
        Air.standardAt(new Length(0)),
        WindProfile.of(new Wind(wind, wind, Optional.of(new Bearing(240)))),
        Optional.of(new TimeSpan(5)),
        Optional.of(CanopyDrag.parachute(Length.ofInches(12), 0.75)),
        List.of(new TimeSpan(0), new TimeSpan(3), new TimeSpan(5), new TimeSpan(7)));
  }

  /** Sizes of the kind a flier may expect; common practice, no source. */
  static Scatter scatter() {
    return new Scatter(
        0.05, 0.1, 0.1, 0.1, new TimeSpan(0.75), 0.1, Angle.ofDegrees(10), 2, Angle.ofDegrees(1));
  }
}
