package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.flight.MotorChoice;
import padside.flight.MotorType;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.physics.ThrustCurve;
import padside.units.TimeSpan;

/** Puts what the flight model answers into this room's own words. */
final class Outlooks {
  private Outlooks() {}

  static Outlook of(Launch launch, Card card, Prediction flight) {
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
        flight.bestDelay(),
        fits(motor, flight),
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
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  private static List<Outlook.DelayFit> fits(MotorType type, Prediction flight) {
    return flight.delays().stream()
        .map(
            fit ->
                new Outlook.DelayFit(
                    label(type, fit.delay()),
                    fit.error(),
                    fit.altitude(),
                    fit.speed(),
                    fit.airspeed(),
                    Optional.empty()))
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
