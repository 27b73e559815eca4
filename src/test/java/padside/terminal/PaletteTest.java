package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import padside.Contrast;
import padside.screen.Ease.Looks;
import padside.screen.Size;
import padside.screen.Style;

/** What each style looks like, by the colours terminals make of the numbers they are sent. */
class PaletteTest {
  /**
   * The text console's own sixteen colours, in the order of the numbers they are asked for by
   * (Linux kernel, drivers/tty/vt/vt.c, default_red, default_grn, default_blu; from memory).
   */
  private static final int[] RED = {
    0x00, 0xaa, 0x00, 0xaa, 0x00, 0xaa, 0x00, 0xaa, 0x55, 0xff, 0x55, 0xff, 0x55, 0xff, 0x55, 0xff
  };

  private static final int[] GREEN = {
    0x00, 0x00, 0xaa, 0x55, 0x00, 0x00, 0xaa, 0xaa, 0x55, 0x55, 0xff, 0xff, 0x55, 0x55, 0xff, 0xff
  };
  private static final int[] BLUE = {
    0x00, 0x00, 0x00, 0x00, 0xaa, 0xaa, 0xaa, 0xaa, 0x55, 0x55, 0x55, 0x55, 0xff, 0xff, 0xff, 0xff
  };
  private static final int CYAN = 6;
  private static final int BRIGHT = 8;

  private static Stream<Palette> coloured() {
    return Arrays.stream(Palette.values()).filter(palette -> palette != Palette.MONOCHROME);
  }

  @ParameterizedTest
  @MethodSource("coloured")
  void every_style_stands_out_from_its_paper(Palette palette) {
    assertThat(Style.values())
        .allSatisfy(
            style -> {
              Look look = palette.look(style);
              assertThat(ink(look).with(paper(look)))
                  .as(palette + " " + style)
                  .isGreaterThanOrEqualTo(Contrast.ENHANCED);
            });
  }

  @ParameterizedTest
  @EnumSource(
      value = Palette.class,
      names = {"BLACK_ON_WHITE", "WHITE_ON_BLACK"})
  void paper_is_pure_black_or_white(Palette palette) {
    assertThat(Style.values())
        .allSatisfy(
            style ->
                assertThat(paperOf(palette.look(style)))
                    .isIn(Contrast.of("000000"), Contrast.of("ffffff")));
  }

  @ParameterizedTest
  @EnumSource(Palette.class)
  void the_verdicts_differ_from_each_other_and_from_text(Palette palette) {
    assertThat(
            Stream.of(Style.PLAIN, Style.GO, Style.MARGINAL, Style.NO_GO, Style.UNKNOWN)
                .map(palette::look))
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource(
      value = Palette.class,
      names = {"BLACK_ON_WHITE", "WHITE_ON_BLACK", "MONOCHROME"})
  void the_verdicts_differ_without_colour(Palette palette) {
    List<Style> verdicts = List.of(Style.GO, Style.MARGINAL, Style.NO_GO, Style.UNKNOWN);

    assertThat(verdicts.stream().map(verdict -> shape(palette, verdict))).doesNotHaveDuplicates();
  }

  /**
   * The text console has no mark but brightness and paper; there the sign at the line of the
   * cursor, and the words of an objection, tell them apart (see {@code EverySizeTest}).
   */
  @ParameterizedTest
  @EnumSource(
      value = Palette.class,
      names = {"BLACK_ON_WHITE", "WHITE_ON_BLACK", "MONOCHROME"})
  void field_focus_and_objection_differ_without_colour(Palette palette) {
    List<Style> styles = List.of(Style.PLAIN, Style.FIELD, Style.FOCUS, Style.OBJECTION);

    assertThat(styles.stream().map(style -> shape(palette, style))).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource(Palette.class)
  void a_field_differs_from_text_and_from_the_one_with_the_cursor_without_colour(Palette palette) {
    List<Style> styles = List.of(Style.PLAIN, Style.FIELD, Style.FOCUS);

    assertThat(styles.stream().map(style -> shape(palette, style))).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource(Palette.class)
  void where_the_cursor_is_differs_from_other_fields(Palette palette) {
    assertThat(palette.look(Style.FOCUS)).isNotEqualTo(palette.look(Style.FIELD));
    assertThat(palette.look(Style.FOCUS)).isNotEqualTo(palette.look(Style.PLAIN));
  }

  @Test
  void monochrome_sends_no_colour() {
    assertThat(Style.values())
        .allSatisfy(
            style -> {
              assertThat(Palette.MONOCHROME.look(style).ink()).isEqualTo(TextColor.ANSI.DEFAULT);
              assertThat(Palette.MONOCHROME.look(style).paper()).isEqualTo(TextColor.ANSI.DEFAULT);
            });
  }

  @Test
  void the_choice_is_fitted_to_the_terminal() {
    assertThat(Palette.of(Looks.BLACK_ON_WHITE, tty("xterm-256color")))
        .isEqualTo(Palette.BLACK_ON_WHITE);
    assertThat(Palette.of(Looks.BLACK_ON_WHITE, tty("linux")))
        .isEqualTo(Palette.CONSOLE_BLACK_ON_WHITE);
    assertThat(Palette.of(Looks.WHITE_ON_BLACK, tty("linux")))
        .isEqualTo(Palette.CONSOLE_WHITE_ON_BLACK);
    assertThat(Palette.of(Looks.WHITE_ON_BLACK, tty("vt220"))).isEqualTo(Palette.MONOCHROME);
    assertThat(Palette.of(Looks.MONOCHROME, tty("linux"))).isEqualTo(Palette.MONOCHROME);
  }

  private static Tty tty(String term) {
    return new Tty(new Size(80, 24), term, true);
  }

  /** What is left of a look in one colour: its marks, and whether it is reversed. */
  private static String shape(Palette palette, Style style) {
    Look look = palette.look(style);
    boolean reversed =
        look.marks().contains(SGR.REVERSE)
            || !look.paper().equals(palette.look(Style.PLAIN).paper());
    return (reversed ? "reversed " : "")
        + look.marks().stream().filter(mark -> mark != SGR.REVERSE).sorted().toList();
  }

  /** The characters' colour, or what the paper's becomes where the two change places. */
  private static Contrast ink(Look look) {
    return look.marks().contains(SGR.REVERSE) ? paperOf(look) : inkOf(look);
  }

  private static Contrast paper(Look look) {
    return look.marks().contains(SGR.REVERSE) ? inkOf(look) : paperOf(look);
  }

  /**
   * On the text console bold is the bright colour and underline is cyan (Linux kernel,
   * drivers/tty/vt/vt.c, build_attr; from memory).
   */
  private static Contrast inkOf(Look look) {
    if (look.ink() instanceof TextColor.ANSI ansi) {
      int colour = look.marks().contains(SGR.UNDERLINE) ? CYAN : number(ansi);
      return console(look.marks().contains(SGR.BOLD) ? colour + BRIGHT : colour);
    }
    return indexed(look.ink());
  }

  private static Contrast paperOf(Look look) {
    return look.paper() instanceof TextColor.ANSI ansi
        ? console(number(ansi))
        : indexed(look.paper());
  }

  /** One of the eight a sequence asks for, such as 2 of {@code 32}. */
  private static int number(TextColor.ANSI ansi) {
    String sent = new String(ansi.getForegroundSGRSequence(), StandardCharsets.US_ASCII);
    assertThat(sent).matches("3[0-7]");
    return sent.charAt(1) - '0';
  }

  private static Contrast console(int number) {
    return new Contrast(RED[number], GREEN[number], BLUE[number]);
  }

  /**
   * The cube of xterm's 256 colours, 16 to 231: six levels of each channel (xterm, 256colres.pl:
   * {@code level ? level * 40 + 55 : 0}; from memory). The number is that of the sequence sent.
   */
  private static Contrast indexed(TextColor color) {
    String sent = new String(color.getForegroundSGRSequence(), StandardCharsets.US_ASCII);
    int number = Integer.parseInt(sent.replaceFirst("^38;5;", ""));
    assertThat(number).as("themes change the others").isBetween(16, 231);
    int cell = number - 16;
    return new Contrast(level(cell / 36), level(cell / 6 % 6), level(cell % 6));
  }

  private static int level(int step) {
    return step == 0 ? 0 : step * 40 + 55;
  }
}
