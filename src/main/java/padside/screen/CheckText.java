package padside.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import padside.flight.Rocket;
import padside.flight.Ruling;
import padside.motor.MotorStack;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.units.Notations;
import padside.units.Speed;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/**
 * What the check says, as lines of one width, the most important first: verdict, what speaks
 * against it, the limits on the wind, the flight to expect.
 */
final class CheckText {
  /** Told beside every answer. */
  static final String CAUTION =
      "Advises; you decide, under code, law, site rules and range officer.";

  private static final int RULE_WIDTH = 6;
  private static final int SPEED_WIDTH = 8;
  private static final int LEAST_FOR_WORDS = 50;

  private final LiveCheck check;
  private final int width;
  private final UnitSystem units;
  private final boolean whole;
  private final Optional<String> trend;
  private List<Line> lines = new ArrayList<>();

  private CheckText(
      LiveCheck check, int width, UnitSystem units, boolean whole, Optional<String> trend) {
    this.check = check;
    this.width = width;
    this.units = units;
    this.whole = whole;
    this.trend = trend;
  }

  /** What a pane beside the form shows, by section: sources only where they are unconfirmed. */
  static List<List<Line>> brief(LiveCheck check, int width, World world) {
    Optional<String> trend = TrendText.crossing(check, world);
    return new CheckText(check, width, world.settings().units(), false, trend).sections();
  }

  /** Everything, with the source of every rule. */
  static List<List<Line>> whole(LiveCheck check, int width, World world) {
    Optional<String> trend = TrendText.crossing(check, world);
    return new CheckText(check, width, world.settings().units(), true, trend).sections();
  }

  /** The same where no clock is asked. */
  static List<List<Line>> whole(LiveCheck check, int width, UnitSystem units) {
    return new CheckText(check, width, units, true, Optional.empty()).sections();
  }

  /** The verdict alone on the first line, what it rests on below. */
  static List<Line> verdict(LiveCheck check, int width) {
    if (check.answer().isEmpty()) {
      String word = check.asked().isEmpty() ? "" : " checking…";
      return List.of(new Line(word, Style.UNKNOWN), new Line("", Style.UNKNOWN));
    }
    Answer answer = check.answer().get();
    Ruling.Verdict verdict = answer.ruling().verdict();
    boolean current = check.current().isPresent();
    Style style = current ? style(verdict) : Style.UNKNOWN;
    String word = current ? verdict.word() : "checking… out of date: " + verdict.word();
    List<Line> lines = new ArrayList<>();
    lines.add(new Line(" " + word, style));
    for (String line : Paragraph.lines(behindTheWord(answer), width - 2)) {
      lines.add(new Line(" " + line, style));
    }
    return lines;
  }

  /** What is checked, for titles: {@code Grey Heron on C6-5}. */
  static String of(LiveCheck check) {
    Optional<Card> card = check.asked();
    String rocket = card.flatMap(Card::rocket).map(Rocket::name).orElse("no rocket");
    String motor = card.flatMap(Card::motors).map(MotorStack::designation).orElse("no motor");
    return rocket + " on " + motor;
  }

  static Style style(Ruling.Verdict verdict) {
    return switch (verdict) {
      case GO -> Style.GO;
      case MARGINAL -> Style.MARGINAL;
      case UNKNOWN -> Style.UNKNOWN;
      case NO_GO -> Style.NO_GO;
    };
  }

  private static String behindTheWord(Answer answer) {
    String word = answer.ruling().verdict().word();
    String headline = answer.headline().strip();
    return headline.startsWith(word)
        ? headline.substring(word.length()).replaceFirst("^[\\s·:]+", "")
        : headline;
  }

  private List<List<Line>> sections() {
    List<List<Line>> sections = new ArrayList<>();
    check
        .answer()
        .ifPresent(
            answer -> {
              sections.add(section(() -> against(answer)));
              List<Line> help = section(() -> help(answer));
              List<Line> limits = section(() -> limits(answer.ruling()));
              // In a pane the limits keep their place when help comes; with sources they are long.
              sections.addAll(whole ? List.of(help, limits) : List.of(limits, help));
              answer
                  .outlook()
                  .map(outlook -> new OutlookText(check, outlook, width, units).lines())
                  .ifPresent(sections::add);
              sections.add(section(() -> inOrder(answer.ruling())));
              sections.add(section(() -> reminders(answer.reminders())));
            });
    sections.removeIf(List::isEmpty);
    return sections;
  }

  private List<Line> section(Runnable text) {
    lines = new ArrayList<>();
    text.run();
    return lines;
  }

  private void against(Answer answer) {
    Ruling ruling = answer.ruling();
    boolean told =
        answer.headline().contains(ruling.reason())
            || ruling.findings().stream().anyMatch(f -> f.sentence().contains(ruling.reason()));
    if (!told) {
      put("", ruling.reason(), Style.STRONG);
    }
    ruling.findings().stream()
        .filter(finding -> finding.verdict() != Ruling.Verdict.GO)
        .filter(finding -> whole || !followsFromMissing(finding, ruling))
        .sorted(Comparator.comparing(Ruling.Finding::verdict).reversed())
        .forEach(finding -> against(finding, answer.headline()));
  }

  /** While entries are missing, what cannot be worked out without them need not be listed. */
  private static boolean followsFromMissing(Ruling.Finding finding, Ruling ruling) {
    return finding.verdict() == Ruling.Verdict.UNKNOWN && ruling.reason().startsWith("missing:");
  }

  /** What the headline says already is not said twice. */
  private void against(Ruling.Finding finding, String headline) {
    boolean unconfirmed = isUnconfirmed(finding.source()) && !whole;
    String sentence = finding.sentence() + (unconfirmed ? " (unconfirmed)" : "");
    if (whole || !headline.contains(finding.sentence())) {
      put("! ", finding.verdict().word() + ": " + sentence, Style.OBJECTION);
    } else if (unconfirmed) {
      put("! ", "unconfirmed: " + finding.source(), Style.LABEL);
    }
    if (whole) {
      source(finding.source());
    }
  }

  private void inOrder(Ruling ruling) {
    List<Ruling.Finding> findings =
        ruling.findings().stream()
            .filter(finding -> whole && finding.verdict() == Ruling.Verdict.GO)
            .toList();
    if (!findings.isEmpty()) {
      lines.add(Line.strong("In order"));
    }
    findings.forEach(
        finding -> {
          put("  ", finding.sentence(), Style.PLAIN);
          source(finding.source());
        });
  }

  /** A source stands once below all that comes from it in a row. */
  private void reminders(List<Answer.Reminder> reminders) {
    if (!whole || reminders.isEmpty()) {
      return;
    }
    lines.add(Line.strong("The code asks besides"));
    for (int i = 0; i < reminders.size(); i++) {
      String source = reminders.get(i).source();
      put("- ", reminders.get(i).sentence(), Style.PLAIN);
      boolean more = i + 1 < reminders.size() && reminders.get(i + 1).source().equals(source);
      source(more ? "" : source);
    }
  }

  private void limits(Ruling ruling) {
    if (!ruling.limits().isEmpty()) {
      lines.add(Line.strong("Largest wind by rule"));
    }
    ruling.limits().stream()
        .sorted(Comparator.comparing(limit -> limit.wind().metresPerSecond()))
        .forEach(limit -> limit(limit, ruling));
    trend.ifPresent(text -> put("~ ", text, Style.STRONG));
  }

  private void limit(Ruling.Limit limit, Ruling ruling) {
    UnitNotation<Speed> speed = Notations.windSpeed(units);
    boolean binds = binds(limit, ruling);
    boolean warns = limit.past() == Ruling.Verdict.MARGINAL;
    String head =
        (binds ? "> " : "  ")
            + pad(limit.rule(), RULE_WIDTH)
            + padLeft(speed.showDown(limit.wind()), SPEED_WIDTH)
            + "  ";
    String above = limit.past().word() + " above";
    String words = warns ? above + ": " + limit.words() : limit.words();
    if (whole || width >= LEAST_FOR_WORDS) {
      put(head, words, binds ? Style.STRONG : Style.PLAIN);
    } else {
      boolean fits = head.length() + words.length() <= width;
      lines.add(new Line(head + (fits ? words : above), binds ? Style.STRONG : Style.PLAIN));
    }
    source(limit.source());
  }

  /** The limit the reason names; the least one where the reason is no limit. */
  private static boolean binds(Ruling.Limit limit, Ruling ruling) {
    return ruling.limits().stream().anyMatch(each -> names(ruling, each))
        ? names(ruling, limit)
        : ruling.limit().equals(Optional.of(limit.wind()));
  }

  private static boolean names(Ruling ruling, Ruling.Limit limit) {
    return ruling.reason().contains("(" + limit.words() + ")");
  }

  private void help(Answer answer) {
    if (answer.wantsAdvice()) {
      lines.addAll(HelpText.looking(check.heard(), width, units, whole));
    }
    answer.advice().ifPresent(advice -> lines.addAll(HelpText.lines(advice, width, units, whole)));
  }

  private void source(String source) {
    boolean unconfirmed = isUnconfirmed(source);
    if (!source.isBlank() && (whole || unconfirmed)) {
      put("    ", (unconfirmed ? "unconfirmed: " : "source: ") + source, Style.LABEL);
    }
  }

  /** As sources say it of a value nobody has looked up. */
  private static boolean isUnconfirmed(String source) {
    return source.contains("from memory") || source.contains("unconfirmed");
  }

  private void put(String head, String text, Style style) {
    Paragraph.hanging(head, text, width).forEach(line -> lines.add(new Line(line, style)));
  }

  static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  static String padLeft(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }
}
