package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padside.app.DemoLog;
import padside.flight.MemoryFlightLog;
import padside.page.Keys;
import padside.preflight.Preflight;
import padside.preflight.Settings;

/** The keys put on a page are those the screens have when one comes to them. */
class KeyCardTest {
  private static final Instant LAST_DAY = Instant.parse("2026-10-17T12:00:00Z");
  private static final MemoryFlightLog SEASON = DemoLog.written();
  private static final Preflight PREFLIGHT = new Preflight(Settings.standard());

  private static List<String> card(String screen) {
    return KeyCard.ofMainScreens().groups().stream()
        .filter(group -> group.screen().equals(screen))
        .flatMap(group -> group.keys().stream())
        .map(each -> each.key() + " " + each.does())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "Day,''",
    "Card,n",
    "Pad,<enter>",
    "Count,<enter>w2g3 NW<enter><enter><enter><enter><enter>a",
    "Count,<enter>w2g3 NW<enter><enter><enter><enter><enter>a h",
    "Marks,<enter>w2g3 NW<enter><enter><enter><enter><enter>a hg",
    "Misfire,<enter>m",
    "Debrief,<home><down><down><down><down>d",
  })
  void every_key_of_a_screen_is_on_the_card(String screen, String path) {
    List<String> forms = card("Any form");
    List<Binding> there =
        Desk.over(SEASON.copy())
            .checking(PREFLIGHT::answer)
            .after(Duration.between(Desk.MORNING, LAST_DAY))
            .restart()
            .press(path)
            .top()
            .bindings();

    assertThat(there).isNotEmpty();
    assertThat(there.stream().map(each -> each.shownKey() + " " + each.meaning()))
        .allSatisfy(
            each ->
                assertThat(card(screen).contains(each) || forms.contains(each)).as(each).isTrue());
  }

  @Test
  void no_line_is_there_twice() {
    for (Keys.Group group : KeyCard.ofMainScreens().groups()) {
      assertThat(group.keys()).as(group.screen()).doesNotHaveDuplicates().isNotEmpty();
    }
  }
}
