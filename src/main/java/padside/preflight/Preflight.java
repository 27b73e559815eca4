package padside.preflight;

import java.util.List;
import java.util.Optional;
import padside.flight.Ruling;
import padside.physics.Flight;
import padside.physics.Launch;
import padside.physics.Prediction;
import padside.safety.Case;
import padside.safety.HouseRules;
import padside.safety.RuleSet;
import padside.safety.RuleSets;
import padside.safety.Rules;
import padside.site.FieldShape;
import padside.units.Reading;

/**
 * The check: one card put to flight model, field and rules. The same card and settings always get
 * the same answer.
 */
public final class Preflight {
  private final Settings settings;
  private final Reading<RuleSet> code;
  private final HouseRules house;

  /** The check under these settings; with an unknown rule set every answer is UNKNOWN. */
  public Preflight(Settings settings) {
    this.settings = settings;
    this.code = RuleSets.find(settings.ruleSet());
    this.house =
        settings
            .rodDivisor()
            .map(divisor -> RuleSets.house().withRodDivisor(divisor))
            .orElse(RuleSets.house());
  }

  /** Checks a card. */
  public Answer answer(Card card) {
    Launches.Prepared prepared = Launches.of(card);
    Optional<FieldShape> shape = card.field().flatMap(FieldShape::of);
    Optional<Flown> flown = prepared.launch().map(launch -> fly(launch, shape));
    Ruling ruling = ruling(new Facing(card, prepared, shape, flown, settings).asCase());
    Optional<Outlook> outlook =
        flown
            .filter(flight -> flight.prediction().leftRod())
            .map(f -> Outlooks.of(f.launch(), card, f.prediction()));
    return new Answer(
        ruling,
        Headline.of(ruling, card, settings.units()),
        outlook,
        reminders(),
        Optional.empty());
  }

  private List<Answer.Reminder> reminders() {
    return code.value().map(RuleSet::cautions).orElse(List.of()).stream()
        .map(caution -> new Answer.Reminder(caution.text().value(), caution.text().cited()))
        .toList();
  }

  private Ruling ruling(Case faced) {
    return code.value()
        .map(rules -> new Rules(rules, house).on(faced, settings.units()))
        .orElseGet(() -> unknownCode(code.objection().orElseThrow()));
  }

  private static Ruling unknownCode(String objection) {
    Ruling.Finding finding =
        new Ruling.Finding("code", Ruling.Verdict.UNKNOWN, objection, "settings");
    return new Ruling(
        Ruling.Verdict.UNKNOWN, Optional.empty(), objection, List.of(), List.of(finding));
  }

  private static Flown fly(Launch launch, Optional<FieldShape> field) {
    Prediction prediction = Flight.predict(launch);
    boolean lands = prediction.leftRod() && launch.recovery().isPresent();
    return new Flown(
        launch, prediction, field.filter(f -> lands).map(f -> FieldLimits.of(launch, f)));
  }
}
