package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Lot;
import padside.form.FormField;
import padside.motor.MotorText;

/** The lots a card names: one for the topmost motors, in a stack another for the booster's. */
final class StageLots {
  private final Optional<MotorText> motors;
  private final CardChoices choices;

  private StageLots(Optional<MotorText> motors, CardChoices choices) {
    this.motors = motors;
    this.choices = choices;
  }

  static StageLots of(Facts card, World world) {
    return new StageLots(card.get(Flight.MOTOR).map(MotorText::of), new CardChoices(world));
  }

  /** The fields for them: the booster's is there only where the motors are a stack. */
  List<FormField<?>> fields() {
    Optional<MotorText.Part> booster = stage(Flight.BOOSTER_LOT);
    List<FormField<?>> fields = new ArrayList<>();
    fields.add(
        FormField.choice(
            Flight.LOT,
            "Lot",
            choices.lots(stage(Flight.LOT)),
            booster.isPresent()
                ? "The date code on the topmost motor; the range box holds the lots."
                : "The date code on the motor; the range box holds the lots."));
    booster.ifPresent(
        stage ->
            fields.add(
                FormField.choice(
                    Flight.BOOSTER_LOT,
                    "Booster lot",
                    choices.lots(Optional.of(stage)),
                    "The date code on the booster's motor.")));
    return List.copyOf(fields);
  }

  /** The card with each lot kept while it is of its stage's motor and has enough of it left. */
  Facts named(Facts card, World world) {
    return named(Flight.BOOSTER_LOT, named(Flight.LOT, card, world), world);
  }

  private Facts named(Column<RecordId> column, Facts card, World world) {
    Optional<MotorText.Part> stage = stage(column);
    boolean fits =
        card.get(column)
            .flatMap(world.log()::lot)
            .filter(lot -> choices.lotsOf(stage).contains(lot) && choices.holds(lot, stage))
            .isPresent();
    Facts without = card.with(column.name(), Facts.Cell.emptied());
    return fits ? card : without.with(column, choices.onlyLot(stage).map(Lot::id));
  }

  /** How the lot that a card names in one of the two columns is shown; blank for none. */
  String shown(Column<RecordId> column, Facts card) {
    return card.get(column).map(choices.lots(stage(column))::show).orElse("");
  }

  /** A lot is missing where several are at hand, and stale once it is used up. */
  boolean wants(Column<RecordId> column, Facts card, World world) {
    Optional<MotorText.Part> stage = stage(column);
    Optional<Boolean> stale =
        card.get(column).flatMap(world.log()::lot).map(lot -> !choices.holds(lot, stage));
    return stale.orElse(!choices.lotsOf(stage).isEmpty());
  }

  private Optional<MotorText.Part> stage(Column<RecordId> column) {
    return column.equals(Flight.LOT)
        ? motors.map(MotorText::top)
        : motors.flatMap(MotorText::booster);
  }
}
