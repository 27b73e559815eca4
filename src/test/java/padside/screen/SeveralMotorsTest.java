package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Lot;

/** Clusters and stacks on the card, and where flights are told. */
class SeveralMotorsTest {
  private final Meadow meadow = new Meadow().withMorning();
  private final RecordId boosters = lot("C6-0", "N4", 2);
  private final RecordId uppers = lot("C6-7", "P1", 3);

  /** A card of the heron, the cursor in the motor. */
  private Desk motor() {
    return meadow.desk().press("nher<enter>" + "<s-tab>".repeat(8));
  }

  private RecordId lot(String motor, String code, int bought) {
    return meadow.log.has(
        Kind.LOT,
        Facts.none().with(Lot.MOTOR, motor).with(Lot.CODE, code).with(Lot.BOUGHT, bought));
  }

  private RecordId flown(String motor) {
    return meadow.log.has(
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.STATUS, Flight.Status.FLOWN)
            .with(Flight.DAY, meadow.day)
            .with(Flight.ROCKET, meadow.heron)
            .with(Flight.MOTOR, motor)
            .with(Flight.LOT, uppers)
            .with(Flight.BOOSTER_LOT, boosters));
  }

  /** Five are left of lot K7: the heron took one of six. */
  @Test
  void a_cluster_comes_from_a_lot_that_has_enough_left() {
    Desk desk = motor().press("3xc6-5<tab>");
    assertThat(meadow.flight(4).motor()).contains("3xC6-5");
    assertThat(meadow.flight(4).lot()).contains(meadow.lotK);

    desk.press("<s-tab>6xc6-5<tab>");
    assertThat(meadow.flight(4).motor()).contains("6xC6-5");
    assertThat(meadow.flight(4).lot()).isEmpty();
    assertThat(desk.frame()).contains("5 left");
  }

  @Test
  void a_stack_names_a_lot_for_each_stage() {
    Desk desk = motor().press("c6-0,c6-7<tab>");

    assertThat(meadow.flight(4).motor()).contains("C6-0 then C6-7");
    assertThat(meadow.flight(4).lot()).contains(uppers);
    assertThat(meadow.flight(4).boosterLot()).contains(boosters);
    assertThat(desk.frame())
        .contains("  Motor       C6-0 then C6-7")
        .contains("> Lot         P1")
        .contains("  Booster lot N4");
    assertThat(desk.press("<tab>").frame()).contains("> Booster lot N4");
  }

  @Test
  void one_stage_has_no_booster_lot() {
    Desk desk = motor().press("c6-0,c6-7<tab><s-tab>c6-7<tab>");

    assertThat(meadow.flight(4).motor()).contains("C6-7");
    assertThat(meadow.flight(4).lot()).contains(uppers);
    assertThat(meadow.flight(4).boosterLot()).isEmpty();
    assertThat(desk.frame()).contains("> Lot         P1").doesNotContain("Booster lot");
  }

  @Test
  void a_new_card_takes_the_stack_of_the_last_flight_with_its_lots() {
    flown("C6-0 then C6-7");

    Desk desk = meadow.desk().press("nher<enter>");

    assertThat(meadow.flight(5).motor()).contains("C6-0 then C6-7");
    assertThat(meadow.flight(5).boosterLot()).contains(boosters);
    assertThat(desk.frame()).contains("Motor       C6-0 then C6-7").contains("Booster lot N4");
  }

  @Test
  void the_cursor_lands_on_a_booster_lot_that_is_used_up() {
    flown("2xC6-0 then C6-7");

    Desk desk = meadow.desk().press("nher<enter>");

    assertThat(meadow.flight(5).lot()).contains(uppers);
    assertThat(meadow.flight(5).boosterLot()).isEmpty();
    assertThat(desk.frame()).contains("> Booster lot");
  }

  @Test
  void what_cannot_be_read_of_several_motors_is_told() {
    assertThat(motor().press("c6-0,c6-0,c6-7<tab><s-tab>").frame())
        .contains("! Motor       c6-0,c6-0,c6-7")
        .contains("names 3 stages");
  }

  @Test
  void a_lot_is_of_one_motor() {
    Desk desk = Desk.over(meadow.log).opening(RangeBoxScreen::open).press("n3xc6-5<tab><s-tab>");

    assertThat(desk.frame()).contains("! Motor").contains("No motor \"3xc6-5\"");
  }

  @Test
  void several_motors_read_well_wherever_flights_are_told() {
    flown("3xC6-7");
    flown("C6-0 then C6-7");
    Desk desk = meadow.desk();

    Golden.holds("day-several", desk.frame());
    Golden.holds("day-several-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("debrief-several-60x20", desk.press("d").frame(new Size(60, 20)));
    desk.press("<esc>l");
    Golden.holds("log-several-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("flight-several-60x20", desk.press("v").frame(new Size(60, 20)));
  }

  @Test
  void the_card_of_a_stack() {
    Desk desk = motor();
    Golden.holds("card-motor", desk.frame());
    desk.press("c6-0,c6-7<tab>");
    Golden.holds("card-stack", desk.frame());
    Golden.holds("card-stack-60x20", desk.frame(new Size(60, 20)));
  }
}
