package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.Rocket;
import padside.units.Length;
import padside.units.Mass;

class HistoryScreenTest {
  private final Season season = new Season();

  private Facts facts(Kind kind, RecordId id) {
    return season.log.facts(kind, id);
  }

  private Desk flightDesk() {
    return Desk.over(season.log).opening(world -> FlightScreen.of(season.nominal));
  }

  @Test
  void a_rocket_tells_what_changed_and_takes_it_back_and_does_it_again() {
    Desk desk = Desk.over(season.log).opening(FleetScreen::open);
    desk.press("<enter><tab>3oz<esc>").after(Duration.ofMinutes(7)).press("<enter><tab>95g<esc>");
    Golden.holds("history", desk.press("h").frame());
    Golden.holds("history-60x20", desk.frame(new Size(60, 20)));

    desk.press("u");
    assertThat(facts(Kind.ROCKET, season.skylark).get(Rocket.MASS)).contains(Mass.ofOunces(3));
    Golden.holds("history-undone", desk.frame());
    assertThat(desk.press("u").frame()).contains("It is undone already; r does it again.");

    desk.press("r");
    assertThat(facts(Kind.ROCKET, season.skylark).get(Rocket.MASS)).contains(Mass.ofGrams(95));
    assertThat(desk.press("r").frame()).contains("nothing to do again");

    desk.press("u");
    assertThat(facts(Kind.ROCKET, season.skylark).get(Rocket.MASS))
        .as("done again by a later line, still taken back from the first")
        .contains(Mass.ofOunces(3));
  }

  @Test
  void an_older_change_leaves_newer_cells_alone_and_says_which() {
    Facts both = Facts.none().with(Rocket.NOTE, "old", "old").with(Rocket.FLIER, "Ann", "Ann");
    season.log.save(Action.change("change rocket", Kind.ROCKET, season.skylark, both));
    Facts newer = Facts.none().with(Rocket.NOTE, "new", "new");
    season.log.save(Action.change("change rocket", Kind.ROCKET, season.skylark, newer));

    Desk desk = Desk.over(season.log).opening(FleetScreen::open).press("h<down>");
    assertThat(desk.frame()).contains("Note   blank → old (now new)");
    desk.press("u");
    assertThat(desk.frame()).contains("Changed since and left as it is: Note.");
    assertThat(facts(Kind.ROCKET, season.skylark).get(Rocket.NOTE)).contains("new");
    assertThat(facts(Kind.ROCKET, season.skylark).get(Rocket.FLIER)).isEmpty();
  }

  @Test
  void keys_pressed_while_the_log_answers_follow_one_another() {
    Desk desk = Desk.over(season.log).opening(FleetScreen::open);
    desk.press("<enter><tab>3oz<esc>").holdSaves().press("hu").press("r").press("u").answerSaves();

    assertThat(facts(Kind.ROCKET, season.skylark).get(Rocket.MASS)).contains(Mass.ofOunces(2.5));
    assertThat(desk.log().actions())
        .extracting(Action::label)
        .endsWith("undo: change rocket", "redo: change rocket", "undo: change rocket");
  }

  @Test
  void a_debrief_is_undone_whole_with_the_fix_it_raised() {
    Desk desk =
        Desk.over(season.log)
            .opening(
                world -> {
                  Flight flight = world.log().flight(season.card).orElseThrow();
                  return DebriefScreen.open(flight, world);
                });
    season.log.save(
        Action.change(
                "keep debrief",
                Kind.FLIGHT,
                season.card,
                Facts.none()
                    .with(Flight.STATUS, Flight.Status.FLOWN)
                    .with(Flight.BURN, "nominal")
                    .with(Flight.ALTITUDE, Length.ofFeet(870), "870"))
            .and(
                Action.create(
                    "",
                    Kind.FIX,
                    Facts.none().with(Fix.ROCKET, season.skylark).with(Fix.TEXT, "new lug"))));
    desk = desk.restart().opening(world -> FlightScreen.of(season.card)).press("h");
    Golden.holds("history-debrief", desk.frame());
    desk.press("u");

    assertThat(facts(Kind.FLIGHT, season.card).get(Flight.STATUS)).contains(Flight.Status.CARD);
    assertThat(facts(Kind.FLIGHT, season.card).get(Flight.ALTITUDE)).isEmpty();
    assertThat(desk.book().openFixes(season.skylark)).isEmpty();
    desk.press("r");
    assertThat(desk.book().openFixes(season.skylark)).hasSize(1);
  }

  @Test
  void a_removed_lot_comes_back_from_the_list_of_removed_ones() {
    Desk desk = Desk.over(season.log).opening(RangeBoxScreen::open).press("xx");
    assertThat(desk.book().lot(season.c6)).isEmpty();

    Golden.holds("removed", desk.press("X").frame());
    assertThat(desk.press("h").frame()).contains("remove lot").contains("History: C6-5 · A120325");
    assertThat(desk.press("<esc><enter>").frame()).contains("None was removed.");
    assertThat(desk.press("<esc>").book().lot(season.c6).map(Lot::code)).contains("A120325");
  }

  @Test
  void the_making_of_a_record_is_undone_by_removing_it() {
    Desk desk = Desk.over(season.log).opening(FleetScreen::open).press("h<end>u");
    assertThat(desk.book().rocket(season.skylark)).isEmpty();

    desk.press("<home>u");
    assertThat(desk.book().rocket(season.skylark)).isPresent();
  }

  @Test
  void the_day_undoes_the_last_change_of_the_marked_flight_and_says_which() {
    Meadow meadow = new Meadow().withMorning();
    Desk desk = meadow.desk().press("<end>su");
    assertThat(desk.frame()).contains("Back in the queue. h shows all that was done to it.");
    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.CARD);

    desk.press("<end>c").press("<s-tab>small<enter><esc>").press("u");
    assertThat(meadow.flight(3).facts().get(Flight.ALTIMETER)).isEmpty();
    desk.press("u");
    assertThat(desk.frame()).contains("Undo: back in the queue.");
    assertThat(meadow.flight(3).status()).isEqualTo(Flight.Status.SCRUBBED);
    assertThat(desk.press("h").top()).isInstanceOf(HistoryScreen.class);
  }

  @Test
  void an_undo_that_cannot_be_kept_is_told_and_changes_nothing() {
    Desk desk = flightDesk().press("h");
    desk.failNextSave(new padside.fact.Fault("disk-full", "The disk is full.", "Make room."));

    assertThat(desk.press("u").frame()).contains("The disk is full.");
    assertThat(desk.press("<enter>").top()).isInstanceOf(HistoryScreen.class);
    assertThat(desk.book().flight(season.nominal)).isPresent();
  }
}
