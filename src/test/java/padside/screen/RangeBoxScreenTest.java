package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.fact.Fault;
import padside.flight.Kind;
import padside.flight.Lot;
import padside.flight.MemoryFlightLog;
import padside.flight.RecoveryDevice;
import padside.motor.MotorType;
import padside.units.Impulse;

class RangeBoxScreenTest {
  private final Season season = new Season();
  private final Desk desk = Desk.over(season.log).opening(RangeBoxScreen::open);

  private Optional<Integer> left() {
    return desk.book().left(desk.book().lot(season.c6).orElseThrow());
  }

  @Test
  void an_empty_box_says_what_to_do() {
    Desk empty = Desk.over(new MemoryFlightLog()).opening(RangeBoxScreen::open);
    assertThat(empty.frame()).contains("No motors yet. n adds a lot");
    assertThat(empty.press("+-").log().actions()).isEmpty();
    assertThat(empty.press("<tab>").frame()).contains("No parachutes or streamers yet. n adds one");
    assertThat(empty.press("<tab>").frame()).contains("No altimeters yet. n adds one.");
    assertThat(empty.press("<tab>").frame()).contains("[Motors]");
    assertThat(empty.press("<s-tab>").frame()).contains("[Altimeters]");
  }

  @Test
  void the_groups_of_the_box() {
    Golden.holds("box-motors", desk.frame());
    Golden.holds("box-motors-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("box-lot", desk.press("<enter>").frame());
    Golden.holds("box-recovery", desk.press("<esc><tab>").frame());
    Golden.holds("box-device", desk.press("<enter>").frame());
    Golden.holds("box-altimeters", desk.press("<esc><tab>").frame());
    assertThat(desk.press("<enter>").frame()).contains("Altimeter: blue");
  }

  @Test
  void plus_and_minus_correct_the_count_one_action_each() {
    int before = season.log.actions().size();
    assertThat(left()).contains(5);
    desk.press("--+");

    assertThat(left()).contains(4);
    assertThat(season.log.actions()).hasSize(before + 3);
    assertThat(season.log.facts(Kind.LOT, season.c6).get(Lot.CORRECTION)).contains(-1);
  }

  @Test
  void counts_pressed_faster_than_they_are_kept_all_count() {
    desk.holdSaves().press("---");
    assertThat(desk.frame()).contains("C6-5    A120325     2  6");
    desk.answerSaves();

    assertThat(left()).contains(2);
    assertThat(desk.frame()).contains("C6-5    A120325     2  6");
  }

  @Test
  void a_count_that_could_not_be_kept_shows_what_the_log_has() {
    desk.failNextSave(new Fault("disk-full", "The disk is full.", "Make room.")).press("-");
    assertThat(desk.frame()).contains("The disk is full.");

    assertThat(desk.press("<enter>").frame()).contains("C6-5    A120325     5  6");
  }

  @Test
  void a_lot_that_was_never_counted_is_not_corrected() {
    int before = season.log.actions().size();
    desk.press("<down>-+");

    assertThat(season.log.actions()).hasSize(before);
  }

  @Test
  void a_lot_is_entered() {
    desk.press("nc6-3<tab>B77<tab>24<tab>2026-05-01<tab>tin<enter><tab>wet<enter>04 12 24<enter>");
    Lot lot = desk.book().lots().get(2);

    assertThat(lot.facts().get(Lot.MOTOR)).contains("C6-3");
    assertThat(lot.left(0)).contains(24);
    assertThat(lot.facts().get(Lot.BOUGHT_ON)).contains("2026-05-01");
    assertThat(lot.dateCode()).contains("04 12 24");
    assertThat(desk.frame()).contains("> C6-3");
  }

  @Test
  void a_motor_not_in_the_table_is_told_and_kept_as_typed() {
    desk.press("nF19-6");
    Golden.holds("box-lot-unknown", desk.frame());
    desk.press("<esc>");

    assertThat(desk.frame()).contains("> F19-6");
    assertThat(desk.book().lots().get(2).facts().get(Lot.MOTOR)).isEmpty();
  }

  @Test
  void a_delay_not_sold_is_told_with_those_that_are() {
    assertThat(desk.press("nc6-4").frame()).contains("C6 is not sold with delay \"4\"");
  }

  @Test
  void a_streamer_is_entered() {
    desk.press("<tab>npink<tab>s<tab><tab>2<tab>20<tab>0.15<f2>");
    RecoveryDevice device = desk.book().devices().get(2);

    assertThat(device.shape()).contains(RecoveryDevice.Shape.STREAMER);
    assertThat(device.width().orElseThrow().inInches()).isEqualTo(2);
    assertThat(desk.frame()).contains("2 × 20 in");
  }

  @Test
  void devices_and_altimeters_are_removed_after_one_question() {
    desk.press("<tab>xx<tab>xx");

    assertThat(desk.book().devices()).hasSize(1);
    assertThat(desk.book().altimeters()).isEmpty();
    desk.press("<tab>xx");
    assertThat(desk.book().lots()).extracting(Lot::motor).containsExactly("A10T-3");
  }

  @Test
  void a_motor_type_of_ones_own_starts_from_the_tables_and_stands_before_it() {
    Golden.holds("motor-types", desk.press("t").frame());
    Golden.holds("motor-types-60x20", desk.frame(new Size(60, 20)));
    int before = season.log.actions().size();
    desk.press("/C6<enter>");
    Golden.holds("motor-type", desk.frame());
    desk.press("<esc>");
    assertThat(season.log.actions()).hasSize(before);
    desk.press("<enter><tab><tab><tab><tab>9.1<f2>");
    Golden.holds("motor-type-own", desk.frame());

    MotorType own = desk.book().motors().find("C6").orElseThrow();
    assertThat(own.totalImpulse()).contains(new Impulse(9.1));
    assertThat(own.delays()).isEqualTo(List.of("0", "3", "5", "7"));
    assertThat(own.maxLiftoffMass("7")).isPresent();
    desk.press("xx");
    assertThat(desk.book().motors().find("C6").orElseThrow().totalImpulse())
        .isNotEqualTo(Optional.of(new Impulse(9.1)));
  }

  @Test
  void a_type_of_the_table_cannot_be_removed() {
    desk.press("txx");
    assertThat(desk.top()).isInstanceOf(RecordList.class);
    assertThat(desk.book().motors().types()).hasSize(23);
  }

  @Test
  void a_new_motor_type_is_at_once_on_sale() {
    desk.press("tnF19<tab>F<tab>29<tab>4;6;8<tab>49.6<f2><esc>nF19-6<f2>");

    assertThat(desk.book().lots().get(2).motor()).isEqualTo("F19-6");
  }
}
