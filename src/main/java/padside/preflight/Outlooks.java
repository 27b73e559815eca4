package padside.preflight;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import padside.insight.Confidence;
import padside.motor.MotorChoice;
import padside.motor.MotorType;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.physics.ThrustCurve;
import padside.units.Speed;
import padside.units.TimeSpan;

/** Puts what the flight model answers into this room's own words. */
final class Outlooks {
  private Outlooks() {}

  /** The outlook of a nominal flight. */
  static Outlook of(Flown flown, Card card) {
    return of(flown, card, Optional.empty(), new Speed(0), Confidence.usual());
  }

  /**
   * The outlook of a flight with what was flown besides.
   *
   * @param safe an ejection charge is advised to fire no faster through the air than this
   */
  static Outlook of(
      Flown flown, Card card, Optional<Spread> spread, Speed safe, Confidence confidence) {
    Launch launch = flown.launch();
    Prediction flight = flown.prediction();
    MotorType motor = card.motors().orElseThrow().top().motor().type();
    boolean rodKnown = card.tilt().radians() == 0 || card.tiltToward().isPresent();
    return new Outlook(
        flight.liftoffMass(),
        flight.totalImpulse(),
        flight.thrustToWeight(),
        flight.rodExitSpeed(),
        flight.maxSpeed(),
        flight.burnoutAltitude(),
        flight.burnoutTime(),
        flight.apogee(),
        flight.timeToApogee(),
        top(flown, confidence),
        confidence,
        card.drag(confidence).drag(),
        flight.bestDelay(),
        fits(motor, flown, safe),
        flight
            .ejection()
            .map(e -> new Outlook.Ejection(e.time(), e.altitude(), e.speed(), e.airspeed())),
        flight.ballistic() ? Optional.empty() : Optional.of(flight.descentRate()),
        flight.flightTime(),
        flight.landing().bearing(),
        rodKnown && launch.wind().directionKnown(),
        flight.landing().distance(),
        motorData(launch.curveQuality(), motor),
        launch.air().densityAltitude(),
        flown.path(),
        spread,
        flown.sun().map(Sunlight::inSun));
  }

  private static Outlook.Top top(Flown flown, Confidence confidence) {
    return new Outlook.Top(
        flown.prediction().highest(),
        flown.scattered().map(flights -> flights.highest(confidence.tail())),
        flown.scattered().map(flights -> flights.highest(1 - confidence.tail())));
  }

  private static List<Outlook.DelayFit> fits(MotorType type, Flown flown, Speed safe) {
    List<Prediction.DelayFit> fits = flown.prediction().delays();
    return IntStream.range(0, fits.size())
        .mapToObj(
            i ->
                new Outlook.DelayFit(
                    label(type, fits.get(i).delay()),
                    fits.get(i).error(),
                    fits.get(i).altitude(),
                    fits.get(i).speed(),
                    fits.get(i).airspeed(),
                    flown.scattered().map(flights -> flights.shareFiringWithin(i, safe))))
        .toList();
  }

  private static String label(MotorType type, TimeSpan delay) {
    return type.delays().stream()
        .filter(
            label -> {
              var seconds = new MotorChoice(type, label).delaySeconds();
              return seconds.isPresent() && seconds.getAsDouble() == delay.seconds();
            })
        .findFirst()
        .orElseThrow();
  }

  private static String motorData(ThrustCurve.Quality quality, MotorType type) {
    String shape =
        switch (quality) {
          case ENTERED -> "thrust curve as entered";
          case FOUR_NUMBER -> "thrust curve drawn from four numbers";
          case APPROXIMATE -> "approximate: thrust taken as constant";
        };
    return shape + "; " + type.provenance();
  }
}
