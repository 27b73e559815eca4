package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A card in too strong a wind: what would help, and where the rocket would come down. */
class HelpAndChartIT {
  @TempDir Path folder;
  private PadTable pad;

  @BeforeEach
  void sitDown() throws Exception {
    pad = new PadTable(folder, 80, 24);
  }

  @AfterEach
  void packUp() {
    pad.close();
  }

  @Test
  void help_and_chart_are_shown_in_a_window_and_on_a_terminal_that_knows_ascii_alone() {
    pad.launch("demo");
    typeTooStrongAWind();
    seeWhatWouldHelp();
    List<String> chart = openChart();
    assertThat(chart).as("the window draws in dots").anyMatch(HelpAndChartIT::hasBraille);
    pad.press("Tab");
    pad.seesLine("Height", "Lamplighter");
    pad.seesLine("apogee");
    pad.escape("> Wind");
    pad.quit();

    pad.launch("TERM=linux LC_ALL=C", "demo");
    typeTooStrongAWind();
    seeWhatWouldHelp();
    assertThat(openChart()).allMatch(line -> line.chars().allMatch(c -> c >= ' ' && c <= '~'));
    pad.escape("> Wind");
    pad.quit();
  }

  private void typeTooStrongAWind() {
    pad.sees("Day");
    pad.press("n");
    pad.seesLine("> Rocket");
    pad.type("lam");
    pad.press("Enter");
    pad.seesLine("Wind", "5g8 N");
    pad.type("14g19 N");
    pad.seesLine("14 gusting 19 mph", "limit");
    pad.sees("NO-GO");
  }

  /** Asked for by the number of rows: the pane beside the form may have no room for it. */
  private void seeWhatWouldHelp() {
    pad.press("F3");
    pad.sees("Check");
    pad.sees("What would help");
    pad.seesLine("+ ", "limit");
  }

  private List<String> openChart() {
    pad.press("F4");
    pad.seesLine("Landing chart", "Lamplighter");
    pad.sees("14 gusting 19 mph");
    pad.sees("half land here");
    pad.seesLine("1000 ft", "north");
    return pad.seesLine("pines");
  }

  private static boolean hasBraille(String line) {
    return line.chars().anyMatch(c -> c > '\u2800' && c <= '\u28ff');
  }
}
