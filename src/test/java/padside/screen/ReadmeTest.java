package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import padside.app.DemoLog;
import padside.flight.MemoryFlightLog;
import padside.preflight.Preflight;
import padside.preflight.Settings;

/**
 * The screens and the key list in the README are the program's own, of the made-up season. They are
 * put there only by {@code -Dpadside.golden=rewrite}.
 */
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final Instant LAST_DAY = Instant.parse("2026-10-17T12:00:00Z");

  /** The screens shown in the tour, each by the keys that lead to it from the Day screen. */
  private static final Map<String, String> TOUR = new LinkedHashMap<>();

  /** The screens whose keys are listed. */
  private static final Map<String, String> KEYS = new LinkedHashMap<>();

  static {
    TOUR.put("day", "");
    TOUR.put("card", "c7g10 NW");
    TOUR.put("reasons", "c7g10 NW<f3>");
    TOUR.put("chart", "c7g10 NW<f4>");
    TOUR.put("pad", "<enter>w2g3 NW<enter><enter><enter>  ");
    TOUR.put("count", "<enter>w2g3 NW<enter><enter><enter><enter><enter>a ");
    TOUR.put("misfire", "<enter>w2g3 NW<enter><enter><enter><enter><enter>a m<down>");
    TOUR.put("debrief", "<home><down><down><down><down>d");
    TOUR.put("box", "b");
    TOUR.put("field", "p<enter>");
    TOUR.put("plan", "t<end>");
    TOUR.put("packing", "tk   ");
    KEYS.put("Day", "");
    KEYS.put("Card", "n");
    KEYS.put("Check", "n<f3>");
    KEYS.put("Chart", "n<f4>");
    KEYS.put("Pad", "<enter>");
    KEYS.put("Count", "<enter>w2g3 NW<enter><enter><enter><enter><enter>a h");
    KEYS.put("Marks", "<enter>w2g3 NW<enter><enter><enter><enter><enter>a hg");
    KEYS.put("Misfire", "<enter>m");
    KEYS.put("Checklist", "<enter>l");
    KEYS.put("Fleet", "f");
    KEYS.put("Range box", "b");
    KEYS.put("Fields", "p");
    KEYS.put("Log", "l");
    KEYS.put("Plan", "t");
    KEYS.put("Packing list", "tk");
    KEYS.put("History", "h");
    KEYS.put("Synchronise", "y");
    KEYS.put("Conflicts", "r");
    KEYS.put("Sights", "i");
    KEYS.put("Any form", "f<enter>");
  }

  private static final MemoryFlightLog SEASON = DemoLog.written();
  private static final Preflight PREFLIGHT = new Preflight(Settings.standard());

  private static Desk desk() {
    return Desk.over(SEASON.copy())
        .checking(PREFLIGHT::answer)
        .after(Duration.between(Desk.MORNING, LAST_DAY))
        .restart();
  }

  @Test
  void the_screens_shown_are_the_programs_own() throws IOException {
    for (Map.Entry<String, String> screen : TOUR.entrySet()) {
      String frame = desk().press(screen.getValue()).answerAgain(PREFLIGHT::advised).frame();
      holds("screen " + screen.getKey(), "```text\n" + frame + "```\n");
    }
  }

  @Test
  void the_keys_listed_are_those_of_the_screens() throws IOException {
    StringBuilder table = new StringBuilder("| screen | keys |\n| --- | --- |\n");
    for (Map.Entry<String, String> screen : KEYS.entrySet()) {
      table.append("| ").append(screen.getKey()).append(" | ");
      for (Binding binding : desk().press(screen.getValue()).top().bindings()) {
        table.append("`").append(binding.shownKey()).append("` ");
        table.append(binding.meaning()).append("; ");
      }
      table.setLength(table.length() - 2);
      table.append(" |\n");
    }
    holds("keys", table.toString());
  }

  private static void holds(String name, String text) throws IOException {
    String readme = Files.readString(README);
    Pattern part = Pattern.compile("(<!-- " + name + " -->\n)(.*?)(<!-- end -->)", Pattern.DOTALL);
    Matcher found = part.matcher(readme);
    assertThat(found.find()).as("README.md has a part <!-- %s -->", name).isTrue();
    if (System.getProperty("padside.golden", "").equals("rewrite")) {
      String put = found.replaceFirst("$1" + Matcher.quoteReplacement(text) + "$3");
      Files.writeString(README, put);
      return;
    }
    assertThat(found.group(2)).as("README.md, part %s", name).isEqualTo(text);
  }
}
