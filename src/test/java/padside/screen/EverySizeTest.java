package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import padside.app.DemoLog;
import padside.flight.MemoryFlightLog;
import padside.flight.Ruling.Verdict;
import padside.preflight.Preflight;
import padside.preflight.Settings;

/** The main screens of the made-up season in every size a terminal is usually given. */
class EverySizeTest {
  private static final Instant LAST_DAY = Instant.parse("2026-10-17T12:00:00Z");
  private static final MemoryFlightLog SEASON = DemoLog.written();
  private static final Preflight PREFLIGHT = new Preflight(Settings.standard());
  private static final Size WIDEST = new Size(200, 60);
  private static final List<Size> SIZES =
      List.of(Size.SMALLEST, new Size(80, 24), new Size(120, 40), WIDEST);

  private static final int[] COLUMNS = {
    1, 2, 3, 20, 40, 59, 60, 61, 70, 79, 80, 81, 95, 109, 110, 111, 120, 150, 200, 204
  };
  private static final int[] ROWS = {
    1, 2, 3, 10, 19, 20, 21, 22, 23, 24, 25, 28, 33, 34, 35, 36, 37, 40, 55, 56, 60, 64
  };

  /** Each by the keys that lead to it from the Day screen. */
  private static final Map<String, String> SCREENS = new LinkedHashMap<>();

  static {
    SCREENS.put("day", "");
    SCREENS.put("card", "c7g10 NW");
    SCREENS.put("check", "c7g10 NW<f3>");
    SCREENS.put("chart", "c7g10 NW<f4>");
    SCREENS.put("pad", "<enter>w2g3 NW<enter><enter><enter>  ");
    SCREENS.put("pad-large", "<enter>w2g3 NW<enter>v");
    SCREENS.put("count", "<enter>w2g3 NW<enter><enter><enter><enter><enter>a ");
    SCREENS.put("debrief", "<home><down><down><down><down>d");
    SCREENS.put("log", "l");
    SCREENS.put("search", "l/motor:C");
    SCREENS.put("flight", "l<down>v");
    SCREENS.put("box", "b");
    SCREENS.put("fleet", "f");
    SCREENS.put("rocket", "f<enter>");
    SCREENS.put("plan", "t<end>");
    SCREENS.put("sync", "y");
    SCREENS.put("pages", "v");
    SCREENS.put("page", "v<enter>");
  }

  private static Stream<String> screens() {
    return SCREENS.keySet().stream();
  }

  private static final Map<String, Session> SESSIONS = new HashMap<>();

  /** Screens are values, so that one way there does for every look at them. */
  private static Session at(String screen) {
    return SESSIONS.computeIfAbsent(screen, EverySizeTest::way);
  }

  private static Session way(String screen) {
    return Desk.over(SEASON.copy())
        .checking(PREFLIGHT::answer)
        .after(Duration.between(Desk.MORNING, LAST_DAY))
        .restart()
        .press(SCREENS.get(screen))
        .session();
  }

  private static String frame(String screen, Size size) {
    return at(screen).view(size).text();
  }

  @ParameterizedTest
  @MethodSource("screens")
  void the_largest_terminal_in_sight(String screen) {
    Golden.holds("sizes/" + screen + "-200x60", frame(screen, WIDEST));
    Golden.holds("sizes/" + screen + "-60x20", frame(screen, Size.SMALLEST));
    Golden.holds("sizes/" + screen + "-120x40", frame(screen, new Size(120, 40)));
  }

  /** Sizes from nothing on, one after the other, as when a window is drawn larger. */
  @ParameterizedTest
  @MethodSource("screens")
  void any_screen_can_be_resized_at_any_moment(String screen) {
    Session session = at(screen);
    boolean types = session.view(new Size(80, 24)).cursor().isPresent();
    for (int columns : COLUMNS) {
      for (int rows : ROWS) {
        Size size = new Size(columns, rows);
        Frame frame = session.view(size);
        assertThat(frame.rows()).as("%s", size).hasSize(rows);
        assertThat(frame.rows().stream().allMatch(row -> row.text().length() == size.columns()))
            .as("%s", size)
            .isTrue();
        if (size.holds(Size.SMALLEST)) {
          assertThat(frame.cursor().isPresent()).as("cursor at %s", size).isEqualTo(types);
          inside(frame);
        }
      }
    }
  }

  private static void inside(Frame frame) {
    frame
        .cursor()
        .ifPresent(
            spot -> {
              assertThat(spot.row()).isBetween(1, frame.size().rows() - 2);
              assertThat(spot.column()).isBetween(0, frame.size().columns() - 1);
            });
  }

  @Test
  void below_the_smallest_size_a_sentence_says_so() {
    for (Size size : List.of(new Size(59, 20), new Size(60, 19), new Size(30, 10))) {
      String told = frame("card", size).replaceAll("\\s+", " ");
      assertThat(told).contains("Padside needs 60 × 20").contains("Nothing is lost meanwhile.");
    }
  }

  /** A verdict is a word wherever it has its colour, and where the cursor is stands a sign. */
  @ParameterizedTest
  @MethodSource("screens")
  void nothing_is_told_by_colour_alone(String screen) {
    for (Size size : SIZES) {
      Frame frame = at(screen).view(size);
      for (Verdict verdict : Verdict.values()) {
        Style style = CheckText.style(verdict);
        String told = in(style, frame);
        assertThat(told.isBlank() || told.contains(verdict.word()) || told.contains("█"))
            .as("%s at %s: %s", style, size, told)
            .isTrue();
      }
      for (Frame.Row row : frame.rows()) {
        boolean here = row.spans().stream().anyMatch(span -> span.style() == Style.FOCUS);
        boolean marked = row.text().contains(">") || isAt(frame, row);
        assertThat(!here || marked).as("%s at %s: %s", screen, size, row.text()).isTrue();
      }
    }
  }

  private static boolean isAt(Frame frame, Frame.Row row) {
    return frame.cursor().filter(spot -> frame.rows().get(spot.row()).equals(row)).isPresent();
  }

  private static String in(Style style, Frame frame) {
    StringBuilder told = new StringBuilder();
    for (Frame.Row row : frame.rows()) {
      row.spans().stream()
          .filter(span -> span.style() == style)
          .forEach(span -> told.append(span.text()).append('\n'));
    }
    return told.toString();
  }
}
