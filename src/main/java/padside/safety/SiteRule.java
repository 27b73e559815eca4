package padside.safety;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import padside.flight.Ruling.Verdict;
import padside.safety.RuleSet.SiteDemand;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;

/** How large a field a rule set asks for: the largest of its demands, or its exception. */
record SiteRule(RuleSet rules, Optional<BandTable> table) {
  Optional<SiteDemand> demand(Impulse installed, Mass liftoff, Length apogee) {
    Optional<Sourced<Length>> small = smallSite(installed, liftoff, apogee);
    if (small.isPresent()) {
      return small.map(side -> new SiteDemand(side, Verdict.NO_GO));
    }
    Optional<SiteDemand> byTable = byTable(installed, apogee);
    if (table.isPresent() && byTable.isEmpty()) {
      return Optional.empty();
    }
    Stream<SiteDemand> fixed =
        Stream.of(rules.figure(Figure.SITE_AT_LEAST_M, Length::new), byAltitude(apogee))
            .flatMap(Optional::stream)
            .map(side -> new SiteDemand(side, Verdict.NO_GO));
    return Stream.concat(fixed, byTable.stream()).reduce((a, b) -> sideM(a) >= sideM(b) ? a : b);
  }

  private Optional<SiteDemand> byTable(Impulse installed, Length apogee) {
    return table.flatMap(
        rows ->
            (rows.asksApogee()
                    ? Band.find(rows.byApogee(), apogee.metres())
                    : Band.find(rows.byImpulse(), installed.newtonSeconds()))
                .flatMap(Band::smallestSide)
                .map(
                    side ->
                        new SiteDemand(
                            rows.origin().map(none -> side), rows.past().orElseThrow())));
  }

  private Optional<Sourced<Length>> byAltitude(Length apogee) {
    return rules.figure(Figure.SITE_ALTITUDE_SHARE, share -> new Length(share * apogee.metres()));
  }

  private Optional<Sourced<Length>> smallSite(Impulse installed, Mass liftoff, Length apogee) {
    boolean small =
        below(Figure.SMALL_SITE_IMPULSE_NS, installed.newtonSeconds())
            && below(Figure.SMALL_SITE_MASS_KG, liftoff.kilograms())
            && below(Figure.SMALL_SITE_ALTITUDE_M, apogee.metres());
    return rules.figure(Figure.SMALL_SITE_M, Length::new).filter(side -> small);
  }

  private boolean below(Figure figure, double value) {
    Predicate<Sourced<Double>> holds = bound -> Bounds.under(value, bound.value());
    return rules.figure(figure).filter(holds).isPresent();
  }

  private static double sideM(SiteDemand demand) {
    return demand.smallestSide().value().metres();
  }
}
