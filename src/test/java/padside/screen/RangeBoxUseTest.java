package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.Logbook;

/**
 * What flights take from the range box, what comes back, and what is told wherever it is chosen.
 */
class RangeBoxUseTest {
  private final Meadow meadow = new Meadow().withMorning();

  private Optional<Integer> left(RecordId lot) {
    Logbook book = meadow.desk().book();
    return book.left(book.lot(lot).orElseThrow());
  }

  private void flight(int number, Facts facts) {
    RecordId id = meadow.flight(number).id();
    meadow.log.save(Action.change("change", Kind.FLIGHT, id, facts));
  }

  /** Six were bought and the heron flew one of them. */
  @Test
  void only_what_has_flown_takes_from_the_lot_and_a_scrub_puts_back() {
    assertThat(left(meadow.lotK)).contains(5);
    flight(3, Facts.none().with(Flight.LOT, meadow.lotK));
    assertThat(left(meadow.lotK)).as("a card that waits").contains(5);

    Desk desk = meadow.desk().press("<home><down><down>s");
    assertThat(left(meadow.lotK)).as("scrubbed").contains(5);
    desk.press("u");
    flight(3, Facts.none().with(Flight.STATUS, Flight.Status.FLOWN));
    assertThat(left(meadow.lotK)).as("flown").contains(4);
    flight(3, Facts.none().with(Flight.STATUS, Flight.Status.SCRUBBED));
    assertThat(left(meadow.lotK)).as("it was the wrong card").contains(5);
  }

  @Test
  void low_stock_is_told_by_word() {
    Desk desk = meadow.desk().press("b----");
    assertThat(desk.frame()).contains("low: 1  6").contains("none");
    assertThat(desk.press("-").frame()).doesNotContain("low");

    desk.press("+<esc>nher<enter>" + "<s-tab>".repeat(7) + "<down>");
    assertThat(desk.frame()).contains("K7  low: 1 left");
  }

  @Test
  void a_lot_with_a_malfunction_is_marked_wherever_it_can_be_chosen() {
    flight(1, Facts.none().with(Flight.BURN, "cato_case"));
    Desk desk = meadow.desk();
    assertThat(desk.press("b").frame()).containsPattern("K7 +5 +6 +1\\b");
    desk.press("<esc>nher<enter>" + "<s-tab>".repeat(8) + "<down>");
    assertThat(desk.frame()).contains("C6-5  1 failed, lot K7…");
    assertThat(desk.press("<tab><down>").frame()).contains("K7  1 failed, 5 left");
  }

  @Test
  void parachutes_and_altimeters_tell_how_often_they_flew_and_when_last() {
    Desk desk = meadow.desk().press("b<tab>");
    Golden.holds("box-recovery-used", desk.frame());
    assertThat(desk.press("<tab>").frame()).containsPattern("small one +1 +2026-05-02");
  }

  @Test
  void what_is_to_be_mended_is_noted_from_the_day_at_any_time() {
    Desk desk = meadow.desk().press("m");
    assertThat(desk.frame()).contains("Fixes: Wren");
    desk.press("nsand the nose<tab>g<f2><esc>");

    assertThat(desk.book().openFixes(meadow.wren))
        .extracting(fix -> fix.text() + ", " + fix.severity().words())
        .containsExactly("sand the nose, grounds it");
    assertThat(desk.frame()).contains("Day ·");
  }
}
