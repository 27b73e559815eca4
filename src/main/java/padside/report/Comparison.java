package padside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.insight.Measured;
import padside.motor.MotorTable;
import padside.units.Length;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/**
 * One thing that was predicted and measured.
 *
 * @param difference measured less predicted, with its sign; blank while one of the two is missing
 */
public record Comparison(
    String label, Optional<String> predicted, Optional<String> measured, String difference) {
  private static final String ALTITUDE = "Altitude";
  private static final String CHARGE = "Charge";
  private static final String DESCENT = "Descent";

  /**
   * All that can be compared of a flight's facts; what is neither known nor measured is left out.
   */
  public static List<Comparison> of(Facts facts, MotorTable motors, UnitSystem units) {
    Measured marks = Measured.of(facts, motors);
    List<Comparison> all = new ArrayList<>();
    all.add(altitude(facts, units));
    all.add(delay(facts, marks));
    all.add(charge(facts));
    all.add(measured("Aloft", facts.get(Flight.PREDICTED_ALOFT), marks.aloft(), Scale.TIME));
    all.add(
        measured(
            DESCENT, facts.get(Flight.PREDICTED_DESCENT), marks.descent(), Scale.descent(units)));
    return all.stream()
        .filter(each -> each.predicted.isPresent() || each.measured.isPresent())
        .toList();
  }

  /**
   * All that was measured in one line: {@code Measured 870 ft (-4%), delay 5.2 s (+0.2)}.
   *
   * @param width that of the line; its first word goes first when it is short
   */
  public static Optional<String> line(List<Comparison> all, int width) {
    String told =
        all.stream()
            .filter(each -> each.measured.isPresent() && !each.label.equals(CHARGE))
            .map(Comparison::brief)
            .collect(Collectors.joining(", "));
    String whole = "Measured " + told;
    return Optional.of(whole.length() <= width ? whole : told).filter(line -> !told.isEmpty());
  }

  /** Without the unit of the difference, which is that of the value. */
  private String brief() {
    String noun =
        switch (label) {
          case ALTITUDE -> "";
          case DESCENT -> "down ";
          default -> label.toLowerCase(Locale.ROOT) + " ";
        };
    return noun + measured.orElse("") + difference.replaceAll("([0-9]) [^ )]+\\)$", "$1)");
  }

  private static Comparison altitude(Facts facts, UnitSystem units) {
    Optional<Length> predicted = facts.get(Flight.PREDICTED_APOGEE);
    Optional<Length> measured = facts.get(Flight.ALTITUDE);
    String share =
        predicted
            .filter(apogee -> apogee.metres() > 0)
            .flatMap(p -> measured.map(m -> percent(100 * (m.metres() / p.metres() - 1))))
            .orElse("");
    Notation<Length> shown = Notations.altitude(units);
    return new Comparison(ALTITUDE, predicted.map(shown::show), measured.map(shown::show), share);
  }

  /** Signed, but for none: {@code (+2%)}, {@code (0%)}. */
  private static String percent(double share) {
    long whole = Math.round(share);
    return whole == 0 ? " (0%)" : String.format(" (%+d%%)", whole);
  }

  /** Held against the delay the motor is sold with; the best one is told beside it. */
  private static Comparison delay(Facts facts, Measured marks) {
    Optional<TimeSpan> measured = facts.get(Flight.MEASURED_DELAY).or(marks::delay);
    Comparison stamped = measured("Delay", marks.stamped(), measured, Scale.TIME);
    List<String> predicted = new ArrayList<>();
    stamped.predicted.filter(delay -> measured.isPresent()).ifPresent(predicted::add);
    facts
        .get(Flight.PREDICTED_BEST_DELAY)
        .ifPresent(best -> predicted.add(FlightWords.seconds(best) + " best"));
    return new Comparison(
        "Delay",
        predicted.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", predicted)),
        stamped.measured,
        stamped.difference);
  }

  private static Comparison charge(Facts facts) {
    return measured(
        CHARGE, facts.get(Flight.PREDICTED_EJECTION), facts.get(Flight.EJECTION_MARK), Scale.TIME);
  }

  private static <T> Comparison measured(
      String label, Optional<T> predicted, Optional<T> measured, Scale<T> scale) {
    String more = predicted.flatMap(p -> measured.map(m -> scale.difference(p, m))).orElse("");
    return new Comparison(
        label, predicted.map(scale.notation::show), measured.map(scale.notation::show), more);
  }

  /** How a quantity is told and subtracted. */
  private record Scale<T>(Notation<T> notation, ToDoubleFunction<T> inSi, DoubleFunction<T> ofSi) {
    static final Scale<TimeSpan> TIME =
        new Scale<>(Notations.timeSpan(), TimeSpan::seconds, TimeSpan::new);

    static Scale<Speed> descent(UnitSystem units) {
      return new Scale<>(Notations.descentRate(units), Speed::metresPerSecond, Speed::new);
    }

    /** Signed, in the unit shown: {@code (+0.3 s)}. */
    String difference(T predicted, T measured) {
      double more = inSi.applyAsDouble(measured) - inSi.applyAsDouble(predicted);
      return " (" + (more < 0 ? "-" : "+") + notation.show(ofSi.apply(Math.abs(more))) + ")";
    }
  }
}
