package padside.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import padside.screen.Size;
import padside.screen.Style;

/**
 * Contrast after the Web Content Accessibility Guidelines 2.1: relative luminance and contrast
 * ratio as defined there, 7 to 1 as success criterion 1.4.6 asks for (from memory).
 */
class PaletteTest {
  private static final double ENHANCED_CONTRAST = 7;

  private static Stream<Palette> coloured() {
    return Arrays.stream(Palette.values()).filter(palette -> palette != Palette.MONOCHROME);
  }

  @Test
  void the_contrast_of_black_on_white_is_21() {
    assertThat(contrast(new int[] {0, 0, 0}, new int[] {255, 255, 255}))
        .isEqualTo(21, within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("coloured")
  void every_style_stands_out_from_its_paper(Palette palette) {
    assertThat(Style.values())
        .allSatisfy(
            style -> {
              Look look = palette.look(style);
              assertThat(contrast(ink(look), rgb(look.paper())))
                  .as(palette + " " + style)
                  .isGreaterThanOrEqualTo(ENHANCED_CONTRAST);
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
                assertThat(rgb(palette.look(style).paper()))
                    .isIn(new int[] {0, 0, 0}, new int[] {255, 255, 255}));
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

  /**
   * On the text console bold is the bright colour and underline is cyan (kernel, vt.c; from
   * memory).
   */
  private static int[] ink(Look look) {
    if (look.ink() instanceof TextColor.ANSI ansi) {
      TextColor.ANSI drawn = look.marks().contains(SGR.UNDERLINE) ? TextColor.ANSI.CYAN : ansi;
      return rgb(
          look.marks().contains(SGR.BOLD) ? TextColor.ANSI.valueOf(drawn + "_BRIGHT") : drawn);
    }
    return rgb(look.ink());
  }

  private static int[] rgb(TextColor color) {
    return new int[] {color.getRed(), color.getGreen(), color.getBlue()};
  }

  private static double contrast(int[] one, int[] other) {
    double lighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (lighter + 0.05) / (darker + 0.05);
  }

  private static double luminance(int[] rgb) {
    return 0.2126 * linear(rgb[0]) + 0.7152 * linear(rgb[1]) + 0.0722 * linear(rgb[2]);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
