package padside.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.flight.Rocket;
import padside.flight.Weather;
import padside.units.Angle;
import padside.units.Mass;
import padside.units.Notations;
import padside.units.UnitSystem;

/** What a form shows of facts, and what facts it makes of that again. */
class ShowThenReadTest {
  private static Form under(UnitSystem system, Facts facts) {
    return Form.of(Forms.fields(system), facts);
  }

  @Test
  void typed_text_comes_back_as_typed() {
    Facts typed = Forms.empty().to("mass_kg").type("4 1/4 oz").to("wind").type("6g9 sw").facts();
    Form again = Forms.over(typed);

    assertThat(again.text("mass_kg")).isEqualTo("4 1/4 oz");
    assertThat(again.text("wind")).isEqualTo("6g9 sw");
    assertThat(again.facts()).isEqualTo(typed);
  }

  @Test
  void a_bare_number_typed_under_one_setting_is_not_misread_under_the_other() {
    Facts ounces = Forms.empty().to("mass_kg").type("4").to("wind").type("6g9").facts();
    Form metric = under(UnitSystem.METRIC, ounces);

    assertThat(ounces.get(Rocket.MASS)).contains(Mass.ofOunces(4));
    assertThat(metric.text("mass_kg")).isEqualTo("113 g");
    assertThat(metric.text("wind")).isEqualTo("2.7 gusting 4 m/s");
    assertThat(metric.facts()).isEqualTo(ounces);
    assertThat(under(UnitSystem.US, metric.facts()).text("mass_kg")).isEqualTo("4");
  }

  @Test
  void a_form_passed_through_without_typing_changes_no_digit() {
    Facts exact =
        Facts.none()
            .with(Rocket.MASS, new Mass(0.123456789))
            .with(Weather.WIND_MEAN.name(), Facts.Cell.of(2.345678))
            .with(Weather.WIND_GUST.name(), Facts.Cell.of(3.456789));
    for (UnitSystem system : UnitSystem.values()) {
      Form form = under(system, exact).next().next().next().previous().previous();
      assertThat(form.facts()).as(system.name()).isEqualTo(exact);
    }
  }

  @Test
  void a_reference_the_list_does_not_know_is_kept_until_another_is_chosen() {
    Facts gone = Facts.none().with(Forms.DEVICE, new padside.fact.RecordId("gone"));

    assertThat(Forms.over(gone).to("device").next().facts()).isEqualTo(gone);
  }

  @Test
  void unreadable_text_is_kept_without_a_value_and_shown_again() {
    Form form = Forms.empty().to("mass_kg").type("heavy").to("wind").type("breezy");
    Facts facts = form.facts();

    assertThat(facts.get(Rocket.MASS)).isEmpty();
    assertThat(facts.cells().get("mass_kg")).isEqualTo(Facts.Cell.unread("heavy"));
    assertThat(Weather.windIn(facts)).isEmpty();
    assertThat(Forms.over(facts).text("mass_kg")).isEqualTo("heavy");
    assertThat(Forms.over(facts).text("wind")).isEqualTo("breezy");
    assertThat(form.objection(1).orElseThrow()).contains("\"heavy\"").contains("4.2oz");
  }

  @Test
  void text_that_has_become_readable_is_still_shown_as_typed() {
    Facts once = Facts.none().with("device", Facts.Cell.unread("tape"));

    assertThat(Forms.over(once).text("device")).isEqualTo("tape");
    assertThat(Forms.over(once).facts()).isEqualTo(once);
  }

  @Test
  void an_emptied_field_is_emptied_in_the_facts() {
    Facts typed = Forms.empty().to("mass_kg").type("4oz").to("wind").type("6 W").facts();
    Facts emptied = Forms.over(typed).to("mass_kg").clear().to("wind").clear().facts();

    assertThat(emptied.cells().get("mass_kg")).isEqualTo(Facts.Cell.emptied());
    assertThat(emptied.get(Weather.WIND_MEAN)).isEmpty();
    assertThat(emptied.get(Weather.WIND_FROM)).isEmpty();
    assertThat(Forms.over(emptied).text("mass_kg")).isEmpty();
  }

  @Test
  void values_without_typed_text_are_shown_and_foreign_data_is_left_alone() {
    Facts foreign = Facts.none().with("mass_kg", Facts.Cell.of("two bricks"));

    assertThat(Forms.over(Facts.none().with(Rocket.MASS, Mass.ofOunces(4.2))).text("mass_kg"))
        .isEqualTo("4.2 oz");
    assertThat(Forms.over(foreign).text("mass_kg")).isEmpty();
    assertThat(Forms.over(foreign).facts()).isEqualTo(foreign);
  }

  /** Degrees become radians and back, which can cost the last bit. */
  @Test
  void an_angle_comes_back_as_typed_though_it_is_stored_in_degrees() {
    FormField<Angle> tilt = FormField.of(Flight.TILT, "Tilt", Notations.angle(), "from vertical");
    for (int tenths = 0; tenths <= 300; tenths++) {
      String typed = tenths / 10.0 + "deg";
      assertThat(tilt.textIn(tilt.facts(typed))).isEqualTo(typed);
    }
    assertThat(tilt.choices()).isEqualTo(Optional.empty());
  }
}
