package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.OutcomeTable;
import padside.form.Choices;
import padside.form.Conditions;
import padside.form.FormField;
import padside.form.Range;
import padside.form.Rule;
import padside.form.Texts;
import padside.preflight.OpenCards;
import padside.units.Length;
import padside.units.Notations;
import padside.units.TimeSpan;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/** The fields of a debrief, the altitude first: on a nominal flight it is all there is to type. */
final class DebriefFields {
  /** A measured altitude this much below or above the predicted one is looked at again. */
  private static final double LOWEST_SHARE = 0.2;

  private static final double HIGHEST_SHARE = 2;

  private DebriefFields() {}

  /** The outcome hoped for in every aspect: the first word the table has for it. */
  static Facts nominal(OutcomeTable outcomes) {
    Facts facts = Facts.none();
    for (Column<String> aspect : Flight.ASPECTS) {
      facts =
          facts.with(
              aspect,
              outcomes.of(aspect.name()).stream().findFirst().map(OutcomeTable.Outcome::code));
    }
    return facts;
  }

  /**
   * The fields for a debrief that says this much, what is changed most often first.
   *
   * @param debrief as it stands in the form
   */
  static List<FormField<?>> of(Flight flight, Facts debrief, World world) {
    OutcomeTable outcomes = world.outcomes();
    List<FormField<?>> fields = new ArrayList<>(landed(flight, world));
    fields.add(aspect(Flight.EJECTION, "Ejection", outcomes));
    fields.add(aspect(Flight.BOOST, "Boost", outcomes));
    if (wantsToward(debrief, outcomes)) {
      fields.add(
          FormField.of(
              Flight.BOOST_TOWARD,
              "Boost toward",
              Notations.bearing(),
              "Where it arced or turned to, like SW or 240."));
    }
    fields.add(aspect(Flight.RECOVERY, "Recovery", outcomes));
    fields.add(aspect(Flight.LANDING, "Landing", outcomes));
    fields.add(aspect(Flight.LANDED_ON, "Landed on", outcomes));
    fields.add(condition(outcomes));
    fields.addAll(toMend(debrief));
    fields.add(aspect(Flight.BURN, "Burn", outcomes));
    fields.addAll(timed());
    fields.addAll(seldom(flight, world));
    return List.copyOf(fields);
  }

  private static List<FormField<?>> landed(Flight flight, World world) {
    UnitSystem units = world.settings().units();
    return List.of(
        altitude(flight, units),
        FormField.of(
            Flight.LANDING_BEARING, "Lies toward", Notations.bearing(), "From the pad: NE or 45."),
        FormField.of(
            Flight.LANDING_DISTANCE,
            "Distance",
            Notations.distance(units),
            "From the pad: like "
                + Notations.distance(units).example()
                + " or 60p, paces of 30 in."));
  }

  /** Asked once the boost was not the one hoped for. */
  private static boolean wantsToward(Facts debrief, OutcomeTable outcomes) {
    boolean straight =
        debrief
            .get(Flight.BOOST)
            .flatMap(code -> outcomes.find(Flight.BOOST.name(), code))
            .map(boost -> boost.mark() == OutcomeTable.Mark.NOMINAL)
            .orElse(true);
    return !straight || isTold(Flight.BOOST_TOWARD, debrief);
  }

  private static boolean isTold(Column<?> column, Facts facts) {
    Facts.Cell cell = facts.cells().get(column.name());
    return cell != null && !cell.equals(Facts.Cell.emptied());
  }

  private static FormField<List<Flight.PartState>> condition(OutcomeTable outcomes) {
    return FormField.of(
        Flight.CONDITION,
        "Condition",
        new Conditions(outcomes),
        "Part and how it is, ; between: fins cracked; lug loose. Down picks.");
  }

  private static List<FormField<?>> toMend(Facts debrief) {
    List<FormField<?>> fields = new ArrayList<>();
    fields.add(
        FormField.of(
            Flight.TO_MEND,
            "To mend",
            new Texts(""),
            "Each becomes a fix of the rocket, ; between; ! behind one grounds it until mended."));
    if (isTold(Flight.TO_MEND, debrief)) {
      fields.add(
          FormField.choice(
              Flight.TO_MEND_SEVERITY,
              "Severity",
              FixShelf.severities(),
              "Of those without a !: look at it before the next flight, or grounds it."));
    }
    return fields;
  }

  private static List<FormField<?>> timed() {
    return List.of(
        seconds(
                Flight.MEASURED_DELAY,
                "Measured delay",
                "Seconds from burnout to ejection; from the mark, unless it was timed.")
            .doubtingOutside(TimeSpan::seconds, new TimeSpan(0), new TimeSpan(20)),
        seconds(Flight.EJECTION_MARK, "Ejection at", "Seconds from lift-off, as marked.")
            .doubtingOutside(TimeSpan::seconds, new TimeSpan(0), new TimeSpan(60)),
        seconds(Flight.TOUCHDOWN_MARK, "Touchdown at", "Seconds from lift-off, as marked.")
            .doubtingOutside(TimeSpan::seconds, new TimeSpan(0), new TimeSpan(1200)));
  }

  private static FormField<TimeSpan> seconds(Column<TimeSpan> column, String label, String hint) {
    return FormField.of(column, label, Notations.timeSpan(), hint);
  }

  private static List<FormField<?>> seldom(Flight flight, World world) {
    List<FormField<?>> fields = new ArrayList<>();
    if (!world.log().altimeters().isEmpty()) {
      fields.add(
          FormField.choice(
              Flight.ALTIMETER,
              "Altimeter",
              new CardChoices(world).altimeters(OpenCards.none(world.log())),
              "Which one the altitude is from; as on the card."));
    }
    if (isTold(Flight.DAMAGE, flight.facts())) {
      fields.add(
          FormField.of(
              Flight.DAMAGE, "Damage", new Texts(""), "As it was told; Condition has its place."));
    }
    fields.add(
        FormField.of(
            Flight.NOTE,
            "Note",
            new Texts(""),
            "Anything worth knowing. Enter keeps the debrief."));
    return fields;
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

  private static FormField<String> aspect(
      Column<String> column, String label, OutcomeTable outcomes) {
    Map<OutcomeTable.Mark, String> notes =
        Map.of(
            OutcomeTable.Mark.NOMINAL, "as hoped",
            OutcomeTable.Mark.PASSABLE, "",
            OutcomeTable.Mark.MALFUNCTION, "malfunction",
            OutcomeTable.Mark.BURST, "malfunction");
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
        Paragraph.capital(column.meaning()) + ": Down opens the list, or type part of it.");
  }
}
