package padside.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintableTextTest {
  /** ECMA-48 control characters, C1 among them, and the bidirectional controls of Unicode. */
  @ParameterizedTest
  @ValueSource(chars = {0x00, 0x07, 0x1b, 0x7f, 0x9b, 0x202e, 0x2066, 0x200b, 0x2028, 0xfeff})
  void what_could_drive_a_terminal_is_shown_and_not_obeyed(char driving) {
    assertThat(PrintableText.of("a" + driving + "b")).isEqualTo("a·b");
    assertThat(PrintableText.isOneCell(driving)).isFalse();
  }

  @Test
  void ordinary_text_stays_as_it_is() {
    String text = "Müller’s 6g9 – 240° · 日本 🚀";

    assertThat(PrintableText.of(text)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(chars = {0x0301, 0x20dd, 0x1100, 0x3042, 0xac00, 0xf900, 0xfe30, 0xff21, 0xffe5})
  void marks_and_wide_characters_do_not_take_one_cell(char other) {
    assertThat(PrintableText.isOneCell(other)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(chars = {' ', 'a', 'é', '·', '│', '█', '→'})
  void letters_signs_and_lines_take_one_cell(char one) {
    assertThat(PrintableText.isOneCell(one)).isTrue();
  }

  /** Two halves of one character outside the basic plane are no characters by themselves. */
  @Test
  void a_lone_half_of_a_character_is_not_printable() {
    assertThat(PrintableText.of("a\ud83d")).isEqualTo("a·");
  }
}
