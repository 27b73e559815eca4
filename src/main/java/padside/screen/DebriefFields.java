package padside.screen;

import java.util.List;
import java.util.Map;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.OutcomeTable;
import padside.form.Choices;
import padside.form.FormField;
import padside.form.Range;
import padside.form.Rule;
import padside.form.Texts;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** The fields of a debrief, the altitude first: on a nominal flight it is all there is to type. */
final class DebriefFields {
  private static final List<Column<String>> ASPECTS =
      List.of(
          Flight.BOOST,
          Flight.BURN,
          Flight.EJECTION,
          Flight.RECOVERY,
          Flight.LANDING,
          Flight.LANDED_ON);

  /** A measured altitude this much below or above the predicted one is looked at again. */
  private static final double LOWEST_SHARE = 0.2;

  private static final double HIGHEST_SHARE = 2;

  private DebriefFields() {}

  /** The outcome hoped for in every aspect: the first word the table has for it. */
  static Facts nominal(OutcomeTable outcomes) {
    Facts facts = Facts.none();
    for (Column<String> aspect : ASPECTS) {
      facts =
          facts.with(
              aspect,
              outcomes.of(aspect.name()).stream().findFirst().map(OutcomeTable.Outcome::code));
    }
    return facts;
  }

  static List<FormField<?>> of(Flight flight, World world) {
    UnitSystem units = world.settings().units();
    OutcomeTable outcomes = world.outcomes();
    return List.of(
        altitude(flight, units),
        aspect(Flight.BOOST, "Boost", outcomes),
        aspect(Flight.BURN, "Burn", outcomes),
        aspect(Flight.EJECTION, "Ejection", outcomes),
        delay(),
        aspect(Flight.RECOVERY, "Recovery", outcomes),
        aspect(Flight.LANDING, "Landing", outcomes),
        aspect(Flight.LANDED_ON, "Landed on", outcomes),
        FormField.of(
            Flight.LANDING_BEARING, "Lies toward", Notations.bearing(), "From the pad: NE or 45."),
        FormField.of(
            Flight.LANDING_DISTANCE,
            "Distance",
            Notations.distance(units),
            "From the pad: like " + Notations.distance(units).example() + "."),
        FormField.of(Flight.DAMAGE, "Damage", new Texts(""), "What broke."),
        FormField.of(
            Flight.TO_MEND,
            "To mend",
            new Texts(""),
            "Before it flies again: becomes a fix of the rocket when the debrief is kept."),
        FormField.choice(
            Flight.TO_MEND_SEVERITY,
            "Severity",
            FixShelf.severities(),
            "Look at it before the next flight, or it grounds the rocket until mended."),
        FormField.of(
            Flight.NOTE,
            "Note",
            new Texts(""),
            "Anything worth knowing. Enter keeps the debrief."));
  }

  private static FormField<Length> altitude(Flight flight, UnitSystem units) {
    UnitNotation<Length> notation = Notations.altitude(units);
    Rule<Length> unlikely =
        flight
            .facts()
            .get(Flight.PREDICTED_APOGEE)
            .<Rule<Length>>map(
                predicted ->
                    new Range<>(
                        "Altitude",
                        notation,
                        Length::metres,
                        new Length(LOWEST_SHARE * predicted.metres()),
                        new Length(HIGHEST_SHARE * predicted.metres())))
            .orElse(Rule.none());
    return FormField.of(
            Flight.ALTITUDE,
            "Altitude",
            notation,
            "Above the pad, as the altimeter tells it: like "
                + notation.example()
                + ". F2 keeps the debrief.")
        .doubting(unlikely);
  }

  private static FormField<TimeSpan> delay() {
    return FormField.of(
            Flight.MEASURED_DELAY,
            "Measured delay",
            Notations.timeSpan(),
            "Seconds from burnout to ejection, when it was timed.")
        .doubtingOutside(TimeSpan::seconds, new TimeSpan(0), new TimeSpan(20));
  }

  private static FormField<String> aspect(
      Column<String> column, String label, OutcomeTable outcomes) {
    Map<OutcomeTable.Mark, String> notes =
        Map.of(
            OutcomeTable.Mark.NOMINAL, "as hoped",
            OutcomeTable.Mark.PASSABLE, "",
            OutcomeTable.Mark.MALFUNCTION, "malfunction");
    List<Choices.Option<String>> options =
        outcomes.of(column.name()).stream()
            .map(
                outcome ->
                    new Choices.Option<>(
                        outcome.code(), outcome.words(), notes.getOrDefault(outcome.mark(), "")))
            .toList();
    return FormField.choice(
        column,
        label,
        new Choices<>("outcome", options),
        column.meaning().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
            + column.meaning().substring(1)
            + ": Down opens the list, or type part of it.");
  }
}
