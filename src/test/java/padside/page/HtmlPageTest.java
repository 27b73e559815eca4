package padside.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import padside.Contrast;
import padside.report.DemoPages;
import padside.report.PageKind;

/** The pages as HTML, held against the standard's checker and the contrast of WCAG 2.1. */
class HtmlPageTest {
  private static final Pattern COLOURS = Pattern.compile(":root \\{([^}]*)\\}");
  private static final Pattern COLOUR = Pattern.compile("--(\\w+): #([0-9a-f]{6});");

  /** Every kind of block, and texts that would like to be something else. */
  static Page hostile() {
    String evil = "<script>alert(1)</script>&\"'\u001b[2J\u202e";
    Plot plot =
        new Plot(
            evil,
            evil,
            new Plot.Axis(evil, "ft"),
            new Plot.Axis("up", ""),
            false,
            List.of(
                new Plot.Series(evil, Plot.Mark.DOT, List.of(new Plot.Point(1, 2, evil))),
                new Plot.Series("b", Plot.Mark.LINE, List.of(Plot.Point.of(0, 0)))));
    return new Page(
        evil,
        evil,
        List.of(
            Page.Section.of(
                evil,
                Prose.of(evil),
                Prose.notice(evil),
                new Table(evil, List.of(Table.Column.of(evil)), List.of(List.of(evil))),
                new Form(evil, List.of(Form.Entry.of(evil, evil), Form.Entry.wide("b", "")), true),
                plot,
                new Bars(evil, evil, evil, List.of(evil), List.of(new Bars.Bar(evil, List.of(3)))),
                new Intervals(
                    evil,
                    evil,
                    evil,
                    new Plot.Axis("share", ""),
                    0,
                    1,
                    List.of(new Intervals.Interval(evil, 0.1, 0.2, 0.5, evil))))));
  }

  @ParameterizedTest
  @EnumSource(PageKind.class)
  void the_checker_of_the_standard_finds_nothing(PageKind kind) throws Exception {
    assertThat(objections(HtmlPage.of(DemoPages.any(kind)))).isEmpty();
  }

  @Test
  void the_checker_finds_nothing_in_texts_that_would_be_markup() throws Exception {
    String html = HtmlPage.of(hostile());

    assertThat(objections(html)).isEmpty();
    assertThat(html).doesNotContain("<script", "\u001b", "\u202e").contains("&lt;script&gt;");
  }

  @Test
  void the_checker_does_find_what_is_wrong() throws Exception {
    assertThat(objections(HtmlPage.of(hostile()).replace("<h1>", "<h1><table>"))).isNotEmpty();
  }

  /** The Nu Html Checker, which follows the HTML Living Standard. */
  private static List<String> objections(String html) throws Exception {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
    String said =
        validator.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    return said.lines().filter(line -> line.contains("error") || line.contains("warning")).toList();
  }

  @ParameterizedTest
  @EnumSource(PageKind.class)
  void a_page_asks_for_nothing_and_runs_nothing(PageKind kind) {
    assertThat(HtmlPage.of(DemoPages.any(kind)))
        .doesNotContain("http:", "https:", "src=", "href=", "url(", "@import", "<script")
        .doesNotContainPattern("<[^>]* on[a-z]+=")
        .contains("<html lang=\"en\">");
  }

  @Test
  void every_picture_says_what_it_is() {
    String html = HtmlPage.of(hostile());

    assertThat(html.split("<svg", -1)).hasSize(4);
    assertThat(html.split("role=\"img\"><title>", -1)).hasSize(4);
    assertThat(html.split("</title><desc>", -1)).hasSize(4);
  }

  @Test
  void every_cell_of_a_head_has_its_scope() {
    for (PageKind kind : PageKind.values()) {
      String html = HtmlPage.of(DemoPages.any(kind));
      assertThat(html.split("<th ", -1).length).isEqualTo(html.split("scope=\"", -1).length);
    }
  }

  @Test
  void text_and_drawings_stand_out_in_the_light_in_the_dark_and_on_paper() {
    List<String> faint = new ArrayList<>();
    Matcher schemes = COLOURS.matcher(HtmlPage.of(hostile()));
    int found = 0;
    while (schemes.find()) {
      found++;
      Map<String, String> colours = new TreeMap<>();
      Matcher colour = COLOUR.matcher(schemes.group(1));
      while (colour.find()) {
        colours.put(colour.group(1), colour.group(2));
      }
      String paper = colours.get("paper");
      for (String ink : List.of("ink", "quiet", "mark", "amiss")) {
        note(faint, ink, contrast(colours.get(ink), paper), Contrast.ENHANCED);
      }
      note(
          faint,
          "ink in a notice",
          contrast(colours.get("ink"), colours.get("notice")),
          Contrast.ENHANCED);
      note(faint, "line", contrast(colours.get("line"), paper), Contrast.OF_DRAWINGS);
    }

    assertThat(found).isEqualTo(3);
    assertThat(faint).isEmpty();
  }

  private static void note(List<String> faint, String what, double contrast, double least) {
    if (contrast < least) {
      faint.add(what + " has " + contrast);
    }
  }

  /** The examples of the formula: black on white is 21, grey #767676 on white 4.54. */
  @Test
  void contrast_is_that_of_the_published_examples() {
    assertThat(contrast("000000", "ffffff")).isEqualTo(21);
    assertThat(contrast("767676", "ffffff"))
        .isCloseTo(4.54, org.assertj.core.api.Assertions.within(0.01));
  }

  private static double contrast(String one, String other) {
    return Contrast.of(one).with(Contrast.of(other));
  }
}
