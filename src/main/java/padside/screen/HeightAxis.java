package padside.screen;

import padside.page.RoundStep;
import padside.units.Length;
import padside.units.UnitNotation;

/**
 * The axis at the left of a chart, with round heights, and the line at its foot.
 *
 * @param topM height of the uppermost dot in metres
 */
record HeightAxis(Canvas canvas, DotGrid grid, UnitNotation<Length> height, double topM) {
  private static final int ROWS_A_TICK = 3;

  /** The column it stands in. */
  int column() {
    return grid.area().left() - 1;
  }

  /** The row of the line at the foot. */
  int foot() {
    return grid.area().top() + grid.area().height();
  }

  /** One of the heights' unit, in metres. */
  double unitM() {
    return height.read("1").value().orElseThrow().metres();
  }

  void draw() {
    for (int row = grid.area().top(); row < foot(); row++) {
      canvas.put(column(), row, "│", Style.LABEL);
    }
    canvas.put(column(), foot(), "└" + "─".repeat(grid.area().width()), Style.LABEL);
    double unitM = unitM();
    double step = RoundStep.atLeast(topM / unitM * ROWS_A_TICK / grid.area().height());
    for (double at = step; at * unitM < topM; at += step) {
      String number = height.showBare(new Length(at * unitM));
      int row = grid.area().top() + dotDown(at * unitM) / grid.cellDown();
      canvas.put(column(), row, "┤", Style.LABEL);
      canvas.put(column() - number.length(), row, number, Style.LABEL);
    }
  }

  /** How many dots below the uppermost a height in metres lies. */
  int dotDown(double metres) {
    return (int) Math.round((1 - metres / topM) * (grid.down() - 1));
  }
}
