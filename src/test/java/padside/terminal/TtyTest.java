package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Properties;
import org.junit.jupiter.api.Test;
import padside.screen.Size;

class TtyTest {
  private static Properties launched(String columns, String rows) {
    Properties properties = new Properties();
    properties.setProperty("padside.columns", columns);
    properties.setProperty("padside.rows", rows);
    properties.setProperty("padside.term", "xterm");
    properties.setProperty("padside.utf8", "true");
    return properties;
  }

  @Test
  void the_terminal_is_as_the_launcher_found_it() {
    assertThat(Tty.of(launched("60", "20"))).isEqualTo(new Tty(new Size(60, 20), "xterm", true));
  }

  @Test
  void without_the_launcher_a_sentence_says_what_to_start() {
    assertThatThrownBy(() -> Tty.of(new Properties()))
        .isInstanceOf(NoTerminalException.class)
        .hasMessageContaining("start padside in a terminal window");
  }

  @Test
  void a_size_that_is_none_is_named() {
    assertThatThrownBy(() -> Tty.of(launched("0", "24")))
        .isInstanceOf(NoTerminalException.class)
        .hasMessageContaining("padside.columns=0");
    assertThatThrownBy(() -> Tty.of(launched("80", "x"))).hasMessageContaining("padside.rows=x");
  }

  @Test
  void the_answer_of_stty_is_rows_before_columns() {
    assertThat(LineModes.parse("24 80\n")).contains(new Size(80, 24));
    assertThat(LineModes.parse("0 0\n")).isEmpty();
    assertThat(LineModes.parse("")).isEmpty();
  }
}
