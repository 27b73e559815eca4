package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Rocket;

/** Several fliers, several pads, and things that cannot be in two places. */
class CrowdTest {
  private final Meadow meadow = new Meadow().withMorning();

  private void owned(RecordId rocket, String flier) {
    Facts facts = Facts.none().with(Rocket.FLIER, flier);
    meadow.log.save(Action.change("change rocket", Kind.ROCKET, rocket, facts));
  }

  private void onPads(int pads) {
    Facts facts = Facts.none().with(Day.PADS, pads);
    meadow.log.save(Action.change("change day", Kind.DAY, meadow.day, facts));
  }

  private void flight(int number, Facts facts) {
    RecordId id = meadow.flight(number).id();
    meadow.log.save(Action.change("change card", Kind.FLIGHT, id, facts));
  }

  @Test
  void someone_alone_sees_nothing_of_it() {
    owned(meadow.heron, "Oda");
    Desk desk = meadow.desk();
    assertThat(desk.frame()).doesNotContain("Flier").doesNotContain("Pad ");
    assertThat(desk.press("nher<enter>").frame()).doesNotContain("Flier").doesNotContain("Pad ");
  }

  @Test
  void the_flier_comes_with_the_rocket_and_can_be_another() {
    owned(meadow.heron, "Oda");
    owned(meadow.wren, "Piet");
    Desk desk = meadow.desk().press("nher<enter>");
    assertThat(desk.frame()).contains("Flier       Oda");
    assertThat(meadow.flight(4).flier()).contains("Oda");

    desk.press("<s-tab>".repeat(5) + "pi<tab>");
    assertThat(meadow.flight(4).flier()).contains("Piet");
    desk.press("<s-tab>Rosalind<tab>");
    assertThat(meadow.flight(4).flier()).contains("Rosalind");
  }

  @Test
  void the_day_groups_by_flier_and_tells_the_pads() {
    onPads(4);
    flight(1, Facts.none().with(Flight.FLIER, "Oda").with(Flight.PAD, 1));
    flight(2, Facts.none().with(Flight.FLIER, "Piet").with(Flight.PAD, 2));
    flight(3, Facts.none().with(Flight.FLIER, "Oda").with(Flight.PAD, 1));

    Desk desk = meadow.desk();
    Golden.holds("day-fliers", desk.frame());
    Golden.holds("day-fliers-60x20", desk.frame(new Size(60, 20)));
    desk.press("<home><down>c");
    assertThat(desk.frame()).as("the flight below Oda's first").contains("Card 3");
  }

  @Test
  void a_new_card_stands_on_the_first_free_pad_and_a_taken_one_is_told_and_kept() {
    onPads(3);
    flight(3, Facts.none().with(Flight.PAD, 1));
    Desk desk = meadow.desk().press("nher<enter>");
    assertThat(meadow.flight(4).pad()).contains(2);

    desk.press("<s-tab>".repeat(5) + "1<tab><s-tab>");
    assertThat(desk.frame())
        .contains("? Pad         1")
        .contains("Pad 1 is taken by card 3 (Wren).");
    assertThat(meadow.flight(4).pad()).contains(1);
    assertThat(desk.press("<esc>").frame()).contains("1 twice");
  }

  @Test
  void a_chute_that_waits_on_another_card_is_told_with_the_card_and_can_be_kept() {
    flight(3, Facts.none().with(Flight.DEVICE, meadow.dome));
    Desk desk = meadow.desk().press("nher<enter>" + "<s-tab>".repeat(6));
    assertThat(desk.frame())
        .contains("? Recovery    18 in dome")
        .contains("18 in dome rides on card 3 (Wren)");
    Golden.holds("card-claim-60x20", desk.press("<down>").frame(new Size(60, 20)));
    desk.press("<esc>");
    assertThat(meadow.flight(4).device()).contains(meadow.dome);
  }

  @Test
  void an_open_card_does_not_stand_in_its_own_way() {
    meadow.desk().press("nkite<enter><esc>");
    Desk desk = meadow.desk();
    flight(3, Facts.none().with(Flight.STATUS, Flight.Status.SCRUBBED));
    desk.restart().press("<end>c" + "<s-tab>".repeat(6));

    assertThat(desk.frame()).contains("> Recovery    18 in dome").doesNotContain("rides on");
  }
}
