package padside.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.flight.Rocket;
import padside.units.Mass;
import padside.units.Notations;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

class FormTest {
  private final Form named = Forms.over(Facts.none().with(Rocket.NAME, "Skylark", "Skylark"));

  @Test
  void the_first_character_typed_into_an_entered_field_replaces_what_stood_there() {
    Form weighed = Forms.over(Facts.none().with(Rocket.MASS, Mass.ofOunces(4), "4oz")).next();

    assertThat(weighed.type("5").type("g").text("mass_kg")).isEqualTo("5g");
    assertThat(weighed.previous().next().type("5").text("mass_kg")).isEqualTo("5");
    assertThat(weighed.end().type("!").text("mass_kg")).isEqualTo("4oz!");
  }

  @Test
  void free_text_is_added_to() {
    assertThat(named.type(" II").text("name")).isEqualTo("Skylark II");
    assertThat(named.next().previous().type(" II").text("name")).isEqualTo("Skylark II");
    assertThat(named.clear().type("Kite").text("name")).isEqualTo("Kite");
  }

  @Test
  void moving_the_cursor_first_edits_what_stood_there() {
    assertThat(named.end().type("!").text("name")).isEqualTo("Skylark!");
    assertThat(named.left().type("-").text("name")).isEqualTo("Skylar-k");
    assertThat(named.home().type("A ").text("name")).isEqualTo("A Skylark");
    assertThat(named.home().right().delete().text("name")).isEqualTo("Sylark");
    assertThat(named.backspace().text("name")).isEqualTo("Skylar");
    assertThat(named.clear().text("name")).isEmpty();
  }

  @Test
  void keys_at_the_ends_of_the_text_change_nothing() {
    assertThat(named.home().backspace().left().text("name")).isEqualTo("Skylark");
    assertThat(named.end().delete().right().entry().cursor()).isEqualTo(7);
    assertThat(named.home().backspace().touched()).isFalse();
    assertThat(named.end().delete().touched()).isFalse();
  }

  @Test
  void the_cursor_never_stands_inside_a_character() {
    Form rocket = Forms.over(Facts.none().with(Rocket.NAME, "A\uD83D\uDE80B"));

    assertThat(rocket.end().left().left().entry().cursor()).isEqualTo(1);
    assertThat(rocket.home().right().right().entry().cursor()).isEqualTo(3);
    assertThat(rocket.end().left().backspace().text("name")).isEqualTo("AB");
    assertThat(rocket.home().right().delete().text("name")).isEqualTo("AB");
  }

  @Test
  void a_text_stops_growing_where_a_note_of_a_few_lines_ends() {
    Form full = Forms.empty().type("x".repeat(Form.LONGEST_TEXT));

    assertThat(full.type("y")).isEqualTo(full);
    assertThat(full.clear().type("y").text("name")).isEqualTo("y");
  }

  @Test
  void the_cursor_goes_through_the_fields_and_stays_at_the_ends() {
    assertThat(named.previous().at()).isZero();
    assertThat(named.next().next().next().next().next().at()).isEqualTo(3);
    assertThat(named.to("device").field().name()).isEqualTo("device");
    assertThat(named.to("nowhere").at()).isZero();
  }

  @Test
  void a_text_can_be_put_into_a_field_by_name() {
    Form set = named.set("mass_kg", "4oz");

    assertThat(set.facts().get(Rocket.MASS)).contains(Mass.ofOunces(4));
    assertThat(named.set("nowhere", "4oz")).isEqualTo(named);
    assertThat(named.text("nowhere")).isEmpty();
    assertThat(named.set("name", "Skylark").touched()).isFalse();
  }

  @Test
  void objections_and_doubts_are_told_by_field() {
    Rule<Mass> heavy =
        new Range<>(
            "Mass",
            Notations.mass(UnitSystem.METRIC),
            Mass::kilograms,
            new Mass(0.005),
            new Mass(1.5));
    List<FormField<?>> fields =
        List.of(
            FormField.of(Rocket.MASS, "Mass", Notations.mass(UnitSystem.METRIC), "without motor")
                .doubting(heavy));
    Form form = Form.of(fields, Facts.none());

    assertThat(form.firstObjection()).isEmpty();
    assertThat(form.doubt(0)).isEmpty();
    assertThat(form.type("120").doubt(0)).isEmpty();
    assertThat(form.type("5g").doubt(0)).isEmpty();
    assertThat(form.type("1.5kg").doubt(0)).isEmpty();
    assertThat(form.type("3kg").doubt(0))
        .contains(
            "Mass 3000 g is outside 5 g to 1500 g; check the number and its unit, or go on and"
                + " keep it.");
    assertThat(form.type("0").doubt(0).orElseThrow()).startsWith("Mass 0 g is outside");
    assertThat(form.type("-3").firstObjection()).contains(0);
    assertThat(form.type("-3").objection(0).orElseThrow()).contains("cannot be negative");
    assertThat(form.type("heavy").doubt(0)).isEmpty();
  }

  @Test
  void a_part_is_doubted_unless_it_is_less_than_the_whole() {
    UnitNotation<Mass> grams = Notations.mass(UnitSystem.METRIC);
    List<FormField<?>> fields =
        List.of(
            FormField.of(Rocket.MASS, "Bare mass", grams, ""),
            FormField.of(Rocket.BOOSTER_MASS, "Booster mass", grams, "")
                .doubting(
                    new Below<>("Booster mass", Rocket.MASS, "bare mass", grams, Mass::kilograms)));
    Form part = Form.of(fields, Facts.none()).next().type("30g");

    assertThat(part.doubt(1)).as("the whole is not known").isEmpty();
    assertThat(part.previous().type("31g").doubt(1)).isEmpty();
    assertThat(part.previous().type("30g").doubt(1))
        .contains(
            "Booster mass 30 g is not below the bare mass of 30 g, which it is a part of; check"
                + " both, or go on and keep it.");
    assertThat(part.previous().type("heavy").doubt(1)).isEmpty();
    assertThat(part.previous().type("3g").doubt(0)).as("the whole is not doubted").isEmpty();
    assertThat(new Below<>("", Rocket.MASS, "", grams, Mass::kilograms).doubt(new Mass(1)))
        .as("by itself")
        .isEmpty();
  }

  @Test
  void the_cursor_is_put_where_it_was_when_fields_come_and_go() {
    assertThat(named.at("mass_kg").at()).isEqualTo(named.next().at());
    assertThat(named.next().at("nowhere").at()).isEqualTo(named.next().at());
    assertThat(named.at("mass_kg").touched()).isFalse();
    assertThat(named.entry("name").map(Entry::typed)).contains("Skylark");
    assertThat(named.entry("nowhere")).isEmpty();
  }

  @Test
  void a_form_without_fields_is_refused() {
    List<FormField<?>> fields = Forms.fields(UnitSystem.US);
    Entry entry = Entry.of("", true);

    assertThatThrownBy(() -> Form.of(List.of(), Facts.none()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Form(fields, Facts.none(), List.of(entry), 0, -1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> new Form(fields, Facts.none(), List.of(entry, entry, entry, entry), 4, -1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void only_what_was_touched_counts_as_changed() {
    assertThat(named.next().next().touched()).isFalse();
    assertThat(named.next().next().touchedFacts().isEmpty()).isTrue();
    assertThat(named.next().type("4").touchedFacts().cells()).containsOnlyKeys("mass_kg");
    assertThat(named.next().type("4").facts().get(Rocket.NAME)).isEqualTo(Optional.of("Skylark"));
  }
}
