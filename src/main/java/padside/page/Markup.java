package padside.page;

import static j2html.TagCreator.tag;

import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import java.util.Locale;
import padside.units.PrintableText;

/** Elements of drawings, with what is told in them shown and never obeyed. */
final class Markup {
  private Markup() {}

  /** A picture that says in words what it is and what is to be seen in it. */
  static ContainerTag<?> picture(String title, String words, double width, double height) {
    return tag("svg")
        .attr("viewBox", "0 0 " + number(width) + " " + number(height))
        .attr("role", "img")
        .with(told("title", title), told("desc", words));
  }

  static ContainerTag<?> told(String name, String text) {
    return tag(name).withText(PrintableText.of(text));
  }

  static ContainerTag<?> line(double x1, double y1, double x2, double y2, String look) {
    return tag("line")
        .attr("x1", number(x1))
        .attr("y1", number(y1))
        .attr("x2", number(x2))
        .attr("y2", number(y2))
        .attr("class", look);
  }

  static ContainerTag<?> path(String way, String look) {
    return tag("path").attr("d", way).attr("class", look);
  }

  static ContainerTag<?> rectangle(double x, double y, double width, double height, String look) {
    return tag("rect")
        .attr("x", number(x))
        .attr("y", number(y))
        .attr("width", number(width))
        .attr("height", number(height))
        .attr("class", look);
  }

  /**
   * A text.
   *
   * @param anchor which end of it stands there: start, middle or end
   */
  static DomContent text(double x, double y, String anchor, String text) {
    return told("text", text).attr("x", number(x)).attr("y", number(y)).attr("text-anchor", anchor);
  }

  /** Tenths of a step of the drawing are finer than any printer. */
  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value + 0.0);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
