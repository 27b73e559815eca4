package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import padside.flight.Ruling.Finding;
import padside.flight.Ruling.Verdict;
import padside.insight.Delays;
import padside.physics.ThrustCurve;
import padside.site.FieldShape;
import padside.units.UnitSystem;

/** What this room itself finds about a card, to be ruled on with what the rules find. */
record OwnFindings(Facing facing) {
  private static final String MODEL = "flight model";

  List<Finding> list() {
    List<Finding> findings = new ArrayList<>();
    facing
        .prepared()
        .refused()
        .ifPresent(why -> findings.add(new Finding("flight", Verdict.UNKNOWN, why, MODEL)));
    facing.flown().ifPresent(flown -> of(flown, findings));
    Card card = facing.card();
    Stream.concat(card.lotRecord().stream(), card.boosterRecord().stream())
        .distinct()
        .filter(Card.LotRecord::isMarked)
        .forEach(lot -> findings.add(lot(lot)));
    card.suits().ifPresent(suits -> findings.add(suits(suits)));
    card.claims().stream()
        .filter(claim -> claim.of(card.device()))
        .forEach(claim -> findings.add(claimed(claim)));
    facing.field().flatMap(FieldShape::unpaced).ifPresent(gap -> findings.add(unpaced(gap)));
    return findings;
  }

  private void of(Flown flown, List<Finding> findings) {
    if (!flown.prediction().leftRod()) {
      String why = Sentences.tooHeavy(flown.prediction(), facing.card());
      findings.add(new Finding("flight", Verdict.NO_GO, why, MODEL));
    }
    if (flown.prediction().impactUnderPower()) {
      findings.add(underPower());
    }
    if (flown.launch().curveQuality() == ThrustCurve.Quality.APPROXIMATE) {
      findings.add(approximate());
    }
    if (!flown.launch().wind().directionKnown()) {
      findings.add(directionless());
    }
    UnitSystem units = facing.settings().units();
    flown.sun().ifPresent(sun -> findings.add(sun.finding(units)));
  }

  private static Finding unpaced(FieldShape.Unpaced gap) {
    String from = gap.from().compassPoint();
    String to = gap.to().compassPoint();
    String sentence =
        from.equals(to)
            ? "one edge alone was given; the field is taken as that far every way"
            : "nobody paced the field's edge between "
                + from
                + " and "
                + to
                + "; the nearer of the two is taken there";
    return new Finding("field edges", Verdict.GO, sentence, "field as paced");
  }

  private static Finding lot(Card.LotRecord lot) {
    return new Finding(
        "lot",
        Verdict.MARGINAL,
        "lot " + lot.code() + ": " + lot.burns().words(),
        "the log; in brackets what 95 in 100 such intervals hold (Clopper and Pearson 1934)");
  }

  private static Finding suits(Delays.Suits suits) {
    return new Finding("delay", Verdict.GO, suits.words(), "the log");
  }

  private static Finding claimed(OpenCards.Claim claim) {
    return new Finding("card", Verdict.MARGINAL, claim.sentence(), "the day's open cards");
  }

  private static Finding directionless() {
    return new Finding(
        "wind direction",
        Verdict.GO,
        "the wind has no direction, so the field's limit is that of the worst one",
        MODEL);
  }

  private static Finding underPower() {
    return new Finding(
        "flight",
        Verdict.NO_GO,
        "it hits the ground while the motor still burns; set the rod upright or choose a stronger"
            + " motor",
        MODEL);
  }

  private static Finding approximate() {
    return new Finding(
        "motor data",
        Verdict.GO,
        "thrust is taken as constant, so rod-exit speed is approximate and on the low side for"
            + " motors with an ignition spike",
        MODEL);
  }
}
