package padside.screen;

import java.util.Arrays;
import java.util.List;
import padside.fact.Column;
import padside.flight.Altimeter;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.RecoveryDevice;
import padside.form.Choices;
import padside.form.Counts;
import padside.form.DateText;
import padside.form.FormField;
import padside.form.Texts;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** The forms of what lies in the range box. */
final class RangeBoxFields {
  private RangeBoxFields() {}

  static RecordForm.Sheet lot(World world) {
    return new RecordForm.Sheet(
        Kind.LOT,
        "lot",
        List.of(
            FormField.of(
                Lot.MOTOR,
                "Motor",
                new CardChoices(world).oneMotor(),
                "Full designation with the delay, like C6-5; t in the range box adds a type."),
            FormField.of(
                Lot.CODE,
                "Lot code",
                new Texts(""),
                "The batch or date code printed on the motor or the pack."),
            FormField.of(
                Lot.BOUGHT, "Bought", new Counts(false), "How many motors were bought, like 3."),
            FormField.of(
                Lot.BOUGHT_ON, "Bought on", new DateText(), "As far as known: 2026-05-02 or 2026."),
            FormField.of(Lot.PLACE, "Place", new Texts(""), "Where it is kept."),
            FormField.of(
                Lot.CORRECTION,
                "Correction",
                new Counts(true),
                "Added to the count after a look into the box, like -1; + and - in the list do it"
                    + " too."),
            FormField.of(Lot.NOTE, "Note", new Texts(""), "Anything worth knowing."),
            FormField.of(
                Lot.DATE_CODE,
                "Date code",
                new Texts(""),
                "The maker's date code as printed on the case, where the lot code is another.")));
  }

  static RecordForm.Sheet device(World world) {
    UnitSystem units = world.settings().units();
    return new RecordForm.Sheet(
        Kind.DEVICE,
        "recovery device",
        List.of(
            FormField.of(
                RecoveryDevice.NAME, "Name", new Texts("18 in nylon"), "What you call it."),
            FormField.choice(
                RecoveryDevice.SHAPE, "Shape", shapes(), "Parachute or streamer: type p or s."),
            size(RecoveryDevice.DIAMETER, "Chute diameter", "Across, laid flat.", units),
            size(RecoveryDevice.WIDTH, "Streamer width", "Its short side.", units),
            size(RecoveryDevice.LENGTH, "Streamer length", "Its long side.", units),
            drag(),
            FormField.of(
                RecoveryDevice.NOTE, "Note", new Texts(""), "Spill hole, worn lines, colour.")));
  }

  private static Choices<RecoveryDevice.Shape> shapes() {
    return new Choices<>(
        "shape",
        Arrays.stream(RecoveryDevice.Shape.values())
            .map(shape -> new Choices.Option<>(shape, shape.code(), ""))
            .toList());
  }

  private static FormField<Length> size(
      Column<Length> column, String label, String hint, UnitSystem units) {
    UnitNotation<Length> notation = Notations.canopyLength(units);
    return FormField.of(column, label, notation, hint + " Like " + notation.example() + ".")
        .doubtingOutside(Length::metres, Length.ofMillimetres(10), Length.ofMillimetres(5000));
  }

  /**
   * Flat sheet parachute 0.75 on the flat canopy, as club pages give it; streamer 0.1 to 0.2 on one
   * side, from memory.
   */
  private static FormField<Double> drag() {
    return FormField.of(
            RecoveryDevice.DRAG_COEFFICIENT,
            "Drag coefficient",
            Notations.number(),
            "Parachute: on π/4 × diameter², near 0.75 for a flat sheet. Streamer: on width ×"
                + " length, one side, near 0.15.")
        .doubtingOutside(Double::doubleValue, 0.05, 2.0);
  }

  static RecordForm.Sheet altimeter() {
    return new RecordForm.Sheet(
        Kind.ALTIMETER,
        "altimeter",
        List.of(
            FormField.of(Altimeter.NAME, "Name", new Texts(""), "What you call it."),
            FormField.of(
                Altimeter.NOTE, "Note", new Texts(""), "Battery, resolution, how to arm it.")));
  }
}
