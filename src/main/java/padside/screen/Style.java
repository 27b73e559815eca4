package padside.screen;

/**
 * What a piece of text is, not how it looks; the terminal room decides the looks for black on
 * white, white on black and monochrome. Nothing is told by style alone: a word or a shape says it
 * too.
 */
public enum Style {
  /** Ordinary text. */
  PLAIN,
  /** What matters most on the screen. */
  STRONG,
  /** The title bar and the footer. */
  BAR,
  /** The label of a field. */
  LABEL,
  /** A field that can be typed into. */
  FIELD,
  /** The field or list line where the cursor is. */
  FOCUS,
  /** An objection beside a field, a warning. */
  OBJECTION,
  /** The verdict GO. */
  GO,
  /** The verdict MARGINAL. */
  MARGINAL,
  /** The verdict NO-GO. */
  NO_GO,
  /** The verdict UNKNOWN. */
  UNKNOWN
}
