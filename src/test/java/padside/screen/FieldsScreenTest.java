package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.flight.Field;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.preflight.Settings;
import padside.units.Bearing;
import padside.units.Length;
import padside.units.UnitSystem;

class FieldsScreenTest {
  private final Season season = new Season();
  private final Desk desk = Desk.over(season.log).opening(FieldsScreen::open);

  @Test
  void no_fields_yet() {
    Golden.holds(
        "fields-empty", Desk.over(new MemoryFlightLog()).opening(FieldsScreen::open).frame());
  }

  @Test
  void the_fields_and_the_form_of_one() {
    Golden.holds("fields", desk.frame());
    Golden.holds("field", desk.press("<enter><tab><tab>").frame());
    Golden.holds("field-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("field-edge-wrong", desk.press("<end>; lane 200ft").frame());
  }

  @Test
  void hazards_are_typed_below_the_edges() {
    desk.press("<enter><tab><tab><tab>NE 200 30 pond; 240 300 mast");
    Golden.holds("field-hazard-wrong", desk.frame());
    Golden.holds(
        "field-hazards", desk.press("<backspace><backspace><backspace><backspace>15 mast").frame());
    assertThat(desk.press("; S 90 0 mast").frame()).contains("A hazard has no radius");
  }

  @Test
  void a_field_is_entered_with_its_edges() {
    desk.press(
        "nBarrow<tab>-3<tab>N 300 lane > road;NE 280;E 450 > trees<tab>NE 200 30 pond<tab><tab>43.6N<tab>79.4W");
    desk.press("<f2>");
    Field field = desk.book().fields().get(1);

    assertThat(field.edges())
        .contains(
            new Field.Edge(new Bearing(0), Length.ofFeet(300), "lane", "road"),
            new Field.Edge(new Bearing(90), Length.ofFeet(450), "", "trees"));
    assertThat(field.hazards())
        .containsExactly(
            new Field.Hazard(new Bearing(45), Length.ofFeet(200), Length.ofFeet(30), "pond"));
    assertThat(field.facts().get(Field.LONGITUDE)).contains(-79.4);
    assertThat(desk.frame()).contains("> Barrow").contains("N 300 ft lane > road; NE 280 ft");
  }

  @Test
  void edges_typed_in_feet_are_shown_in_metres_under_the_metric_setting_and_not_changed() {
    desk.press("nBarrow<tab><tab>N 300<f2>");
    Settings metric = Settings.standard().with(UnitSystem.METRIC);
    int before = season.log.actions().size();
    Desk abroad = Desk.over(season.log, metric).opening(FieldsScreen::open).press("<end><enter>");
    abroad.press("<tab><tab><tab><f2>");

    assertThat(abroad.frame()).contains("N 91 m");
    assertThat(season.log.actions()).hasSize(before);
    assertThat(abroad.book().fields().get(1).edges().get(0).distance())
        .isEqualTo(Length.ofFeet(300));
  }

  @Test
  void a_field_is_removed_after_one_question() {
    desk.press("xx");
    assertThat(desk.book().fields()).isEmpty();
    assertThat(season.log.facts(Kind.FIELD, season.meadow).get(Kind.REMOVED)).contains(true);
  }
}
