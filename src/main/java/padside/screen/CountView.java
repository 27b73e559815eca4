package padside.screen;

import java.util.Locale;
import java.util.Optional;
import padside.flight.Flight;
import padside.flight.Ruling;
import padside.units.TimeSpan;

/** Draws the count between the verdict as it is now and the wind it is of. */
final class CountView {
  private static final int LEFT = 2;

  /** Where the figure stands, whatever the verdict takes above it. */
  private static final int TOP = 5;

  private static final int ROOMY = 24;

  private CountView() {}

  static void draw(Canvas canvas, CountScreen count, TimeSpan left, World world) {
    Size size = canvas.size();
    Optional<Flight> card = world.log().flight(count.flight());
    LiveCheck check = count.live().check();
    card.ifPresent(each -> stand(canvas, each, check));
    int gap = size.rows() < ROOMY ? 0 : 1;
    String figure = String.format(Locale.ROOT, "%.0f", Math.ceil(left.seconds()));
    int row = Figures.draw(canvas, TOP + gap, figure, Style.STRONG) + gap;
    Optional<Ruling.Verdict> turned = card.flatMap(count.live()::turned);
    PadView.middle(
        canvas,
        row,
        turned.map(verdict -> turned(count.phase(), verdict)).orElse(word(count.phase())),
        turned.map(CheckText::style).orElse(Style.STRONG));
    PadView.middle(canvas, row + 1, next(count.phase()), Style.PLAIN);
    int below = row + 2 + gap;
    LargeCheck.numbers(
        canvas,
        check,
        world,
        new FormPane.Area(LEFT, below, size.columns() - 2 * LEFT, size.rows() - 2 - below));
    String kept = count.sending().words(world);
    canvas.put(LEFT, size.rows() - 2, kept, Style.LABEL);
    card.flatMap(each -> ByWire.atCount(each.facts(), world))
        .ifPresent(line -> meter(canvas, line, size.columns() - 3 * LEFT - kept.length()));
  }

  /** The verdict of now, that of the card until there is one; why it is flown against it. */
  private static void stand(Canvas canvas, Flight card, LiveCheck check) {
    boolean answered = check.answer().isPresent();
    int row = 1;
    if (answered) {
      row =
          CheckPane.verdict(
              canvas, check, new FormPane.Area(0, row, canvas.size().columns(), TOP - row));
    } else {
      String reason = card.facts().get(Flight.REASON).map(" · "::concat).orElse("");
      row = Paragraph.draw(canvas, row, FlightText.verdict(card) + reason, Style.STRONG);
    }
    int width = canvas.size().columns() - 2 * LEFT;
    Optional<String> why =
        card.facts()
            .get(Flight.AGAINST)
            .map(text -> Paragraph.cut("Against NO-GO: " + text, width));
    if (why.isPresent() && row < TOP) {
      canvas.put(LEFT, row, why.get(), Style.OBJECTION);
    }
  }

  /** In the last row, ending at its right. */
  private static void meter(Canvas canvas, Line line, int room) {
    String text = Paragraph.cut(line.text(), room);
    Size size = canvas.size();
    canvas.put(size.columns() - LEFT - text.length(), size.rows() - 2, text, line.style());
  }

  private static String word(CountScreen.Phase phase) {
    return switch (phase) {
      case READY -> "ARMED";
      case HELD -> "HOLD";
      case COUNTING -> "COUNT";
      case LAUNCH -> "LAUNCH";
    };
  }

  private static String turned(CountScreen.Phase phase, Ruling.Verdict verdict) {
    String holds =
        switch (phase) {
          case READY, HELD -> "";
          case COUNTING -> ": any key holds";
          case LAUNCH -> ": h holds";
        };
    return word(phase) + " · turned to " + verdict.word() + holds + "; you decide";
  }

  private static String next(CountScreen.Phase phase) {
    return switch (phase) {
      case READY -> "Space begins the count; count aloud.";
      case HELD -> "Key out. Space counts anew; g if it left all the same.";
      case COUNTING -> "Any key holds.";
      case LAUNCH -> "Space the moment it leaves the rod. m when it does not light.";
    };
  }
}
