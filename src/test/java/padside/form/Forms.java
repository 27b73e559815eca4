package padside.form;

import java.util.List;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Rocket;
import padside.units.Notations;
import padside.units.UnitSystem;

/** A form with a field of every sort, for tests. */
final class Forms {
  static final Column<RecordId> DEVICE = Rocket.DEVICE;
  static final RecordId BIG = new RecordId("run.1");
  static final RecordId SMALL = new RecordId("run.2");
  static final RecordId TAPE = new RecordId("run.3");
  static final Choices<RecordId> DEVICES =
      new Choices<>(
          "device",
          List.of(
              new Choices.Option<>(BIG, "24 in chute", ""),
              new Choices.Option<>(SMALL, "12 in chute", "worn"),
              new Choices.Option<>(TAPE, "tape", "")));

  private Forms() {}

  static List<FormField<?>> fields(UnitSystem system) {
    return List.of(
        FormField.of(Rocket.NAME, "Name", new Texts("Skylark"), "what you call it"),
        FormField.of(Rocket.MASS, "Mass", Notations.mass(system), "without motor"),
        FormField.choice(DEVICE, "Device", DEVICES, "what it comes down on"),
        new FormField<>(
            Place.wind(), "Wind", Notations.wind(system), Rule.none(), "mean, gust, from"));
  }

  static Form over(Facts facts) {
    return Form.of(fields(UnitSystem.US), facts);
  }

  static Form empty() {
    return over(Facts.none());
  }
}
