package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.preflight.Advice;
import padside.units.Notations;
import padside.units.UnitSystem;

/** What would help a card, as lines of one width. */
final class HelpText {
  private HelpText() {}

  /** Under a heading, one change after the other; nothing where there is nothing to say. */
  static List<Line> lines(Advice advice, int width, UnitSystem units, boolean whole) {
    List<Line> lines = new ArrayList<>();
    if (advice.helps().isEmpty() && advice.remark().isEmpty()) {
      return lines;
    }
    lines.add(Line.strong("What would help"));
    List<String> texts = new ArrayList<>();
    for (Advice.Help help : advice.helps()) {
      String binds = whole && !help.binds().isBlank() ? " (" + help.binds() + ")" : "";
      texts.addAll(Paragraph.hanging("+ ", sentence(help, binds, units), width));
    }
    advice.remark().ifPresent(remark -> texts.addAll(Paragraph.hanging("  ", remark, width)));
    texts.forEach(text -> lines.add(Line.plain(text)));
    return lines;
  }

  /** The first change and how many more there are, for where there is one line. */
  static Optional<String> brief(Advice advice, UnitSystem units) {
    int more = advice.helps().size() - 1;
    return advice.helps().stream()
        .findFirst()
        .map(
            help ->
                capital(help.change())
                    + ": "
                    + limit(help, "", units)
                    + help.verdict().word()
                    + (more > 0 ? " · " + more + " more: F3" : ""))
        .or(advice::remark);
  }

  private static String sentence(Advice.Help help, String binds, UnitSystem units) {
    return capital(help.change())
        + ": "
        + limit(help, binds, units)
        + help.verdict().word()
        + help.apogee().map(height -> ", " + Notations.altitude(units).show(height)).orElse("")
        + help.delayError().map(error -> ", " + OutlookText.early(error)).orElse("");
  }

  private static String limit(Advice.Help help, String binds, UnitSystem units) {
    return help.limit()
        .map(limit -> "limit " + Notations.windSpeed(units).showDown(limit) + binds + ", ")
        .orElse("");
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
