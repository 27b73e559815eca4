package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same rocket on the same set-up once more, in a new wind. */
class RepeatFlightIT {
  private static final int KEYS_ALLOWED = 12;

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
  void a_repeat_flight_takes_at_most_twelve_keys_from_the_day_to_the_kept_card() {
    pad.launch("demo");
    pad.sees("Day ·");
    int before = pad.keys();

    pad.press("n");
    pad.seesLine("> Rocket");
    pad.press("Enter");
    pad.sees("the wind of now.");
    pad.type("5g8 SW");
    pad.press("F2");
    pad.seesLine("Tin Whistle", "card", "limit");

    int pressed = pad.keys() - before;
    System.out.println("A repeat flight took " + pressed + " keys from Day to kept card.");
    assertThat(pressed).isLessThanOrEqualTo(KEYS_ALLOWED);
    pad.quit();
  }
}
