package padside.screen;

/** How large the terminal is, in character cells. */
public record Size(int columns, int rows) {
  /** The smallest size the screens are made for. */
  public static final Size SMALLEST = new Size(60, 20);

  /** True when {@code least} fits into this. */
  public boolean holds(Size least) {
    return columns >= least.columns && rows >= least.rows;
  }
}
