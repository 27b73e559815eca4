package padside.safety;

import java.util.Optional;
import padside.flight.Ruling.Verdict;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;

/** Rules about the field: its size, the owner's leave, the risk of fire. */
record GroundRules(Basis basis) {
  private static final String DAY = "as noted for the day";

  void on(Case flown, Findings out) {
    site(flown, out);
    permission(flown.ground().permission(), out);
    fire(flown.ground().fireBan(), out);
  }

  private void site(Case flown, Findings out) {
    String title = basis.code().title();
    if (!basis.code().knowsSite()) {
      out.told("site", "no smallest field is known here", title);
      return;
    }
    boolean byImpulseAlone = !basis.code().siteAsksApogee();
    Optional<Impulse> installed = flown.craft().totalImpulse();
    Optional<Mass> liftoff =
        flown.craft().liftoffMass().or(() -> Optional.of(new Mass(0)).filter(m -> byImpulseAlone));
    Optional<Length> apogee =
        flown.predicted().apogee().or(() -> Optional.of(new Length(0)).filter(a -> byImpulseAlone));
    if (installed.isEmpty() || liftoff.isEmpty() || apogee.isEmpty()) {
      out.unknown("site", "the smallest field needed is not known", title);
      return;
    }
    basis
        .code()
        .site(installed.get(), liftoff.get(), apogee.get())
        .ifPresentOrElse(
            demand -> held(demand, flown.ground().smallestSide(), out),
            () -> out.unknown("site", "the table of fields does not go so far", title));
  }

  private void held(RuleSet.SiteDemand demand, Optional<Length> side, Findings out) {
    Length least = demand.smallestSide().value();
    String asked = "at least " + basis.shown().distance(least);
    String source = demand.smallestSide().cited();
    if (side.isEmpty()) {
      out.unknown("site", "the size of the field is not known, " + asked, source);
      return;
    }
    boolean small = Bounds.under(side.get().metres(), least.metres());
    out.add(
        "site",
        small ? demand.past() : Verdict.GO,
        "field "
            + Bounds.beside(side.get().metres(), least.metres(), this::distance)
            + " at its smallest, "
            + asked,
        source);
  }

  private String distance(double metres) {
    return basis.shown().distance(new Length(metres));
  }

  private void permission(Optional<Boolean> permission, Findings out) {
    String source = basis.code().cited(Caution.Topic.PERMISSION).orElse(DAY);
    if (permission.isEmpty()) {
      out.told("permission", "whether the owner has allowed it was not noted", source);
    } else if (permission.get()) {
      out.told("permission", "the owner has allowed it", source);
    } else {
      out.add("permission", Verdict.MARGINAL, "the owner's permission is not confirmed", source);
    }
  }

  private void fire(Optional<Boolean> ban, Findings out) {
    String source = basis.code().cited(Caution.Topic.GROUND).orElse(DAY);
    if (ban.isEmpty()) {
      out.told("fire", "whether a fire ban is in force was not noted", source);
    } else if (ban.get()) {
      out.add("fire", Verdict.NO_GO, "a fire ban is in force", source);
    } else {
      out.told("fire", "no fire ban is in force", source);
    }
  }
}
