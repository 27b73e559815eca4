package padside.terminal;

/** How the screens are coloured: the flier's choice. */
public enum Looks {
  /** Best in bright sun. */
  BLACK_ON_WHITE,
  /** Best in the dark. */
  WHITE_ON_BLACK,
  /** The terminal's own two colours with bold, underline and reverse. */
  MONOCHROME
}
