package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import padside.flight.MemoryFlightLog;

class DeskTest {
  @Test
  void quitting_is_asked_and_one_key_leaves() {
    Desk desk = Desk.over(new MemoryFlightLog()).press("<c-c>");
    assertThat(desk.frame()).contains("Leave Padside?");
    assertThat(desk.hasQuit()).isFalse();

    assertThat(desk.press("<enter>").hasQuit()).isTrue();
  }
}
