package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import padside.screen.Size;

class GlyphsTest {
  private static String shown(Glyphs glyphs, String text) {
    return text.chars()
        .mapToObj(character -> String.valueOf(glyphs.shown((char) character)))
        .collect(Collectors.joining());
  }

  @Test
  void a_terminal_without_utf_8_is_sent_ascii_only() {
    assertThat(IntStream.rangeClosed(0x20, 0xffff).mapToObj(c -> Glyphs.ASCII.shown((char) c)))
        .allSatisfy(shown -> assertThat((int) shown).isBetween(0x20, 0x7e));
  }

  @Test
  void a_window_is_sent_everything() {
    assertThat(shown(Glyphs.FULL, "┌─┐ ✓ é ▄ ≈")).isEqualTo("┌─┐ ✓ é ▄ ≈");
  }

  @Test
  void the_text_console_keeps_what_its_fonts_have() {
    String safe = "─│┌┐└┘├┤┬┴┼█░▒←↑→↓▲▼●■•…–°±µ×²½≤≥·é";

    assertThat(shown(Glyphs.CONSOLE, safe)).isEqualTo(safe);
    assertThat(shown(Glyphs.CONSOLE, "►◄✓⚠▄═")).isEqualTo("><y!#-");
  }

  @Test
  void boxes_arrows_and_signs_keep_their_meaning_in_ascii() {
    assertThat(shown(Glyphs.ASCII, "┌─┬┐│└┴┘├┼┤")).isEqualTo("+-++|++++++");
    assertThat(shown(Glyphs.ASCII, "←↑→↓▲▼")).isEqualTo("<^>v^v");
    assertThat(shown(Glyphs.ASCII, "6–9 mph ≤ 13 · 240° · m² × ±2 µ …"))
        .isEqualTo("6-9 mph < 13 . 240  . m2 x ~2 u ~");
    assertThat(shown(Glyphs.ASCII, "“Käthe’s Ålesund”")).isEqualTo("\"Kathe's Alesund\"");
    assertThat(shown(Glyphs.ASCII, "中")).isEqualTo("?");
  }

  /** Every sign kept for the console is in code page 437 or Latin-1, or its fonts' known extras. */
  @Test
  void console_signs_are_in_the_character_sets_its_fonts_cover() {
    var codePage437 = Charset.forName("IBM437").newEncoder();
    assertThat("─│┌┐└┘├┤┬┴┼█░▒≤≥".chars().mapToObj(c -> (char) c))
        .allSatisfy(sign -> assertThat(codePage437.canEncode(sign)).isTrue());
  }

  @Test
  void only_a_window_shows_braille() {
    assertThat(Glyphs.FULL.has('⣿')).isTrue();
    assertThat(Glyphs.CONSOLE.has('⣿')).isFalse();
    assertThat(Glyphs.ASCII.has('⣿')).isFalse();
  }

  @Test
  void the_locale_and_the_kind_of_terminal_decide() {
    Size size = new Size(80, 24);
    assertThat(Glyphs.of(new Tty(size, "xterm", true))).isEqualTo(Glyphs.FULL);
    assertThat(Glyphs.of(new Tty(size, "linux", true))).isEqualTo(Glyphs.CONSOLE);
    assertThat(Glyphs.of(new Tty(size, "xterm", false))).isEqualTo(Glyphs.ASCII);
  }
}
