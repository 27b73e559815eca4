package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody who has never seen the program does what its guide says, from an empty log on. */
class GuideIT {
  /** To read a line and decide on a key or a text (common practice, no source). */
  private static final double DECISION_S = 1.5;

  /** A character of a text, at 40 words a minute (common practice, no source). */
  private static final double CHARACTER_S = 0.3;

  private static final double MOST_S = 120;

  @TempDir Path folder;
  private PadTable pad;
  private int decisions;
  private int characters;

  @BeforeEach
  void sitDown() throws Exception {
    pad = new PadTable(folder, 80, 24);
    pad.setting("clock = trusted", "guide = on");
  }

  @AfterEach
  void packUp() {
    pad.close();
  }

  private void key(String name, String thenSaid) {
    decisions++;
    pad.press(name);
    pad.sees(thenSaid);
  }

  private void field(String text) {
    decisions += text.isEmpty() ? 1 : 2;
    characters += text.length();
    pad.fields(text);
  }

  private void text(String text) {
    decisions++;
    characters += text.length();
    pad.type(text);
  }

  @Test
  void a_first_card_takes_two_minutes_at_most_and_only_what_was_typed_is_in_the_log() {
    pad.launch("");
    pad.sees("Guide 1/7: p, then n");
    describeFieldRocketAndParachute();
    fillCard();
    flyAndDebrief();
    pad.quit();

    double seconds = decisions * DECISION_S + characters * CHARACTER_S;
    System.out.printf(
        "[guide] %d keys, %d decisions, %.0f s at %.1f s a decision and %.1f s a character%n",
        pad.keys(), decisions, seconds, DECISION_S, CHARACTER_S);
    assertThat(seconds).isLessThanOrEqualTo(MOST_S);
    assertThat(
            pad.sqlite(
                "SELECT (SELECT count(*) FROM rocket), (SELECT count(*) FROM lot),"
                    + " (SELECT count(*) FROM field), status, motor, burn FROM flight"))
        .containsExactly("1|0|1|flown|A8-3|nominal");

    pad.launch("");
    assertThat(pad.sees("Flown 1")).noneMatch(line -> line.contains("Guide"));
  }

  private void describeFieldRocketAndParachute() {
    key("p", "Guide 1/7: n adds one.");
    key("n", "what you call it");
    field("Meadow");
    field("");
    pad.sees("each edge as paced");
    text("N 500ft; E 450ft; S 500ft; W 450ft");
    key("F2", "Kept. Esc goes back");
    back("Guide 2/7: f, then n");
    key("f", "n adds one.");
    key("n", "what you call it");
    field("Wren");
    field("1.3oz");
    field("");
    pad.sees("of the body tube");
    text("0.976in");
    key("F2", "Kept. Esc goes back");
    back("Guide 3/7: b, Tab, n");
    key("b", "Tab: the parachutes");
    key("Tab", "n adds one.");
    key("n", "what you call it");
    field("12in");
    field("p");
    pad.sees("across, like 12in");
    text("12in");
    key("F2", "Kept. Esc goes back");
    back("Guide 4/7: o opens today");
  }

  private void back(String thenSaid) {
    decisions++;
    pad.escape(thenSaid);
  }

  private void fillCard() {
    key("o", "Enter takes the field");
    key("Enter", "> Date");
    key("F2", "Guide 5/7: n begins a card");
    key("n", "Enter takes the rocket");
    key("Enter", "printed on the motor");
    field("A8-3");
    for (int i = 0; i < 20 && !isIn("Wind"); i++) {
      if (isIn("Recovery")) {
        key("Down", "> 12in");
      } else if (isIn("Rod length")) {
        text("36in");
      }
      decisions++;
      pad.press("Tab");
      pad.tmux().linger();
    }
    pad.sees("the wind as read");
    text("4g6 SW");
    pad.seesVerdict("GO");
  }

  private boolean isIn(String field) {
    return pad.tmux().lines().stream().anyMatch(line -> line.startsWith("> " + field));
  }

  private void flyAndDebrief() {
    key("F5", "Guide 6/7: do each line");
    key("Enter", "[x]");
    for (int part = 0; part < 3; part++) {
      decisions++;
      pad.press("Enter");
    }
    key("a", "Space counts, any key holds");
    key("Space", "LIFT-OFF");
    key("Space", "Guide 7/7: Space at ejection");
    key("Enter", "how it came down");
    key("F2", "That was a card");
  }

  @Test
  void one_key_ends_it_for_good() throws Exception {
    pad.launch("");
    pad.sees("Guide 1/7");
    pad.press("C-g", "f");
    assertThat(pad.sees("n adds")).noneMatch(line -> line.contains("Guide"));
    pad.quit();
    assertThat(Files.readString(folder.resolve("config/padside/settings.properties")))
        .contains("guide = off");

    pad.launch("");
    assertThat(pad.sees("No day is open yet.")).noneMatch(line -> line.contains("Guide"));
  }
}
