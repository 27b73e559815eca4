package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.Outlook;
import padside.preflight.Spread;
import padside.site.FieldShape;
import padside.units.Notations;
import padside.units.UnitSystem;

/** What stands beside a landing chart, as lines of one width, below the verdict. */
final class ChartNotes {
  private final LiveCheck check;
  private final int width;
  private final UnitSystem units;
  private final List<Line> lines = new ArrayList<>();

  private ChartNotes(LiveCheck check, int width, UnitSystem units) {
    this.check = check;
    this.width = width;
    this.units = units;
  }

  /** The most important first. */
  static List<Line> of(LiveCheck check, int width, UnitSystem units) {
    ChartNotes notes = new ChartNotes(check, width, units);
    check.answer().flatMap(Answer::outlook).ifPresent(notes::write);
    return notes.lines;
  }

  private void write(Outlook outlook) {
    if (check.asked().flatMap(Card::field).flatMap(FieldShape::of).isEmpty()) {
      put("", "no edge of the field is paced", Style.OBJECTION);
    }
    outlook.spread().ifPresent(this::share);
    put("", "drawn for " + wind(), Style.PLAIN);
    OutlookText words = new OutlookText(check, outlook, width, units);
    String mark = outlook.bearingKnown() ? LandingChart.NOMINAL + " " : "";
    put(mark, "expected " + words.landing(), Style.PLAIN);
    outlook.sun().ifPresent(sun -> put(LandingChart.SUN + " ", SunText.of(sun), Style.PLAIN));
  }

  private void share(Spread spread) {
    spread
        .inside()
        .ifPresent(inside -> put("", OutlookText.share(inside) + " land inside", Style.STRONG));
    spread.past().forEach(past -> put("  ", OutlookText.past(past), Style.PLAIN));
  }

  private String wind() {
    return check.asked().flatMap(Card::wind).map(Notations.wind(units)::show).orElse("calm");
  }

  private void put(String head, String text, Style style) {
    Paragraph.hanging(head, text, width).forEach(line -> lines.add(new Line(line, style)));
  }

  /** What the dots of a chart mean. */
  static List<Line> legend(LiveCheck check, boolean braille) {
    Optional<Outlook> outlook = check.answer().flatMap(Answer::outlook);
    boolean ring = outlook.filter(flight -> !flight.bearingKnown()).isPresent();
    boolean spread = !ring && outlook.flatMap(Outlook::spread).isPresent();
    List<Line> lines = new ArrayList<>();
    if (spread) {
      lines.add(Line.plain(DotGrid.Ink.AREA.sample(braille) + " half land here"));
    }
    if (spread || ring) {
      String within =
          ring
              ? " lands somewhere on it"
              : " " + outlook.orElseThrow().confidence().words() + " land here";
      lines.add(Line.plain(DotGrid.Ink.FAINT.sample(braille) + within));
    }
    lines.add(Line.plain(LandingChart.PAD + "  pad"));
    return lines;
  }
}
