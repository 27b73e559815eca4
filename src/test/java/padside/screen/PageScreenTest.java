package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.report.PageKind;

class PageScreenTest {
  private final Meadow meadow =
      new Meadow().withMorning().withWeather("6g9 SW", Duration.ofMinutes(4));

  @Test
  void two_keys_from_the_day_its_sheet_stands_there() {
    Desk desk = meadow.desk();
    Golden.holds("pages", desk.press("v").frame());

    Golden.holds("page-day", desk.press("<enter>").frame());
    Golden.holds("page-day-60x20", desk.frame(new Size(60, 20)));
    Golden.holds("page-day-120x40", desk.frame(new Size(120, 40)));
  }

  @Test
  void a_page_scrolls_to_its_end_and_back() {
    Desk desk = meadow.desk().press("v<enter>");
    String top = desk.frame();
    String end = desk.press("<end><pagedown><pagedown><pagedown>").frame();

    assertThat(top).contains("… more: Down");
    assertThat(end).doesNotContain("… more: Down").isNotEqualTo(top);
    assertThat(desk.press("<home>").frame()).isEqualTo(top);
    assertThat(desk.press("<esc>").frame()).contains("Pages worth keeping");
  }

  @Test
  void h_has_the_page_written_as_it_stands() {
    Desk desk = meadow.desk().press("v<enter>h");

    List<Effect> effects = desk.exchanges();
    assertThat(effects).hasSize(1);
    Effect.WritePage write = (Effect.WritePage) effects.get(0);
    assertThat(write.kind()).isEqualTo(PageKind.DAY);
    assertThat(desk.frame()).contains(write.page().title());
  }

  @Test
  void a_rocket_s_page_is_one_key_from_the_fleet_and_found_among_all() {
    assertThat(meadow.desk().press("f/heron<tab>v").frame())
        .contains("Rocket history · Grey Heron");
    assertThat(meadow.desk().press("v/heron<tab><enter>").frame())
        .contains("Rocket history · Grey Heron");
  }

  @Test
  void what_there_is_no_page_of_is_told() {
    assertThat(meadow.desk().press("v/failed<tab><enter>h").frame())
        .contains("No motor has failed");
  }
}
