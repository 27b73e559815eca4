package padside.screen;

import java.util.Optional;
import padside.fact.Facts;
import padside.form.Form;
import padside.preflight.Answer;
import padside.units.UnitSystem;

/**
 * Draws a card: the form at the left and the check at the right, or the check's shortest form above
 * where both do not fit side by side.
 */
final class CardView {
  private static final int LEAST_FOR_BOTH = 76;
  private static final int WIDE = 110;
  private static final int FORM_WIDTH = 39;
  private static final int WIDE_FORM_WIDTH = 50;

  private CardView() {}

  static void draw(Canvas canvas, CardScreen card, World world) {
    if (canvas.size().columns() >= LEAST_FOR_BOTH) {
      sideBySide(canvas, card, world);
    } else {
      above(canvas, card, world);
    }
  }

  private static void sideBySide(Canvas canvas, CardScreen card, World world) {
    int columns = canvas.size().columns();
    int rows = canvas.size().rows();
    int formWidth = columns >= WIDE ? WIDE_FORM_WIDTH : FORM_WIDTH;
    int divider = formWidth + 1;
    for (int row = 1; row < rows - 2; row++) {
      canvas.put(divider, row, "│", Style.LABEL);
    }
    CheckPane.draw(
        canvas,
        card.check(),
        world,
        new FormPane.Area(divider + 2, 1, columns - divider - 3, rows - 3));
    canvas.put(2, rows - 3, card.state(world), Style.LABEL);
    wire(canvas, card, world, new FormPane.Area(2, 1, formWidth - 2, 1));
    FormPane.draw(canvas, shown(card, world), new FormPane.Area(0, 2, formWidth, rows - 6));
  }

  private static void above(Canvas canvas, CardScreen card, World world) {
    int columns = canvas.size().columns();
    int rows = canvas.size().rows();
    int top = CheckPane.verdict(canvas, card.check(), new FormPane.Area(0, 1, columns, 3));
    Line brief = brief(card.check(), columns - 2, world.settings().units());
    canvas.put(1, top, brief.text(), brief.style());
    String state = card.state(world);
    canvas.put(2, rows - 3, state, Style.LABEL);
    int left = 2 + state.length() + 2;
    wire(canvas, card, world, new FormPane.Area(left, rows - 3, columns - left - 2, 1));
    FormPane.draw(
        canvas, shown(card, world), new FormPane.Area(0, top + 1, columns - 1, rows - top - 4));
  }

  /** The form with the meter's wind of now where the card goes by it. */
  private static Form shown(CardScreen card, World world) {
    Form form = card.form();
    return ByWire.text(world)
        .filter(any -> ByWire.isOn(CardForm.facts(form), world))
        .map(text -> form.showing(CardFields.WIND, text))
        .orElse(form);
  }

  /** How old the meter's wind is that the card goes by, or the meter's beside a typed one. */
  private static void wire(Canvas canvas, CardScreen card, World world, FormPane.Area area) {
    Facts facts = CardForm.facts(card.form());
    Optional<Line> line =
        ByWire.isOn(facts, world)
            ? Optional.of(ByWire.brief(world))
            : ByWire.beside(facts, world).filter(any -> card.asksCheck());
    line.ifPresent(
        each ->
            canvas.put(
                area.left(), area.top(), Paragraph.cut(each.text(), area.width()), each.style()));
  }

  /** What would help is worth more than the flight that had better not be. */
  private static Line brief(LiveCheck check, int width, UnitSystem units) {
    boolean settled = check.current().filter(answer -> !answer.wantsAdvice()).isPresent();
    return check
        .answer()
        .map(answer -> text(check, answer, width, units))
        .map(text -> new Line(text, settled ? Style.PLAIN : Style.LABEL))
        .orElse(Line.blank());
  }

  private static String text(LiveCheck check, Answer answer, int width, UnitSystem units) {
    return answer.wantsAdvice()
        ? HelpText.LOOKING
        : answer
            .advice()
            .flatMap(advice -> HelpText.brief(advice, width, units))
            .or(() -> answer.outlook().map(o -> new OutlookText(check, o, 0, units).brief()))
            .orElse("");
  }
}
