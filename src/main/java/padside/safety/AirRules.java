package padside.safety;

import java.util.Optional;
import padside.flight.Ruling.Verdict;
import padside.units.Length;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.Temperature;
import padside.units.TimeSpan;

/** Rules about the flight itself: clouds, the delay, the landing. */
record AirRules(Basis basis) {
  private static final String OWN_CEILING = "own ceiling";

  void on(Case flown, Findings out) {
    sky(flown, out);
    flown.craft().own().ceiling().ifPresent(ceiling -> ceiling(ceiling, flown, out));
    flown.sky().temperature().ifPresent(temperature -> cold(temperature, out));
    delay(flown, out);
    landing(flown.predicted().touchdown(), out);
  }

  private void sky(Case flown, Findings out) {
    String source = basis.code().cited(Caution.Topic.FLIGHT).orElse(basis.code().title());
    Optional<Length> base = flown.sky().cloudBase();
    if (base.isEmpty()) {
      out.told("sky", "cloud base not noted; never into cloud", source);
      return;
    }
    Optional<Length> apogee = flown.predicted().apogee();
    if (apogee.isEmpty()) {
      out.unknown("sky", "apogee is not known", source);
      return;
    }
    boolean reached = apogee.get().metres() >= base.get().metres();
    out.add(
        "sky",
        reached ? Verdict.NO_GO : Verdict.GO,
        "apogee %s %s the clouds at %s"
            .formatted(
                basis.shown().altitude(apogee.get()),
                reached ? "reaches" : "stays below",
                basis.shown().altitude(base.get())),
        source);
  }

  private void ceiling(Length ceiling, Case flown, Findings out) {
    String cited = OwnLimits.sourced(ceiling).cited();
    Optional<Length> apogee = flown.predicted().apogee();
    if (apogee.isEmpty()) {
      out.unknown(OWN_CEILING, "apogee is not known", cited);
      return;
    }
    double metres = apogee.get().metres();
    double most = ceiling.metres();
    out.add(
        OWN_CEILING,
        Bounds.over(metres, most) ? Verdict.NO_GO : Verdict.GO,
        "apogee "
            + Bounds.beside(metres, most, each -> basis.shown().altitude(new Length(each)))
            + ", own ceiling "
            + basis.shown().altitude(ceiling),
        cited);
  }

  private void cold(Temperature temperature, Findings out) {
    double below = basis.house().amount(Figure.COLD_BELOW_K);
    if (!Bounds.under(temperature.kelvins(), below)) {
      return;
    }
    String air = Bounds.beside(temperature.kelvins(), below, this::degrees);
    for (Sourced<String> caution : basis.house().about(Caution.Topic.COLD)) {
      out.told(
          "cold",
          "cold, " + air + ": " + caution.value(),
          caution.cited() + "; below " + degrees(below));
    }
  }

  private String degrees(double kelvins) {
    return basis.shown().temperature(new Temperature(kelvins));
  }

  private void delay(Case flown, Findings out) {
    Sourced<Double> error = basis.house().sourced(Figure.ADVISED_DELAY_ERROR_S);
    boolean plugged =
        flown
            .craft()
            .motors()
            .filter(motors -> motors.top().motor().delaySeconds().isEmpty())
            .isPresent();
    Optional<Case.Firing> firing = flown.predicted().firing();
    if (plugged) {
      out.told("delay", "a plugged motor has no ejection charge", error.cited());
    } else if (firing.isPresent()) {
      out.add("delay", fit(firing.get()), sentence(firing.get()), citedFor(firing.get()));
    } else if (flown.predicted().touchdown().isPresent()) {
      out.add(
          "delay",
          Verdict.NO_GO,
          "the ejection charge does not fire before the ground",
          error.cited());
    } else {
      out.unknown("delay", "how the delay fits is not known", error.cited());
    }
  }

  private Verdict fit(Case.Firing firing) {
    double airspeed = firing.airspeed().metresPerSecond();
    if (Bounds.over(airspeed, basis.house().amount(Figure.MOST_EJECTION_AIRSPEED_MPS))) {
      return Verdict.NO_GO;
    }
    boolean far =
        Bounds.over(
            Math.abs(firing.error().seconds()), basis.house().amount(Figure.ADVISED_DELAY_ERROR_S));
    boolean fast =
        Bounds.over(airspeed, basis.house().amount(Figure.ADVISED_EJECTION_AIRSPEED_MPS));
    return far || fast ? Verdict.MARGINAL : Verdict.GO;
  }

  private String sentence(Case.Firing firing) {
    double seconds = firing.error().seconds();
    String when =
        Notations.timeSpan().show(new TimeSpan(Math.abs(seconds)))
            + (seconds < 0 ? " before" : " after");
    String most =
        fit(firing) == Verdict.NO_GO
            ? ", at most " + flightSpeed(basis.house().amount(Figure.MOST_EJECTION_AIRSPEED_MPS))
            : "";
    return "ejection "
        + when
        + " apogee at "
        + flightSpeed(firing.airspeed().metresPerSecond())
        + most;
  }

  private String citedFor(Case.Firing firing) {
    Figure figure =
        fit(firing) == Verdict.NO_GO
            ? Figure.MOST_EJECTION_AIRSPEED_MPS
            : Figure.ADVISED_DELAY_ERROR_S;
    return basis.house().sourced(figure).cited();
  }

  private void landing(Optional<Case.Touchdown> touchdown, Findings out) {
    Sourced<Speed> advised = basis.house().sourced(Figure.ADVISED_LANDING_MPS, Speed::new);
    if (touchdown.isEmpty()) {
      out.unknown("landing", "landing speed is not known", advised.cited());
      return;
    }
    Speed speed = touchdown.get().speed();
    double bound = advised.value().metresPerSecond();
    String found = Bounds.beside(speed.metresPerSecond(), bound, this::descent);
    if (!touchdown.get().opened()) {
      String source = basis.code().cited(Caution.Topic.RECOVERY).orElse(advised.cited());
      out.add(
          "landing",
          Verdict.NO_GO,
          "nothing opens: hits the ground at " + descent(speed.metresPerSecond()),
          source);
      return;
    }
    boolean hard = Bounds.over(speed.metresPerSecond(), bound);
    out.add(
        "landing",
        hard ? Verdict.MARGINAL : Verdict.GO,
        "lands at " + found + ", at most " + descent(bound) + " advised",
        advised.cited());
  }

  private String descent(double mps) {
    return basis.shown().descent(new Speed(mps));
  }

  private String flightSpeed(double mps) {
    return basis.shown().flightSpeed(new Speed(mps));
  }
}
