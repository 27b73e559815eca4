package padside.safety;

import java.util.ArrayList;
import java.util.List;
import padside.flight.Ruling.Limit;
import padside.flight.Ruling.Verdict;
import padside.units.Speed;
import padside.units.Wind;

/** The largest winds of all rules that have one, and the verdict of a wind against them. */
record WindLimits(Basis basis) {

  List<Limit> of(Case flown) {
    List<Limit> limits = new ArrayList<>();
    RuleSet code = basis.code();
    code.windLimit()
        .map(wind -> new Limit("code", wind.value(), Verdict.NO_GO, code.title(), wind.cited()))
        .ifPresent(limits::add);
    flown
        .craft()
        .own()
        .wind()
        .map(OwnLimits::sourced)
        .map(wind -> new Limit("own", wind.value(), Verdict.NO_GO, "own limit", wind.cited()))
        .ifPresent(limits::add);
    flown
        .predicted()
        .rodExitSpeed()
        .filter(exit -> exit.metresPerSecond() > 0)
        .ifPresent(
            exit -> {
              limits.add(rod(exit, Figure.ADVISED_ROD_DIVISOR, Verdict.MARGINAL));
              limits.add(rod(exit, Figure.LEAST_ROD_DIVISOR, Verdict.NO_GO));
            });
    flown.ground().limit().map(this::field).ifPresent(limits::add);
    return limits;
  }

  /** A wind against one limit; a limit of no wind at all is passed by calm air too. */
  Verdict verdict(Wind wind, Limit limit) {
    if (passes(wind, limit)) {
      return limit.past();
    }
    double near = 1 - basis.house().marginalShare();
    double from = limit.wind().metresPerSecond() * near;
    return Bounds.over(wind.tested().metresPerSecond(), from) ? Verdict.MARGINAL : Verdict.GO;
  }

  /** True when the wind is above the limit. */
  boolean passes(Wind wind, Limit limit) {
    double most = limit.wind().metresPerSecond();
    return most <= 0 || Bounds.over(wind.tested().metresPerSecond(), most);
  }

  /** A code without a wind limit is no licence: the flier's own limit has to stand in for it. */
  void on(Case flown, Findings out) {
    RuleSet code = basis.code();
    if (code.windLimit().isPresent()) {
      return;
    }
    String sentence = "the wind limit of the " + code.title() + " is not known here; ";
    if (flown.craft().own().wind().isPresent()) {
      out.told("code", sentence + "your own stands in for it", code.title());
    } else {
      out.unknown("code", sentence + "set your own", code.title());
    }
  }

  /** A limit in words: {@code 13 mph (field edge NE 280 ft)}. */
  String shown(Limit limit) {
    return basis.shown().limit(limit.wind()) + " (" + limit.words() + ")";
  }

  private Limit rod(Speed exit, Figure divisor, Verdict past) {
    Sourced<Double> by = basis.house().sourced(divisor);
    return new Limit(
        "rod",
        new Speed(exit.metresPerSecond() / by.value()),
        past,
        "rod-exit speed " + basis.shown().flightSpeed(exit) + " ÷ " + Shown.ratio(by.value()),
        by.cited());
  }

  private Limit field(Case.FieldLimit limit) {
    String words =
        limit
            .bound()
            .map(bound -> bound.words(basis.shown().system()))
            .orElse("landings inside that far; not searched further");
    return new Limit(
        "field",
        limit.wind(),
        Verdict.NO_GO,
        words,
        "90 in 100 scattered landings against the field as paced");
  }
}
