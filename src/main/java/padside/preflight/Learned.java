package padside.preflight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Rocket;
import padside.insight.Confidence;
import padside.insight.Drag;
import padside.insight.DragModel;
import padside.safety.RuleSets;
import padside.safety.ScatterSizes;

/**
 * What the measured altitudes of one rocket teach about its drag. They are flown again when it is
 * first asked for, which takes some milliseconds for each altitude that was not asked about before:
 * not on the thread of the keys. Two of them are alike when the altitudes are.
 */
public final class Learned {
  private final List<Flight> measured;
  private final Optional<Altitudes> log;
  private final Map<Confidence, Optional<Drag>> drags = new HashMap<>();

  private Learned(List<Flight> measured, Optional<Altitudes> log) {
    this.measured = List.copyOf(measured);
    this.log = log;
  }

  /** Of a rocket that no log knows. */
  public static Learned nothing() {
    return new Learned(List.of(), Optional.empty());
  }

  /** Of a rocket of the log. */
  static Learned of(RecordId rocket, LotRecords records) {
    return new Learned(
        records.book().measured(rocket),
        Optional.of(new Altitudes(records.book(), records.outcomes())));
  }

  /**
   * What the drag is taken as.
   *
   * @param share one standard deviation of the next flight's, as a share
   */
  record Taken(DragUsed drag, double share) {}

  /** The drag of the rocket whose altitudes these are. */
  Taken of(Optional<Rocket> rocket, Confidence confidence) {
    ScatterSizes sizes = RuleSets.scatter();
    Optional<Double> typed = rocket.flatMap(Rocket::dragCoefficient);
    double told = typed.orElse(Launches.USUAL_ROCKET_DRAG);
    String why = typed.isPresent() ? "as typed" : "as usual";
    if (log.isEmpty()) {
      return new Taken(new DragUsed(told, why, Optional.empty()), sizes.dragShare().value());
    }
    Optional<Drag> found = drag(told, confidence);
    if (rocket.filter(Rocket::isDragFixed).isPresent()) {
      return new Taken(new DragUsed(told, why + ", fixed", found), sizes.dragShare().value());
    }
    return found
        .filter(drag -> !drag.flights().isEmpty())
        .map(drag -> new Taken(new DragUsed(drag.middle(), drag.from(), found), drag.share()))
        .orElseGet(
            () ->
                new Taken(
                    new DragUsed(told, why + ", no altitude yet", found),
                    Math.hypot(sizes.dragCoefficientShare().value(), sizes.dragShare().value())));
  }

  private synchronized Optional<Drag> drag(double middle, Confidence confidence) {
    return drags.computeIfAbsent(
        confidence,
        wanted -> log.flatMap(altitudes -> model(middle).of(altitudes.of(measured), wanted)));
  }

  private static DragModel model(double middle) {
    ScatterSizes sizes = RuleSets.scatter();
    return new DragModel(
        middle,
        sizes.dragCoefficientShare().value(),
        sizes.dragShare().value(),
        sizes.impulseShare().value(),
        sizes.oddShare().value());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Learned learned
        && measured.equals(learned.measured)
        && log.isPresent() == learned.log.isPresent();
  }

  @Override
  public int hashCode() {
    return measured.hashCode();
  }

  @Override
  public String toString() {
    return "learned from " + measured.size() + " altitudes";
  }
}
