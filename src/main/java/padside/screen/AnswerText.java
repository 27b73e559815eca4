package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.preflight.Advice;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.Outlook;
import padside.units.UnitSystem;

/** The check's answer and the flight to expect as plain lines, in the words of the screens. */
public final class AnswerText {
  private static final Advice NOT_LOOKED_FOR = new Advice(List.of(), Optional.empty());

  private AnswerText() {}

  /** The headline on the first line, then everything, with the source of every rule. */
  public static List<String> whole(Card card, Answer answer, int width, UnitSystem units) {
    Answer told = answer.with(answer.advice().orElse(NOT_LOOKED_FOR));
    LiveCheck check = LiveCheck.answered(card, told);
    List<Line> lines = new ArrayList<>(List.of(Line.plain(answer.headline())));
    for (List<Line> section : CheckText.whole(check, width, units)) {
      lines.add(Line.blank());
      lines.addAll(section);
    }
    return texts(lines);
  }

  /** The flight alone. */
  public static List<String> flight(Card card, Outlook outlook, int width, UnitSystem units) {
    LiveCheck asked = LiveCheck.of(0).ask(card).check();
    return texts(new OutlookText(asked, outlook, width, units).lines());
  }

  private static List<String> texts(List<Line> lines) {
    List<String> texts = new ArrayList<>();
    lines.forEach(line -> texts.add(line.text()));
    texts.add("");
    texts.add(CheckText.CAUTION);
    return texts;
  }
}
