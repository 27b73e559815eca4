package padside.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import padside.fact.RecordId;
import padside.physics.Air;
import padside.physics.Airframe;
import padside.physics.CanopyDrag;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Motor;
import padside.physics.Rod;
import padside.physics.Stage;
import padside.physics.ThrustCurve;
import padside.physics.WindProfile;
import padside.units.Angle;
import padside.units.Bearing;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.Wind;

/** Seasons of one rocket drawn as the model of drag takes seasons to be. */
record DragSeason(DragModel model, Random random) {
  /** Of this size are the readings of an altimeter in these seasons. */
  static final Length DEVIATION = new Length(2);

  /** How far the season's flights are from each other and the rocket's from the usual one. */
  record Truth(double coefficient, double spread) {}

  Truth truth() {
    return new Truth(
        model.middle() * Math.exp(model.priorShare() * random.nextGaussian()),
        model.flightShare() * Math.abs(random.nextGaussian()));
  }

  List<Reached> flights(Truth truth, int count) {
    List<Reached> flights = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      flights.add(flight(truth, i));
    }
    return flights;
  }

  private Reached flight(Truth truth, int number) {
    Launch launch = launch(6 + 6 * random.nextDouble(), 8 * random.nextDouble());
    double drag = truth.coefficient() * Math.exp(truth.spread() * random.nextGaussian());
    double strength = 1 + model.impulseShare() * random.nextGaussian();
    double metres =
        Flight.highest(launch.withDrag(drag), strength).metres()
            + DEVIATION.metres() * random.nextGaussian();
    return reached(number, launch, metres);
  }

  static Reached reached(int number, Launch launch, double metres) {
    return new Reached(
        new RecordId("test." + number), "C6", launch, new Length(metres), DEVIATION, List::of);
  }

  /**
   * An invented rocket of 31 mm and 60 g on a motor of this impulse, its delay too short at times.
   */
  static Launch launch(double impulseNs, double windMps) {
    Speed wind = new Speed(windMps);
    ThrustCurve.Peak peak =
        new ThrustCurve.Peak(new Force(impulseNs * 1.5), new TimeSpan(0.2), new TimeSpan(0.27));
    return new Launch(
        new Airframe(Mass.ofGrams(60), Length.ofMillimetres(31), 0.75),
        List.of(
            Stage.of(
                new Motor(
                    ThrustCurve.of(new Impulse(impulseNs), new TimeSpan(1.8), Optional.of(peak)),
                    Mass.ofGrams(24),
                    Mass.ofGrams(11)))),
        new Rod(Length.ofCentimetres(90), Angle.ofDegrees(2), new Bearing(200)),
        Air.standardAt(new Length(100)),
        WindProfile.of(new Wind(wind, wind, Optional.of(new Bearing(230)))),
        Optional.of(new TimeSpan(4)),
        Optional.of(CanopyDrag.parachute(Length.ofInches(12), 0.75)),
        List.of());
  }
}
