package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.flight.Ruling.Verdict;
import padside.units.Length;
import padside.units.Speed;

class ConflictScreenTest {
  private final Meadow meadow = new Meadow().withMorning();
  private final RecordId kite = meadow.flight(2).id();

  private Contested of(Kind kind, RecordId record) {
    return new Contested(meadow.log, kind, record);
  }

  private static Facts motor(String motor) {
    return Facts.none().with(Flight.MOTOR, motor, motor);
  }

  private static Facts altitude(double feet) {
    return Facts.none().with(Flight.ALTITUDE, Length.ofFeet(feet), Math.round(feet) + "");
  }

  private Facts facts(RecordId flight) {
    return meadow.log.facts(Kind.FLIGHT, flight);
  }

  @Test
  void the_day_says_how_many_and_one_key_leads_there_another_chooses() {
    of(Kind.FLIGHT, kite).says(List.of(altitude(905), altitude(950)));
    of(Kind.ROCKET, meadow.wren)
        .says(
            List.of(
                Facts.none().with(Rocket.NOTE, "fin loose", "fin loose"),
                Facts.none().with(Rocket.NOTE, "fin glued", "fin glued")));
    Desk desk = meadow.desk();
    assertThat(desk.frame()).contains("2 records in conflict: r");
    assertThat(desk.frame(new Size(60, 20))).contains("2 records in conflict: r");

    desk.press("r");
    Golden.holds("conflict", desk.frame());
    Golden.holds("conflict-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("conflict-120x40", desk.frame(new Size(120, 40)));

    desk.press("1");
    assertThat(facts(kite).get(Flight.ALTITUDE)).contains(Length.ofFeet(905));
    assertThat(facts(kite).typed(Flight.ALTITUDE)).contains("905");
    assertThat(desk.log().actions()).extracting(Action::label).endsWith("choose altitude 905 ft");
    assertThat(desk.frame()).contains("Conflict 1 of 1").contains("rocket Wren").contains("Done:");

    desk.press("2");
    assertThat(meadow.log.facts(Kind.ROCKET, meadow.wren).get(Rocket.NOTE)).contains("fin glued");
    assertThat(desk.frame()).contains("Nothing is open");
    assertThat(desk.press("<esc>").frame()).doesNotContain("in conflict");
  }

  @Test
  void later_leaves_it_as_it_is_and_goes_round() {
    of(Kind.FLIGHT, kite).says(List.of(altitude(905), altitude(950)));
    of(Kind.FLIGHT, kite).says(List.of(motor("C6-5"), motor("D12-5")));
    Desk desk = meadow.desk().press("r");
    int before = desk.log().actions().size();
    assertThat(desk.frame()).contains("Conflict 1 of 2").contains("Motor: which is right?");

    assertThat(desk.press("<tab>").frame()).contains("Conflict 2 of 2").contains("Altitude");
    assertThat(desk.press(" ").frame()).contains("Conflict 1 of 2");
    assertThat(desk.press("<s-tab>").frame()).contains("Conflict 2 of 2");
    assertThat(desk.press("739").frame()).as("no side has that number").contains("2 of 2");
    assertThat(desk.log().actions()).hasSize(before);
  }

  @Test
  void what_one_check_found_is_chosen_as_one() {
    Facts go = Facts.none().with(Flight.VERDICT, Verdict.GO).with(Flight.LIMIT, Speed.ofMph(14));
    Facts no = Facts.none().with(Flight.VERDICT, Verdict.NO_GO).with(Flight.LIMIT, Speed.ofMph(6));
    RecordId wren = meadow.flight(3).id();
    of(Kind.FLIGHT, wren).says(List.of(go, no));
    Desk desk = meadow.desk().press("r");
    Golden.holds("conflict-check", desk.frame());

    desk.press("1");
    assertThat(facts(wren).get(Flight.VERDICT)).contains(Verdict.GO);
    assertThat(facts(wren).get(Flight.LIMIT)).contains(Speed.ofMph(14));
    assertThat(desk.frame()).contains("Nothing is open");
  }

  @Test
  void removed_there_and_changed_here_asks_whether_it_is_to_stay() {
    of(Kind.ROCKET, meadow.wren)
        .removedAnd(Facts.none().with(Rocket.NOTE, "fin glued", "fin glued"));
    Desk desk = meadow.desk().press("r");
    Golden.holds("conflict-removed", desk.frame());

    desk.press("2");
    assertThat(desk.book().rocket(meadow.wren)).isPresent();
    assertThat(desk.log().actions()).extracting(Action::label).endsWith("keep rocket");

    of(Kind.ROCKET, meadow.wren)
        .removedAnd(Facts.none().with(Rocket.NOTE, "fin glued", "fin glued"));
    meadow.desk().press("r1");
    assertThat(meadow.desk().book().rocket(meadow.wren)).isEmpty();
  }

  @Test
  void three_machines_stand_below_each_other() {
    of(Kind.FLIGHT, kite).says(List.of(altitude(905), altitude(950), altitude(912)));
    Desk desk = meadow.desk().press("r");
    Golden.holds("conflict-three", desk.frame(new Size(60, 20)));

    desk.press("2");
    assertThat(facts(kite).get(Flight.ALTITUDE)).contains(Length.ofFeet(950));
  }

  @Test
  void the_last_choice_is_undone_from_there() {
    of(Kind.FLIGHT, kite).says(List.of(altitude(905), altitude(950)));
    Desk desk = meadow.desk().press("r");
    assertThat(desk.press("u").frame()).contains("Nothing was chosen here yet.");
    desk.press("1");
    assertThat(desk.press("u").frame()).contains("choose altitude 905");
    desk.press("u");
    assertThat(facts(kite).get(Flight.ALTITUDE)).contains(Length.ofFeet(912));
  }

  @Test
  void keys_pressed_while_a_choice_is_kept_mean_the_next_question() {
    of(Kind.FLIGHT, kite).says(List.of(motor("C6-5"), motor("D12-5")));
    of(Kind.FLIGHT, kite).says(List.of(altitude(905), altitude(950)));
    meadow.desk().press("r").holdSaves().press("1").press("2").answerSaves();

    assertThat(facts(kite).get(Flight.MOTOR)).contains("C6-5");
    assertThat(facts(kite).get(Flight.ALTITUDE)).contains(Length.ofFeet(950));
  }

  @Test
  void a_choice_that_cannot_be_kept_leaves_the_question_open() {
    of(Kind.FLIGHT, kite).says(List.of(altitude(905), altitude(950)));
    Desk desk = meadow.desk().press("r");
    desk.failNextSave(new Fault("disk-full", "The disk is full.", "Make room."));

    assertThat(desk.press("1").frame()).contains("The disk is full.");
    assertThat(desk.press("<enter>").frame()).contains("Conflict 1 of 1");
  }

  @Test
  void the_flight_itself_says_what_is_contested() {
    of(Kind.FLIGHT, kite).says(List.of(altitude(905), altitude(950)));
    Desk desk = meadow.desk().opening(world -> FlightScreen.of(kite));
    assertThat(desk.frame()).contains("CONFLICT").contains("Altitude: machines say");
    assertThat(desk.press("r").frame()).contains("Conflict 1 of 1");
  }

  @Test
  void a_form_says_which_of_its_fields_is_contested() {
    of(Kind.ROCKET, meadow.wren)
        .says(
            List.of(
                Facts.none().with(Rocket.NOTE, "fin loose", "fin loose"),
                Facts.none().with(Rocket.NOTE, "fin glued", "fin glued")));
    Desk desk = meadow.desk().press("f<down><enter>");
    assertThat(desk.frame()).contains("Rocket: Wren").contains("In conflict, r on the day: Note");
    assertThat(meadow.desk().press("f<enter>").frame()).doesNotContain("In conflict");
  }

  @Test
  void a_log_without_any_says_so() {
    assertThat(meadow.desk().frame()).doesNotContain("in conflict");
    assertThat(meadow.desk().press("r").frame()).contains("the machines of this log agree");
  }
}
