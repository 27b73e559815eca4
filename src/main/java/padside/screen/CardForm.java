package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.form.Entry;
import padside.form.Form;
import padside.form.FormField;
import padside.preflight.Answer;
import padside.preflight.OpenCards;

/**
 * How the fields of a card hang together: a rocket brings its set-up, a motor its lot.
 *
 * <p>The form is opened over all facts of the flight, so that those without a field stay in.
 */
final class CardForm {
  /** What the check does not look at: changing it leaves a kept card's answer as it is. */
  private static final Set<String> UNCHECKED =
      Set.of(Flight.NOTE.name(), Flight.ALTIMETER.name(), Flight.FLIER.name(), Flight.PAD.name());

  /** What leaves the ticks of the checklist as they are; after any other change it is read anew. */
  private static final Set<String> KEEPS_TICKS =
      Set.of(
          Flight.NOTE.name(),
          Flight.FLIER.name(),
          Flight.WIND_MEAN.name(),
          Flight.WIND_GUST.name(),
          Flight.WIND_FROM.name());

  private static final Set<String> HANGS_ON_ROCKET =
      Set.of(Flight.ROCKET.name(), Flight.LOT.name(), Flight.BOOSTER_LOT.name());

  private CardForm() {}

  /** The form of a new card or planned flight: the list of rockets open at once. */
  static Form ofNew(RecordId day, Flight.Status status, World world) {
    boolean planned = status == Flight.Status.PLANNED;
    Facts facts =
        Facts.none()
            .with(Flight.DAY, day)
            .with(Flight.STATUS, status)
            .with(Flight.PLACE, world.log().nextPlace(day, planned));
    Form form = Form.of(CardFields.of(facts, Optional.empty(), world), facts);
    return new Form(form.fields(), form.opened(), form.entries(), 0, 0);
  }

  /** The form of a card begun before, the cursor where something is wanted. */
  static Form of(Flight flight, World world) {
    Optional<RecordId> own = Optional.of(flight.id());
    Form form = Form.of(CardFields.of(flight.facts(), own, world), flight.facts());
    return form.to(CardFields.firstWanted(form, flight.facts(), world));
  }

  /**
   * All facts of the flight as they stand in the form. A kept card is a draft again once anything
   * changes that the check looks at.
   */
  static Facts facts(Form form) {
    Facts facts = form.opened().with(form.facts());
    Set<String> touched = form.touchedFacts().cells().keySet();
    boolean ticked = facts.get(Flight.TICKED).isPresent();
    Facts read =
        ticked && !KEEPS_TICKS.containsAll(touched)
            ? facts.with(Flight.TICKED.name(), Facts.Cell.emptied())
            : facts;
    return UNCHECKED.containsAll(touched) ? read : asDraft(read);
  }

  private static Facts asDraft(Facts facts) {
    boolean kept = facts.get(Flight.STATUS).equals(Optional.of(Flight.Status.CARD));
    return kept ? facts.with(Answer.noFacts()).with(Flight.STATUS, Flight.Status.DRAFT) : facts;
  }

  /**
   * The form after a field was left: what hangs on a changed rocket or motor changes with it.
   *
   * @param own which card it is, once it has an id
   */
  static Form left(Form typed, Facts before, Optional<RecordId> own, World world) {
    Facts now = facts(typed);
    Form form = withMotorsAsWritten(typed, now);
    Optional<RecordId> rocket = now.get(Flight.ROCKET);
    if (rocket.isPresent() && !rocket.equals(before.get(Flight.ROCKET))) {
      return withSetUp(form, rocket.get(), own, world);
    }
    if (!now.get(Flight.MOTOR).equals(before.get(Flight.MOTOR))) {
      return withLots(CardFields.renewed(form, now, own, world), now, world);
    }
    return form;
  }

  /** As with a choice from the list: what was typed for the motors stands as it is written. */
  private static Form withMotorsAsWritten(Form form, Facts now) {
    String motors = now.get(Flight.MOTOR).orElse("");
    boolean written = motors.isEmpty() || motors.equals(form.text(Flight.MOTOR.name()));
    return written ? form : form.set(Flight.MOTOR.name(), motors).to(form.at());
  }

  /** Fills all that the flier has not typed from the rocket's last flight and the last weather. */
  private static Form withSetUp(Form form, RecordId rocket, Optional<RecordId> own, World world) {
    Facts facts = form.opened().with(CardStart.setUp(rocket, world));
    if (form.text(CardFields.WIND).isBlank() && !CardFields.isPlanned(facts)) {
      facts = facts.with(CardStart.wind(facts, world));
    }
    OpenCards others = OpenCards.beside(own, facts.get(Flight.DAY), world.log());
    facts = asDraft(CrowdFields.onFreePad(facts, others, world));
    List<FormField<?>> fields = CardFields.of(facts, own, world);
    Form fresh = Form.of(fields, facts);
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      String name = fields.get(i).name();
      entries.add(
          form.entry(name)
              .filter(entry -> entry.touched() && !HANGS_ON_ROCKET.contains(name))
              .orElse(fresh.entries().get(i)));
    }
    Form filled = new Form(fields, facts, entries, 0, Form.NOTHING_PICKED);
    return filled.to(CardFields.firstWanted(filled, facts(filled), world));
  }

  private static Form withLots(Form form, Facts now, World world) {
    StageLots lots = StageLots.of(now, world);
    Facts named = lots.named(now, world);
    // A lot of a booster that is no longer there has no field to be emptied in.
    Facts opened =
        form.entry(Flight.BOOSTER_LOT.name()).isPresent()
            ? form.opened()
            : form.opened().with(Flight.BOOSTER_LOT.name(), Facts.Cell.emptied());
    // Entered anew where the cursor is: nothing of it was typed by the flier.
    return new Form(form.fields(), opened, form.entries(), form.at(), form.picked())
        .set(Flight.LOT.name(), lots.shown(Flight.LOT, named))
        .set(Flight.BOOSTER_LOT.name(), lots.shown(Flight.BOOSTER_LOT, named))
        .to(form.at());
  }
}
