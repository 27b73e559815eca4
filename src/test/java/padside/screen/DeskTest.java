package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.fact.Fault;
import padside.flight.MemoryFlightLog;
import padside.flight.Weather;
import padside.units.Speed;
import padside.units.Wind;

class DeskTest {
  @Test
  void quitting_is_asked_and_one_key_leaves() {
    Desk desk = Desk.over(new MemoryFlightLog()).press("<c-c>");
    assertThat(desk.frame()).contains("Leave Padside?");
    assertThat(desk.hasQuit()).isFalse();

    assertThat(desk.press("<enter>").hasQuit()).isTrue();
  }

  @Test
  void keys_pressed_before_the_last_screen_is_kept_see_what_it_kept() {
    Meadow meadow = new Meadow().withMorning();
    Desk desk = meadow.desk().press("nher<enter>6").holdSaves().press("<esc><enter>");
    assertThat(desk.frame()).startsWith(" Day");

    desk.answerSaves();
    assertThat(desk.top()).isInstanceOf(CardScreen.class);
    assertThat(desk.frame()).containsPattern("Wind +6 ");
  }

  @Test
  void keys_follow_one_another_through_several_screens_that_wait() {
    Meadow meadow = new Meadow().withMorning();
    Desk desk = meadow.desk().holdSaves().press("w8 N<esc>w9 N<esc>n");

    desk.answerSaves();
    assertThat(desk.top()).isInstanceOf(CardScreen.class);
    assertThat(desk.book().latestWeather(meadow.day).flatMap(Weather::wind).map(Wind::mean))
        .contains(Speed.ofMph(9));
  }

  @Test
  void keys_meant_for_the_screen_below_are_dropped_when_the_last_save_fails() {
    Meadow meadow = new Meadow().withMorning();
    Desk desk =
        meadow
            .desk()
            .press("nher<enter>6")
            .holdSaves()
            .failNextSave(new Fault("disk-full", "The disk is full.", "Make room."))
            .press("<esc>xg");

    assertThat(desk.answerSaves().frame()).contains("The disk is full.");
    assertThat(desk.press("<enter>").top()).isInstanceOf(CardScreen.class);
    assertThat(desk.frame()).containsPattern("Wind +6 ");
  }

  @Test
  void a_long_notice_is_told_whole() {
    String notice =
        "The database was set aside in the folder aside of the log: it is damaged (row 7). "
            .repeat(2);
    Session session = Desk.over(new MemoryFlightLog()).session().telling(notice.strip());

    assertThat(session.view(new Size(60, 20)).text().replaceAll("\\s+", " ")).contains(notice);
  }
}
