package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.preflight.Advice;
import padside.units.Notations;
import padside.units.UnitSystem;

/** What would help a card, as lines of one width. */
final class HelpText {
  /** In place of help that is still looked for, where there is one line. */
  static final String LOOKING = "looking for what would help…";

  private static final String HEADING = "What would help";

  /** Rows kept free for the first help, so that what stands below keeps about its place. */
  private static final int USUAL_ROWS = 5;

  private HelpText() {}

  /** While help is looked for: what was heard before it as out of date, else room for it. */
  static List<Line> looking(Optional<Advice> heard, int width, UnitSystem units, boolean whole) {
    List<Line> lines = new ArrayList<>(List.of(new Line(HEADING + ": looking…", Style.LABEL)));
    List<Line> before = heard.map(advice -> lines(advice, width, units, whole)).orElse(List.of());
    before.stream().skip(1).forEach(line -> lines.add(new Line(line.text(), Style.LABEL)));
    while (!whole && before.isEmpty() && lines.size() <= USUAL_ROWS) {
      lines.add(Line.blank());
    }
    return lines;
  }

  /**
   * Under a heading the remark, then one change after the other; nothing where there is nothing to
   * say.
   */
  static List<Line> lines(Advice advice, int width, UnitSystem units, boolean whole) {
    List<Line> lines = new ArrayList<>();
    if (advice.helps().isEmpty() && advice.remark().isEmpty()) {
      return lines;
    }
    lines.add(Line.strong(HEADING));
    List<String> texts = new ArrayList<>();
    advice.remark().ifPresent(remark -> texts.addAll(Paragraph.hanging("  ", remark, width)));
    for (Advice.Help help : advice.helps()) {
      texts.addAll(Paragraph.hanging("+ ", sentence(help, units, whole), width));
    }
    texts.forEach(text -> lines.add(Line.plain(text)));
    return lines;
  }

  /** The first change and how many more there are, in one line; its words are cut to fit. */
  static Optional<String> brief(Advice advice, int width, UnitSystem units) {
    int more = advice.helps().size() - 1;
    return advice.helps().stream()
        .findFirst()
        .map(
            help -> {
              String outcome = ": " + limit(help, "", units) + help.verdict().word();
              String rest = outcome + (more > 0 ? " · " + more + " more: F3" : "");
              return Paragraph.cut(Paragraph.capital(help.change()), width - rest.length()) + rest;
            })
        .or(() -> advice.remark().map(remark -> Paragraph.cut(remark, width)));
  }

  private static String sentence(Advice.Help help, UnitSystem units, boolean whole) {
    String binds = whole && !help.binds().isBlank() ? " (" + help.binds() + ")" : "";
    String apogee = whole ? ", apogee " : ", ";
    String ejection = whole ? ", ejection " : ", ";
    return Paragraph.capital(help.change())
        + ": "
        + limit(help, binds, units)
        + help.verdict().word()
        + help.apogee().map(height -> apogee + Notations.altitude(units).show(height)).orElse("")
        + help.delayError().map(error -> ejection + OutlookText.early(error)).orElse("");
  }

  private static String limit(Advice.Help help, String binds, UnitSystem units) {
    return help.limit()
        .map(limit -> "limit " + Notations.windSpeed(units).showDown(limit) + binds + ", ")
        .orElse("");
  }
}
