package padside.page;

import static j2html.TagCreator.body;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.document;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.figcaption;
import static j2html.TagCreator.figure;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.head;
import static j2html.TagCreator.header;
import static j2html.TagCreator.html;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.section;
import static j2html.TagCreator.style;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.title;
import static j2html.TagCreator.tr;

import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import padside.units.PrintableText;

/**
 * A page as one document of HTML, for a browser and its printer: style and drawings are in it, it
 * asks for nothing else and runs nothing.
 */
public final class HtmlPage {
  /** What is no longer is not parted between two lines. */
  private static final int LONGEST_NAME = 16;

  private static final int LONGEST_DATE = 10;

  private HtmlPage() {}

  /** The whole document. */
  public static String of(Page page) {
    return document(
            html(
                    head(
                        meta().withCharset("utf-8"),
                        meta()
                            .withName("viewport")
                            .withContent("width=device-width, initial-scale=1"),
                        meta().withName("color-scheme").withContent("light dark"),
                        title(shown(page.title())),
                        style(rawHtml(look()))),
                    body(
                        main(
                            header(h1(shown(page.title())), p(shown(page.about()))),
                            each(page.sections().stream().map(HtmlPage::part)))))
                .withLang("en"))
        + "\n";
  }

  private static String look() {
    try (InputStream css = HtmlPage.class.getResourceAsStream("page.css")) {
      return new String(css.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("unreadable in the jar: page.css", e);
    }
  }

  private static String shown(String text) {
    return PrintableText.of(text);
  }

  private static DomContent each(Stream<? extends DomContent> contents) {
    return j2html.TagCreator.each(contents.map(DomContent.class::cast));
  }

  private static DomContent part(Page.Section part) {
    List<DomContent> inside = new ArrayList<>();
    boolean titled = !part.title().isBlank();
    if (titled) {
      inside.add(h2(shown(part.title())));
    }
    for (int i = 0; i < part.blocks().size(); i++) {
      boolean leads = i + 1 < part.blocks().size() && !(part.blocks().get(i + 1) instanceof Prose);
      inside.add(block(part.blocks().get(i), leads));
    }
    return titled ? section(each(inside.stream())) : div(each(inside.stream()));
  }

  /**
   * One block.
   *
   * @param leads whether it leads to a table or a chart, and stands on the same sheet
   */
  private static DomContent block(Block block, boolean leads) {
    if (block instanceof Table table) {
      return table(table);
    } else if (block instanceof Form form) {
      return form(form);
    } else if (block instanceof Plot plot) {
      return chart(plot.title(), plot.words(), PlotPicture.of(plot));
    } else if (block instanceof Bars bars) {
      return chart(bars.title(), bars.words(), BarsPicture.of(bars));
    } else if (block instanceof Intervals intervals) {
      return chart(intervals.title(), intervals.words(), IntervalsPicture.of(intervals));
    } else if (block instanceof Keys keys) {
      return div(each(keys.groups().stream().map(HtmlPage::keys))).withClass("keys");
    }
    Prose prose = (Prose) block;
    String look = prose.weight() == Prose.Weight.NOTICE ? "notice" : leads ? "leads" : "";
    return look.isEmpty() ? p(shown(prose.text())) : p(shown(prose.text())).withClass(look);
  }

  private static DomContent chart(String title, String words, ContainerTag<?> picture) {
    return figure(figcaption(shown(title + ". " + words)), picture);
  }

  private static DomContent table(Table table) {
    List<DomContent> headings = new ArrayList<>();
    for (Table.Column column : table.columns()) {
      var heading = th(shown(column.heading())).attr("scope", "col");
      headings.add(column.numbers() ? heading.withClass("number") : heading);
    }
    return div(j2html.TagCreator.table(
            caption(shown(table.caption())),
            thead(tr(each(headings.stream()))),
            tbody(each(table.rows().stream().map(row -> row(table, row))))))
        .withClass("wide");
  }

  private static DomContent row(Table table, List<String> cells) {
    List<DomContent> row = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      String text = shown(cells.get(i));
      boolean first = i == 0;
      boolean number = table.columns().get(i).numbers();
      boolean brief = text.length() <= (first ? LONGEST_NAME : LONGEST_DATE);
      ContainerTag<?> cell = first ? th(text).attr("scope", "row") : td(text);
      String look = number ? "number" : brief && !text.isEmpty() ? "short" : "";
      row.add(look.isEmpty() ? cell : cell.attr("class", look));
    }
    return tr(each(row.stream()));
  }

  private static DomContent form(Form form) {
    return div(
            h3(shown(form.title())),
            dl(each(form.entries().stream().map(HtmlPage::entry))).withClass("form"))
        .withClass(form.cut() ? "card cut" : "card");
  }

  private static DomContent keys(Keys.Group group) {
    return div(
        h3(shown(group.screen())),
        dl(
            each(
                group.keys().stream()
                    .map(key -> div(dt(shown(key.key())), dd(shown(key.does())))))));
  }

  private static DomContent entry(Form.Entry entry) {
    boolean blank = entry.value().isBlank();
    return div(dt(shown(entry.label())), blank ? dd().withClass("pen") : dd(shown(entry.value())))
        .withClass(entry.wide() ? "wide" : "half");
  }
}
