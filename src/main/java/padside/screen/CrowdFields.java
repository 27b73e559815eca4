package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import padside.fact.Facts;
import padside.flight.Day;
import padside.flight.Flight;
import padside.form.Choices;
import padside.form.FormField;
import padside.form.Texts;
import padside.preflight.OpenCards;

/** The fields a card has besides where several fly: whose flight it is, and from which pad. */
final class CrowdFields {
  private CrowdFields() {}

  /** None at all for someone who flies alone from one pad. */
  static List<FormField<?>> of(Facts facts, OpenCards others, World world) {
    List<FormField<?>> fields = new ArrayList<>();
    List<String> fliers = world.log().fliers();
    if (fliers.size() > 1) {
      fields.add(flier(fliers));
    }
    int pads = facts.get(Flight.DAY).flatMap(world.log()::day).map(Day::pads).orElse(1);
    if (pads > 1) {
      fields.add(pad(pads, others));
    }
    return fields;
  }

  /** The card with the first free pad, where the day has several and it names none. */
  static Facts onFreePad(Facts card, OpenCards others, World world) {
    Optional<Integer> free =
        card.get(Flight.DAY).flatMap(world.log()::day).flatMap(others::freePad);
    boolean wanted =
        free.isPresent() && card.get(Flight.PAD).isEmpty() && !CardFields.isPlanned(card);
    return wanted ? card.with(Flight.PAD, free) : card;
  }

  private static FormField<String> flier(List<String> fliers) {
    Choices<String> known =
        new Choices<>(
            "flier", fliers.stream().map(name -> new Choices.Option<>(name, name, "")).toList());
    return FormField.choice(
        Flight.FLIER,
        "Flier",
        known.orElse(new Texts("")),
        "Whose flight it is; the rocket's form names its owner.");
  }

  private static FormField<Integer> pad(int pads, OpenCards others) {
    List<Choices.Option<Integer>> options =
        IntStream.rangeClosed(1, pads)
            .mapToObj(
                pad ->
                    new Choices.Option<>(
                        pad, "" + pad, others.holder(Flight.PAD, pad).orElse("free")))
            .toList();
    return FormField.choice(
            Flight.PAD, "Pad", new Choices<>("pad", options), "Which of the day's pads.")
        .doubting(pad -> others.pad(pad).map(CardFields::sentence));
  }
}
