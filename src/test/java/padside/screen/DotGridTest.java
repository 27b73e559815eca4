package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DotGridTest {
  private static final FormPane.Area AREA = new FormPane.Area(0, 0, 10, 4);

  private static String drawn(DotGrid grid) {
    Canvas canvas = new Canvas(new Size(AREA.width(), AREA.height()));
    grid.put(canvas);
    return canvas.frame().text().stripTrailing();
  }

  /**
   * The dots of a braille cell are numbered 1 to 3 down the left, 4 to 6 down the right, 7 and 8
   * below (The Unicode Standard, Braille Patterns); the JDK's names of the characters tell them.
   */
  @Test
  void each_dot_of_a_cell_is_the_braille_dot_of_its_place() {
    String[][] numbers = {{"1", "4"}, {"2", "5"}, {"3", "6"}, {"7", "8"}};
    for (int y = 0; y < 4; y++) {
      for (int x = 0; x < 2; x++) {
        DotGrid grid = new DotGrid(AREA, true);
        grid.dot(new DotGrid.Dot(x, y), DotGrid.Ink.LINE);
        assertThat(Character.getName(drawn(grid).charAt(0)))
            .isEqualTo("BRAILLE PATTERN DOTS-" + numbers[y][x]);
      }
    }
  }

  /** The octant worked through by Bresenham: 0,0 to 5,2 rises after the second and fourth step. */
  @Test
  void a_line_takes_the_dots_nearest_to_it() {
    DotGrid grid = new DotGrid(AREA, false);
    grid.lines(List.of(new DotGrid.Dot(0, 0), new DotGrid.Dot(5, 2)), DotGrid.Ink.LINE);

    assertThat(drawn(grid)).isEqualTo("''..\n    ''");
  }

  @Test
  void what_falls_outside_is_cut() {
    DotGrid grid = new DotGrid(AREA, true);
    grid.lines(List.of(new DotGrid.Dot(-9, -9), new DotGrid.Dot(-1, 40)), DotGrid.Ink.BORDER);

    assertThat(drawn(grid)).isBlank();
  }

  @Test
  void the_inks_can_be_told_apart_without_colour() {
    for (boolean braille : new boolean[] {true, false}) {
      assertThat(DotGrid.Ink.AREA.sample(braille)).isNotEqualTo(DotGrid.Ink.FAINT.sample(braille));
      assertThat(DotGrid.Ink.BORDER.sample(braille))
          .isNotEqualTo(DotGrid.Ink.FAINT.sample(braille));
    }
  }

  @Test
  void without_braille_only_ascii_is_drawn() {
    DotGrid grid = new DotGrid(AREA, false);
    int row = 0;
    for (DotGrid.Ink ink : DotGrid.Ink.values()) {
      grid.lines(List.of(new DotGrid.Dot(0, row), new DotGrid.Dot(9, 7 - row++)), ink);
    }

    assertThat(drawn(grid)).matches("[\\x20-\\x7e\\n]+");
  }
}
