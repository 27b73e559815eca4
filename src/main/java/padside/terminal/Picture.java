package padside.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import javax.swing.Icon;
import padside.screen.Frame;
import padside.screen.Style;

/**
 * One frame as a window shows it, in the looks of a terminal. Braille dots are drawn here: hardly a
 * font has them as wide as its letters.
 */
record Picture(Frame frame, Letters letters, Palette palette) implements Icon {
  private static final char FIRST_BRAILLE = '\u2800';
  private static final char LAST_BRAILLE = '\u28ff';

  /** Left to right and down, by the numbers of the dots: 1 4, 2 5, 3 6, 7 8. */
  private static final int[] DOT_BITS = {0x01, 0x08, 0x02, 0x10, 0x04, 0x20, 0x40, 0x80};

  /** The two colours and the weight of a cell. */
  private record Pen(Color ink, Color paper, boolean bold, boolean underlined) {
    static Pen of(Look look) {
      Color ink = colour(look.ink(), Color.BLACK);
      Color paper = colour(look.paper(), Color.WHITE);
      boolean turned = look.marks().contains(SGR.REVERSE);
      return new Pen(
          turned ? paper : ink,
          turned ? ink : paper,
          look.marks().contains(SGR.BOLD),
          look.marks().contains(SGR.UNDERLINE));
    }

    Pen turned() {
      return new Pen(/* ink= */ paper, /* paper= */ ink, bold, underlined);
    }

    private static Color colour(TextColor colour, Color usual) {
      return colour == TextColor.ANSI.DEFAULT
          ? usual
          : new Color(colour.getRed(), colour.getGreen(), colour.getBlue());
    }
  }

  /** What shows where the frame leaves the window open. */
  Color paper() {
    return Pen.of(palette.look(Style.PLAIN)).paper();
  }

  @Override
  public int getIconWidth() {
    return frame.size().columns() * letters.width();
  }

  @Override
  public int getIconHeight() {
    return frame.size().rows() * letters.height();
  }

  @Override
  public void paintIcon(Component on, Graphics graphics, int x, int y) {
    Graphics2D brush = (Graphics2D) graphics.create();
    brush.translate(x, y);
    brush.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    for (int row = 0; row < frame.rows().size(); row++) {
      row(brush, row);
    }
    brush.dispose();
  }

  private void row(Graphics2D brush, int row) {
    int column = 0;
    for (Frame.Span span : frame.rows().get(row).spans()) {
      Pen pen = Pen.of(palette.look(span.style()));
      for (int i = 0; i < span.text().length(); i++) {
        Frame.Spot spot = new Frame.Spot(column++, row);
        boolean cursor = frame.cursor().filter(spot::equals).isPresent();
        cell(brush, spot, span.text().charAt(i), cursor ? pen.turned() : pen);
      }
    }
  }

  private void cell(Graphics2D brush, Frame.Spot spot, char character, Pen pen) {
    int left = spot.column() * letters.width();
    int top = spot.row() * letters.height();
    brush.setColor(pen.paper());
    brush.fillRect(left, top, letters.width(), letters.height());
    brush.setColor(pen.ink());
    if (pen.underlined()) {
      brush.fillRect(left, top + letters.height() - 2, letters.width(), 1);
    }
    if (character >= FIRST_BRAILLE && character <= LAST_BRAILLE) {
      dots(brush, left, top, character - FIRST_BRAILLE);
    } else if (character != ' ') {
      letter(brush, left, top + letters.ascent(), new Glyph(character, pen.bold()));
    }
  }

  private record Glyph(char character, boolean bold) {}

  /** A letter of another font that is wider than the cell is made as narrow. */
  private void letter(Graphics2D brush, int left, int foot, Glyph glyph) {
    Font font = glyph.bold() ? letters.bold() : letters.plain();
    brush.setFont(font);
    int width = brush.getFontMetrics().charWidth(glyph.character());
    if (width > letters.width()) {
      double share = (double) letters.width() / width;
      brush.setFont(font.deriveFont(AffineTransform.getScaleInstance(share, 1)));
    }
    brush.drawString(String.valueOf(glyph.character()), left, foot);
  }

  private void dots(Graphics2D brush, int left, int top, int pattern) {
    double across = letters.width() / 2.0;
    double down = letters.height() / 4.0;
    int wide = Math.max(2, (int) Math.round(Math.min(across, down) * 0.7));
    for (int dot = 0; dot < DOT_BITS.length; dot++) {
      if ((pattern & DOT_BITS[dot]) != 0) {
        double x = left + across * (dot % 2 + 0.5) - wide / 2.0;
        double y = top + down * (Math.floorDiv(dot, 2) + 0.5) - wide / 2.0;
        brush.fillOval((int) Math.round(x), (int) Math.round(y), wide, wide);
      }
    }
  }
}
