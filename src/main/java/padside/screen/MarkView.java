package padside.screen;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.report.Comparison;
import padside.units.TimeSpan;

/** Draws the clock of a flight, what is to be marked next, and the marks beside the prediction. */
final class MarkView {
  private static final int LEFT = 2;
  private static final int TEXT = 13;

  /** So that the predictions stand below each other. */
  private static final int MEASURED = 18;

  private static final String CAUTION = "Marked by hand: ±0.2 s (common practice, no source).";

  private MarkView() {}

  static void draw(Canvas canvas, MarkScreen screen, World world) {
    Facts facts = screen.marks(world);
    Optional<TimeSpan> down = facts.get(Flight.TOUCHDOWN_MARK);
    String clock = down.or(() -> screen.clock(world)).map(MarkScreen::shown).orElse("0");
    int row = Figures.draw(canvas, 2, clock, Style.STRONG);
    PadView.middle(canvas, row + 1, word(facts, screen.unseen()), Style.STRONG);
    PadView.middle(canvas, row + 2, next(facts, screen.unseen()), Style.PLAIN);
    int at = row + 4;
    for (String line : marks(facts, screen, world)) {
      canvas.put(LEFT, at, line.substring(0, Math.min(TEXT - LEFT, line.length())), Style.LABEL);
      canvas.put(TEXT, at++, line.substring(Math.min(TEXT - LEFT, line.length())), Style.PLAIN);
    }
    foot(canvas, facts, world);
    canvas.put(LEFT, canvas.size().rows() - 2, screen.sending().words(world), Style.LABEL);
  }

  private static String word(Facts facts, boolean unseen) {
    if (facts.get(Flight.TOUCHDOWN_MARK).isPresent()) {
      return "DOWN";
    }
    return falls(facts, unseen) ? "next: TOUCHDOWN" : "next: EJECTION";
  }

  private static String next(Facts facts, boolean unseen) {
    if (facts.get(Flight.TOUCHDOWN_MARK).isPresent()) {
      return "Enter goes on to the debrief.";
    }
    return falls(facts, unseen)
        ? "Space when it touches the ground."
        : "Space when the charge fires. n when that was not seen.";
  }

  /** Whether the ejection is past, marked or not seen. */
  private static boolean falls(Facts facts, boolean unseen) {
    return unseen || facts.get(Flight.EJECTION_MARK).isPresent();
  }

  private static List<String> marks(Facts facts, MarkScreen screen, World world) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Lift-off   "
            + facts
                .get(Flight.LIFTOFF_AT)
                .map(at -> at.atZone(world.zone()).toLocalTime().truncatedTo(ChronoUnit.SECONDS))
                .map(Object::toString)
                .orElse(""));
    String unseen = screen.unseen() ? "not seen" : "";
    lines.add("Ejection   " + told(facts, Flight.EJECTION_MARK, "Charge", world).orElse(unseen));
    lines.add("Touchdown  " + told(facts, Flight.TOUCHDOWN_MARK, "Aloft", world).orElse(""));
    return lines;
  }

  /** A mark with the prediction, or the prediction alone. */
  private static Optional<String> told(
      Facts facts, Column<TimeSpan> mark, String label, World world) {
    return FlightText.compared(facts, world).stream()
        .filter(each -> each.label().equals(label))
        .findFirst()
        .filter(each -> facts.get(mark).isPresent() || each.predicted().isPresent())
        .map(
            each ->
                each.measured()
                        .map(text -> CheckText.pad(text + each.difference(), MEASURED))
                        .orElse("")
                    + each.predicted().map("predicted "::concat).orElse(""));
  }

  /** What the marks come to, and how far to trust them. */
  private static void foot(Canvas canvas, Facts facts, World world) {
    int width = canvas.size().columns() - 2 * LEFT;
    List<String> lines = new ArrayList<>();
    if (!Since.liftOff(facts).isSteady(world.moment())) {
      lines.add("By the time of day: the machine was started anew since lift-off.");
    }
    Comparison.line(FlightText.compared(facts, world), width).ifPresent(lines::add);
    lines.add(CAUTION);
    int row = canvas.size().rows() - 2 - lines.size();
    for (String line : lines) {
      canvas.put(LEFT, row++, line.substring(0, Math.min(width, line.length())), Style.PLAIN);
    }
  }
}
