package padside.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built program: a change on the settings screen is in the file and on the next screen. */
class SettingsIT {
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
  void units_chosen_on_the_screen_are_shown_at_once_and_stand_in_the_file() throws Exception {
    pad.setting("# mine", "clock = trusted", "own-limit = 12 mph");
    pad.launch("demo");
    pad.sees("Day");
    pad.press("a");
    pad.seesLine("Own wind limit", "12 mph");
    pad.type("metric");
    pad.press("F2");
    pad.sees("Kept.");
    pad.press("f");
    pad.sees("Fleet");
    pad.escape("Day");
    pad.quit();

    assertThat(Files.readString(folder.resolve("config/padside/settings.properties")))
        .startsWith("# mine\nclock = trusted\nown-limit = 12 mph\n")
        .endsWith("\nunits = metric\n");
  }
}
