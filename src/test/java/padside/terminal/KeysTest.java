package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padside.screen.Key;

/**
 * Bytes in, keys out. The sequences are those of the terminal descriptions xterm-256color, linux,
 * rxvt and vt220 in the terminfo database ({@code infocmp -1 NAME}) and of xterm's "Control
 * Sequences"; {@code ^} stands for the escape here.
 */
class KeysTest {
  private static List<String> keys(String typed) {
    try (Typewriter typewriter = Typewriter.xterm()) {
      return typewriter.type(typed.replace('^', '\033')).keys();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "^[A, <up>",
    "^[B, <down>",
    "^[C, <right>",
    "^[D, <left>",
    "^OA, <up>",
    "^OB, <down>",
    "^OC, <right>",
    "^OD, <left>",
    "^[1;5A, <up>",
    "^[1;2D, <left>",
    "^[a, <up>",
    "^^[A, <up>",
    "^^OB, <down>",
    "^Od, <left>",
    "^[H, <home>",
    "^OH, <home>",
    "^[1~, <home>",
    "^[7~, <home>",
    "^[F, <end>",
    "^OF, <end>",
    "^[4~, <end>",
    "^[8~, <end>",
    "^[5~, <pageup>",
    "^[6~, <pagedown>",
    "^[3~, <delete>",
    "^[3;5~, <delete>",
    "^[Z, <s-tab>",
    "^OM, <enter>",
    "^OI, <tab>",
    "^Oq, 1",
    "^On, .",
    "^Om, -"
  })
  void editing_keys_of_every_terminal_are_known(String bytes, String key) {
    assertThat(keys(bytes)).containsExactly(key);
  }

  @ParameterizedTest
  @CsvSource({
    "^OP, 1",
    "^OQ, 2",
    "^OR, 3",
    "^OS, 4",
    "^[15~, 5",
    "^[17~, 6",
    "^[18~, 7",
    "^[19~, 8",
    "^[20~, 9",
    "^[21~, 10",
    "^[23~, 11",
    "^[24~, 12",
    "^[11~, 1",
    "^[12~, 2",
    "^[13~, 3",
    "^[14~, 4",
    "^[[A, 1",
    "^[[B, 2",
    "^[[C, 3",
    "^[[D, 4",
    "^[[E, 5",
    "^[1;2P, 1",
    "^[1;2R, 3",
    "^[15;5~, 5"
  })
  void function_keys_of_every_terminal_are_known(String bytes, int number) {
    assertThat(keys(bytes)).containsExactly(Key.function(number).name());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "^[I",
        "^[O",
        "^[?1;2c",
        "^[24;80R",
        "^[<0;10;5M",
        "^[M !!",
        "^[200~",
        "^[99~",
        "^[E",
        "^[2~",
        "^[25~",
        "^OE",
        "^x",
        "^[1;5u",
        "^[[Z"
      })
  void what_is_no_known_key_is_swallowed_whole(String bytes) {
    assertThat(keys("a" + bytes + "b")).containsExactly("a", "b");
  }

  @Test
  void control_with_a_letter_is_a_key_and_what_terminals_do_with_it_does_not_happen() {
    assertThat(keys("\003\032\023\021\026\017\001"))
        .containsExactly("<c-c>", "<c-z>", "<c-s>", "<c-q>", "<c-v>", "<c-o>", "<c-a>");
  }

  @Test
  void tab_enter_and_both_kinds_of_backspace_are_keys() {
    assertThat(keys("\t\r\n\b\177"))
        .containsExactly("<tab>", "<enter>", "<enter>", "<backspace>", "<backspace>");
  }

  @Test
  void codes_that_are_no_letter_are_dropped() {
    assertThat(keys("a\000\034\035\036\037b")).containsExactly("a", "b");
  }

  @Test
  void a_line_feed_in_pasted_text_is_enter() {
    assertThat(keys("C6-5\n6g9")).containsExactly("C", "6", "-", "5", "<enter>", "6", "g", "9");
  }

  @Test
  void escape_alone_is_told_soon_and_without_another_key() {
    try (Typewriter typewriter = Typewriter.xterm()) {
      typewriter.type("a");
      assertThat(typewriter.next()).isEqualTo(new Input.Pressed(new Key("a")));

      long before = System.nanoTime();
      typewriter.type("\033");
      assertThat(typewriter.next()).isEqualTo(new Input.Pressed(Key.ESC));
      assertThat((System.nanoTime() - before) / 1_000_000)
          .as("milliseconds from the byte to the key")
          .isBetween(LingeringInput.AFTER_ESCAPE_MS - 5L, 500L);
    }
  }

  @Test
  void escape_twice_is_two_keys() {
    assertThat(keys("^^")).containsExactly("<esc>", "<esc>");
  }

  @Test
  void a_key_after_escape_is_a_key_of_its_own() {
    try (Typewriter typewriter = Typewriter.xterm()) {
      typewriter.type("\033").pause(80).type("[").pause(1).type("A");

      assertThat(typewriter.keys()).containsExactly("<esc>", "[", "A");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"^|[A", "^[|A", "^|O|A", "^[|1|;|5|A"})
  void a_sequence_torn_on_its_way_stays_one_key(String torn) {
    try (Typewriter typewriter = Typewriter.xterm()) {
      for (String piece : torn.replace('^', '\033').split("\\|", -1)) {
        typewriter.type(piece).pause(8);
      }

      assertThat(typewriter.keys()).containsExactly("<up>");
    }
  }

  @Test
  void a_sequence_broken_off_is_dropped_and_the_next_key_is_whole() {
    assertThat(keys("^[1;^[Bq")).containsExactly("<down>", "q");
  }

  @Test
  void accented_letters_arrive_composed_however_they_were_sent() {
    assertThat(keys("\u00e9")).containsExactly("\u00e9");
    assertThat(keys("e\u0301a")).containsExactly("\u00e9", "a");
    assertThat(keys("a\u0323\u0302x")).containsExactly("\u1ead", "x");
  }

  @Test
  void a_mark_that_composes_with_nothing_is_dropped() {
    assertThat(keys("q\u0301w\u0301")).containsExactly("q", "\u1e83");
    assertThat(keys("7\u0301")).containsExactly("7");
  }

  @Test
  void what_takes_no_cell_or_two_is_dropped() {
    assertThat(keys("a\ud83d\ude80\u200d\ufe0f\u202e\u4e2db")).containsExactly("a", "b");
  }

  @Test
  void a_character_torn_between_its_bytes_is_whole() {
    byte[] bytes = "é".getBytes(StandardCharsets.UTF_8);
    try (Typewriter typewriter = Typewriter.xterm()) {
      typewriter.type(new byte[] {bytes[0]}).pause(40).type(new byte[] {bytes[1]});

      assertThat(typewriter.keys()).containsExactly("é");
    }
  }

  @Test
  void the_end_of_the_line_is_told_once() {
    try (Typewriter typewriter = Typewriter.xterm()) {
      typewriter.hangUp();

      assertThat(typewriter.next()).isEqualTo(new Input.HungUp());
    }
  }
}
