package padside.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Rocket;
import padside.units.Notations;
import padside.units.UnitSystem;
import padside.units.Wind;

class UnderstoodTest {
  private static final FormField<String> NAME =
      FormField.of(Rocket.NAME, "Name", new Texts("Alder"), "");

  private static Form form(UnitSystem units) {
    FormField<Wind> wind =
        new FormField<>(Place.wind(), "Wind", Notations.wind(units), Rule.none(), "");
    return Form.of(
        List.of(FormField.of(Rocket.MASS, "Mass", Notations.mass(units), ""), wind, NAME),
        Facts.none());
  }

  @Test
  void a_bare_number_is_told_with_the_unit_it_was_taken_in() {
    assertThat(form(UnitSystem.US).type("42").understood(0)).contains("42 oz");
    assertThat(form(UnitSystem.METRIC).type("42").understood(0)).contains("42 g");
  }

  @Test
  void a_bare_wind_is_told_as_it_is_said() {
    assertThat(form(UnitSystem.US).next().type("7g10").understood(1)).contains("7 gusting 10 mph");
  }

  @Test
  void what_has_its_unit_or_is_plain_text_or_cannot_be_read_is_not_told_again() {
    assertThat(form(UnitSystem.US).type("42g").understood(0)).isEmpty();
    assertThat(form(UnitSystem.US).to("name").type("42").understood(2)).isEmpty();
    assertThat(form(UnitSystem.US).type("4.2.1").understood(0)).isEmpty();
    assertThat(form(UnitSystem.US).understood(0)).isEmpty();
  }
}
