package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.flight.Flight;
import padside.flight.Ruling.Verdict;
import padside.units.TimeSpan;

class CountScreenTest {
  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(4));

  /** The heron, all ticked and armed. */
  private Desk armed() {
    return meadow.desk().press("nher<enter>6g9 SW<f5><enter><enter><enter><enter>a");
  }

  private Desk launched() {
    return armed().press(" ").running(Duration.ofSeconds(5));
  }

  private static Duration seconds(double seconds) {
    return Duration.ofMillis(Math.round(seconds * 1000));
  }

  private Flight flight() {
    return meadow.flight(4);
  }

  @Test
  void nothing_is_counted_before_the_flier_says_so() {
    Desk desk = armed().running(Duration.ofSeconds(30));

    assertThat(desk.frame()).contains("ARMED").contains("Space begins the count");
  }

  @Test
  void frames_of_the_count() {
    Desk desk = armed().press(" ");
    Golden.holds("count", desk.frame());
    Golden.holds("count-60x20", desk.after(seconds(2)).frame(Size.SMALLEST));
    Golden.holds("count-120x40", desk.running(seconds(3)).frame(new Size(120, 40)));
  }

  @Test
  void five_is_counted_one_a_second_and_nothing_is_a_lift_off_until_it_is_marked() {
    Desk desk = armed().press(" ");
    for (int figure = 5; figure >= 1; figure--) {
      assertThat(shown(desk)).as("after %s s", 5 - figure).isEqualTo(figure);
      desk.running(seconds(1));
    }
    assertThat(shown(desk)).isZero();
    assertThat(desk.frame()).contains("LAUNCH").contains("Space the moment it leaves the rod");

    desk.running(Duration.ofMinutes(1));
    assertThat(flight().status()).isEqualTo(Flight.Status.CARD);
    assertThat(flight().facts().get(Flight.LIFTOFF_AT)).isEmpty();
  }

  /** The figure on the screen: its five rows alone stand for it, the first that hold blocks. */
  private static int shown(Desk desk) {
    for (int figure = 0; figure <= 9; figure++) {
      Canvas canvas = new Canvas(new Size(80, 24));
      Figures.draw(canvas, 9, Integer.toString(figure), Style.STRONG);
      if (blocks(canvas.frame().text()).equals(blocks(desk.frame()))) {
        return figure;
      }
    }
    throw new AssertionError("no figure in " + desk.frame());
  }

  private static List<String> blocks(String frame) {
    return frame.lines().filter(row -> row.contains("█")).limit(Figures.ROWS).toList();
  }

  @Test
  void any_key_holds_at_once_and_the_count_begins_anew() {
    for (String key : new String[] {"h", "x", "<enter>", "?", " ", "<f7>"}) {
      Desk desk = armed().press(" ").running(seconds(2.2)).press(key);
      assertThat(desk.frame()).as(key).contains("HOLD");
      assertThat(desk.running(Duration.ofSeconds(20)).frame()).as(key).contains("HOLD");

      desk.press(" ");
      assertThat(shown(desk)).isEqualTo(5);
    }
  }

  @Test
  void a_space_bar_held_down_neither_holds_the_count_nor_marks_twice() {
    Desk desk = armed().press(" ");
    for (int i = 0; i < 30; i++) {
      desk.after(Duration.ofMillis(i == 0 ? 660 : 33)).press(" ");
    }
    assertThat(desk.frame()).contains("COUNT");

    desk.running(Duration.ofSeconds(5)).press(" ");
    for (int i = 0; i < 60; i++) {
      desk.after(Duration.ofMillis(i == 0 ? 660 : 33)).press(" ");
    }
    assertThat(flight().facts().get(Flight.LIFTOFF_UP)).isPresent();
    assertThat(flight().facts().get(Flight.EJECTION_MARK)).isEmpty();
    desk.after(seconds(2)).press(" ");
    assertThat(flight().facts().get(Flight.EJECTION_MARK)).isPresent();
  }

  @Test
  void a_count_that_nobody_sees_is_held() {
    assertThat(armed().press(" <f1>").press("<esc>").frame()).contains("HOLD");
    assertThat(armed().press(" <c-c>").press("<esc>").frame()).contains("HOLD");
  }

  @Test
  void a_scrub_leads_back_to_the_checklist_with_the_key_read_anew() {
    Desk desk = armed().press(" ").after(seconds(2)).press("<esc>");

    assertThat(desk.top()).isInstanceOf(PadScreen.class);
    assertThat(desk.frame())
        .contains("[x] wadding")
        .contains("[x] people back")
        .contains("[ ] rod cap off")
        .containsPattern("> key +\\[ ] rod cap off|>.*rod cap off");
    assertThat(desk.press("<enter>a ").frame()).contains("COUNT");
  }

  @Test
  void esc_before_the_count_changes_no_tick() {
    assertThat(armed().press("<esc>").frame()).contains("All ticked");
  }

  @Test
  void lift_off_is_kept_at_once_with_both_clocks_and_takes_the_motor() {
    Desk desk = launched().after(seconds(1.37)).press(" ");

    Flight flown = flight();
    assertThat(flown.status()).isEqualTo(Flight.Status.FLOWN);
    assertThat(flown.facts().get(Flight.LIFTOFF_AT)).contains(Desk.MORNING.plus(seconds(6.37)));
    assertThat(flown.facts().get(Flight.LIFTOFF_UP)).contains(new TimeSpan(3606.37));
    assertThat(flown.facts().get(Flight.LIFTOFF_BOOT)).contains("boot-1");
    assertThat(flown.verdict()).contains(Verdict.GO);
    assertThat(desk.book().left(desk.book().lot(meadow.lotK).orElseThrow())).contains(4);
    assertThat(desk.frame()).contains("next: EJECTION");
  }

  @Test
  void a_hold_at_launch_and_a_rocket_that_leaves_all_the_same() {
    Desk desk = launched().press("xq<enter>");
    assertThat(desk.frame()).as("other keys mean nothing now").contains("LAUNCH");

    assertThat(desk.press("h").frame()).contains("HOLD").contains("g if it left");
    desk.press("g");
    assertThat(flight().status()).isEqualTo(Flight.Status.FLOWN);
    assertThat(desk.frame()).contains("next: EJECTION");
  }

  @Test
  void the_figures_are_of_one_width_so_that_they_stand_still() {
    Canvas canvas = new Canvas(new Size(80, 24));
    assertThat(Figures.draw(canvas, 0, "0123456789", Style.STRONG)).isEqualTo(5);
    assertThat(canvas.frame().text().lines().limit(5))
        .allSatisfy(row -> assertThat(row.stripTrailing().length()).isLessThanOrEqualTo(79));
  }
}
