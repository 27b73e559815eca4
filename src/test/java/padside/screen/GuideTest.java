package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import padside.flight.Flight;
import padside.flight.MemoryFlightLog;

class GuideTest {
  private static final List<Size> SIZES =
      List.of(new Size(60, 20), new Size(80, 24), new Size(120, 40));

  private final Desk desk = Desk.over(new MemoryFlightLog()).led(Guide.first(true));

  private Desk says(String words) {
    String guide = frame(new Size(80, 24));
    assertThat(guide).contains(words);
    return desk;
  }

  /** The rows the guide may stand on, in one line. */
  private String frame(Size size) {
    List<String> rows = desk.frame(size).lines().toList();
    return String.join(" ", rows.subList(rows.size() - 4, rows.size() - 1)).replaceAll(" +", " ");
  }

  @Test
  void it_leads_from_an_empty_log_to_a_debriefed_flight_and_ends() {
    says("Guide 1/7: p, then n: the field").press("p");
    says("n adds one").press("n");
    says("what you call it").press("Mill Meadow<tab>");
    says("this can wait").press("<tab>");
    says("each edge as paced").press("N 500ft; E 450ft; S 500ft; W 450ft<f2>");
    says("Kept. Esc goes back").press("<esc>");
    says("Guide 2/7: f, then n: the rocket").press("fn");
    says("what you call it").press("Sparrow<tab>");
    says("without a motor").press("1.3oz<tab><tab>");
    says("of the body tube").press("0.976in<tab>");
    says("That will do: F2").press("<f2><esc>");
    says("Guide 3/7: b, Tab, n").press("b");
    says("Tab: the parachutes").press("<tab>n");
    desk.press("12 in nylon<tab>");
    says("p for parachute").press("p<tab>");
    says("across, like 12in").press("12in<f2><esc>");
    says("Guide 4/7: o opens today").press("o");
    says("Enter takes the field").press("<enter><f2>");
    says("Guide 5/7: n begins a card").press("n");
    says("Enter takes the rocket").press("<enter>");
    says("what is printed on the motor").press("A8-3<tab>");
    for (int i = 0; i < 20 && !desk.frame().contains("> Wind"); i++) {
      desk.press("<tab>");
    }
    says("the wind as read").press("4g6 SW<f5>");
    says("Guide 6/7: do each line").press("<enter><enter><enter><enter>a");
    desk.press(desk.top() instanceof AgainstScreen ? "first one<enter>" : "");
    says("Space counts").press(" ").running(java.time.Duration.ofSeconds(6)).press(" ");
    says("Guide 7/7: Space at ejection").press("<enter>");
    says("how it came down").press("<f2>");
    assertThat(desk.frame()).contains("That was a card").doesNotContain("Guide");
    assertThat(desk.press("<down>").frame()).doesNotContain("That was a card", "Guide");
    assertThat(desk.book().flights()).extracting(Flight::awaitsDebrief).containsExactly(false);
  }

  @Test
  void one_key_ends_it_for_good_and_a_plain_key_on_the_help_page_too() {
    assertThat(desk.press("<c-g>").frame()).doesNotContain("Guide");
    assertThat(desk.exchanges())
        .contains(new Effect.KeepSettings(new Ticket(1, 0), Map.of("guide", "off")));
    assertThat(desk.press("?g<esc>").frame()).contains("Guide 1/7");
    assertThat(desk.press("?g<esc>").frame()).doesNotContain("Guide");
  }

  @Test
  void with_a_season_in_the_log_it_comes_only_when_asked_for_and_for_one_card() {
    Desk season = ResumingTest.meadow().desk().led(Guide.first(true));
    assertThat(season.frame()).doesNotContain("Guide");
    assertThat(season.press("<c-g>").frame()).contains("Guide 7/7: d: what came of it");

    assertThat(season.press("<home>d<f2>").frame()).contains("That was a card");
    assertThat(season.press("<down>").frame()).doesNotContain("Guide", "That was a card");
  }

  @Test
  void in_every_size_it_takes_three_rows_at_most_and_the_field_typed_in_is_seen() {
    HelpScreenTest.places()
        .forEach(
            (name, place) -> {
              Desk there = place.get().led(new Guide(true, 1000));
              for (Size size : SIZES) {
                Frame frame = there.session().view(size);
                assertThat(frame.rows()).as(name).hasSize(size.rows());
                Optional<String> words = GuideText.of(there.top(), there.session().world());
                int most = size.columns() < 80 ? 3 : 2;
                words.ifPresent(
                    text ->
                        assertThat(Paragraph.lines(text, size.columns() - 2))
                            .as(name)
                            .hasSizeLessThanOrEqualTo(most));
                assertThat(frame.cursor().isPresent())
                    .as(name + " " + size)
                    .isEqualTo(there.led(Guide.off()).session().view(size).cursor().isPresent());
                there.led(new Guide(true, 1000));
              }
            });
  }
}
