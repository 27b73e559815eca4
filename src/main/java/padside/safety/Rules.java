package padside.safety;

import java.util.List;
import padside.flight.Fix;
import padside.flight.Ruling;
import padside.flight.Ruling.Finding;
import padside.flight.Ruling.Limit;
import padside.flight.Ruling.Verdict;
import padside.units.UnitSystem;

/**
 * A safety code with the house rules, held against the facts of a card.
 *
 * <p>NO-GO when a limit is passed or a finding says so, which nothing missing excuses; else UNKNOWN
 * while something needed is missing; else MARGINAL within a fifth of a limit, past a limit that
 * ends in MARGINAL, or where an advised value is not reached; GO only when all is known and well.
 */
public record Rules(RuleSet code, HouseRules house) {
  /** The finding that tells how far people stand back. */
  public static final String STAND_BACK = "stand back";

  /**
   * Rules on a card.
   *
   * @param system the units of the words
   */
  public Ruling on(Case flown, UnitSystem system) {
    Basis basis = new Basis(code, house, new Shown(system));
    WindLimits winds = new WindLimits(basis);
    List<Limit> limits = winds.of(flown);
    List<Finding> findings = findings(flown, basis, winds);
    Weighing weighing = new Weighing(winds, flown.sky().wind(), limits, findings);
    List<String> lacks = new Lacks(flown).named();
    Verdict verdict = weighing.verdict().or(lacks.isEmpty() ? Verdict.GO : Verdict.UNKNOWN);
    String reason =
        verdict == Verdict.UNKNOWN && !lacks.isEmpty()
            ? "missing: " + String.join(", ", lacks)
            : weighing.reason(verdict);
    return new Ruling(verdict, weighing.least(), reason, limits, findings);
  }

  private static List<Finding> findings(Case flown, Basis basis, WindLimits winds) {
    Findings out = new Findings();
    flown.further().forEach(out::add);
    winds.on(flown, out);
    new MotorRules(basis).on(flown, out);
    flown.craft().motors().ifPresent(motors -> new StackRules(basis).on(motors, out));
    new PadRules(basis).on(flown, out);
    new GroundRules(basis).on(flown, out);
    new AirRules(basis).on(flown, out);
    flown.craft().openFixes().forEach(fix -> fix(fix, out));
    return out.list();
  }

  private static void fix(Fix fix, Findings out) {
    Verdict verdict =
        switch (fix.severity()) {
          case LOOK_AT -> Verdict.MARGINAL;
          case GROUNDS_IT -> Verdict.NO_GO;
        };
    out.add("fix", verdict, fix.severity().words() + ": " + fix.text(), "open fix in the log");
  }
}
