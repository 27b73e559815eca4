package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.flight.OutcomeTable;
import padside.insight.Burns;
import padside.insight.Delays;
import padside.insight.Failures;
import padside.insight.Igniters;
import padside.insight.Interval;
import padside.insight.Reliability;

/** What the log teaches of lots, igniters and delays, in sentences with a bar for each share. */
public final class LessonsText {
  private static final int BAR = 20;
  private static final String INDENT = "    ";

  private final Logbook book;
  private final Reliability reliability;
  private final Delays delays;
  private final int width;

  private LessonsText(Logbook book, OutcomeTable outcomes, int width) {
    this.book = book;
    this.reliability = new Reliability(book, outcomes);
    this.delays = Delays.of(book);
    this.width = width;
  }

  /** Everything, in lines of so many characters at most. */
  public static List<String> whole(Logbook book, OutcomeTable outcomes, int width) {
    return lines(book, outcomes, width).stream().map(Line::text).toList();
  }

  static List<Line> lines(Logbook book, OutcomeTable outcomes, int width) {
    LessonsText text = new LessonsText(book, outcomes, width);
    List<Line> lines = new ArrayList<>();
    if (!text.reliability.isWhole()) {
      lines.add(Line.strong("Of the newest flights; the older ones are being read."));
    }
    text.lots(lines);
    text.shares("Motor types", text.reliability.byType(), lines);
    text.shares("Date codes", text.reliability.byDateCode(), lines);
    text.igniters(lines);
    text.delays(lines);
    lines.add(Line.blank());
    text.add("", notes(), lines);
    return lines;
  }

  private static String notes() {
    return "A bar runs from none to all that fail: o the share seen, - "
        + Failures.METHOD
        + " "
        + Delays.METHOD;
  }

  private void lots(List<Line> lines) {
    lines.add(Line.strong("Lots, suspect first"));
    List<Lot> fired = reliability.suspectFirst();
    if (fired.isEmpty()) {
      lines.add(Line.plain(INDENT + "No motor of a lot was fired yet."));
    }
    for (Lot lot : fired) {
      Burns burns = reliability.of(lot);
      share((burns.isMarked() ? "! " : "  ") + Reliability.name(lot), burns, lines);
      if (burns.isMarked()) {
        add(INDENT, burns.failures().next(), lines);
        reliability.contrast(lot).ifPresent(each -> add(INDENT, each.words(), lines));
      }
    }
  }

  private void shares(String head, Map<String, Burns> burns, List<Line> lines) {
    if (burns.isEmpty()) {
      return;
    }
    lines.add(Line.blank());
    lines.add(Line.strong(head));
    burns.forEach((name, each) -> share((each.isMarked() ? "! " : "  ") + name, each, lines));
  }

  /** A bar with its name, and the words below where they do not fit beside it. */
  private void share(String name, Burns burns, List<Line> lines) {
    row(name, burns.told() == 0 ? " ".repeat(BAR) : bar(burns.failures()), burns.words(), lines);
  }

  private void row(String name, String bar, String words, List<Line> lines) {
    int room = Math.max(12, Math.min(24, width - BAR - 2));
    String head = CheckText.pad(Paragraph.cut(name, room), room) + " " + bar + " ";
    if (head.length() + words.length() <= width) {
      lines.add(Line.plain(head + words));
    } else {
      lines.add(Line.plain(head.stripTrailing()));
      add(INDENT, words, lines);
    }
  }

  /** {@code ·-o------····}: the interval on the way from none to all. */
  static String bar(Failures failures) {
    Interval held = failures.exact();
    StringBuilder bar = new StringBuilder();
    for (int i = 0; i < BAR; i++) {
      boolean within = (i + 1.0) / BAR > held.low() && (double) i / BAR < held.high();
      bar.append(within ? '-' : '.');
    }
    int seen = Math.min(BAR - 1, BAR * failures.failed() / failures.of());
    bar.setCharAt(seen, 'o');
    return bar.toString();
  }

  private void igniters(List<Line> lines) {
    Igniters igniters = Igniters.of(book);
    if (igniters.tries().of() == 0) {
      return;
    }
    lines.add(Line.blank());
    lines.add(Line.strong("Igniters"));
    Failures tries = igniters.tries();
    row(
        (tries.failed() > 0 ? "! " : "  ") + "key pressed in vain",
        bar(tries),
        tries.words("lit nothing"),
        lines);
    igniters.kinds().forEach(kind -> add(INDENT, kind.words(), lines));
  }

  private void delays(List<Line> lines) {
    List<Delays.Suits> suits = delays.suits();
    if (delays.byMotor().isEmpty() && suits.isEmpty()) {
      return;
    }
    lines.add(Line.blank());
    lines.add(Line.strong("Delays"));
    delays.byMotor().forEach(each -> add((each.isBeyond() ? "! " : "  "), each.words(), lines));
    for (Lot lot : book.lots()) {
      delays.words(lot).ifPresent(words -> add("  ", words, lines));
    }
    suits.forEach(each -> add("  ", rocket(each).orElse("a rocket") + ": " + each.words(), lines));
  }

  private Optional<String> rocket(Delays.Suits suits) {
    return book.rocket(suits.rocket()).map(rocket -> rocket.name());
  }

  private void add(String head, String words, List<Line> lines) {
    Paragraph.hanging(head, words, width).forEach(line -> lines.add(Line.plain(line)));
  }
}
