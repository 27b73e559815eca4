package padside.screen;

import java.util.List;
import padside.fact.Column;
import padside.flight.Kind;
import padside.form.Delays;
import padside.form.FormField;
import padside.form.Texts;
import padside.motor.MotorType;
import padside.units.Length;
import padside.units.Mass;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** The form of a motor type of the flier's own. */
final class MotorFields {
  private MotorFields() {}

  static RecordForm.Sheet sheet(World world) {
    UnitSystem units = world.settings().units();
    return new RecordForm.Sheet(
        Kind.MOTOR,
        "motor type",
        List.of(
            FormField.of(
                MotorType.DESIGNATION,
                "Designation",
                new Texts("C6"),
                "As in the trade, without the delay: C6."),
            FormField.of(MotorType.IMPULSE_CLASS, "Class", new Texts("C"), "Its letter, like C."),
            diameter(),
            FormField.of(
                MotorType.DELAYS,
                "Delays",
                new Delays(),
                "As sold, in seconds; P is plugged: 3;5;7."),
            FormField.of(
                MotorType.TOTAL_IMPULSE,
                "Total impulse",
                Notations.impulse(),
                "Newton seconds, from the certification sheet: like 8.8."),
            FormField.of(
                MotorType.PEAK_THRUST, "Peak thrust", Notations.force(), "Newtons: like 14.1."),
            seconds(MotorType.TIME_TO_PEAK, "Time to peak", "From ignition to the peak: like 0.2."),
            seconds(
                MotorType.TIME_TO_SUSTAIN,
                "Time to sustain",
                "From ignition to where the thrust settles: like 0.3."),
            seconds(MotorType.BURN_TIME, "Burn time", "From ignition to burnout: like 1.86."),
            mass(MotorType.TOTAL_MASS, "Total mass", "Of the unused motor.", units),
            mass(MotorType.PROPELLANT_MASS, "Propellant mass", "What of it burns.", units),
            FormField.of(
                MotorType.PROVENANCE,
                "Source",
                new Texts("certification sheet of 2019"),
                "Where these numbers come from; it is shown with every check.")));
  }

  /** In mm under either unit setting, as cases are named. */
  private static FormField<Length> diameter() {
    UnitNotation<Length> notation = Notations.bodyLength(UnitSystem.METRIC);
    return FormField.of(
            MotorType.DIAMETER, "Case diameter", notation, "In mm, as cases are named: 18.")
        .doubtingOutside(Length::metres, Length.ofMillimetres(6), Length.ofMillimetres(98));
  }

  private static FormField<TimeSpan> seconds(Column<TimeSpan> column, String label, String hint) {
    return FormField.of(column, label, Notations.timeSpan(), hint)
        .doubtingOutside(TimeSpan::seconds, new TimeSpan(0.01), new TimeSpan(20));
  }

  private static FormField<Mass> mass(
      Column<Mass> column, String label, String hint, UnitSystem units) {
    UnitNotation<Mass> notation = Notations.mass(units);
    return FormField.of(column, label, notation, hint + " Like " + notation.example() + ".")
        .doubtingOutside(Mass::kilograms, Mass.ofGrams(0.3), Mass.ofGrams(1500));
  }
}
