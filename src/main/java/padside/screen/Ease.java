package padside.screen;

/** How screens are shown and worked: the flier's choice, to be changed while they are looked at. */
public record Ease(Looks looks, Hands hands, Guide guide) {
  /** How the screens are coloured. */
  public enum Looks {
    /** Best in bright sun. */
    BLACK_ON_WHITE,
    /** Best at dusk and in the dark. */
    WHITE_ON_BLACK,
    /** The terminal's own two colours with bold, underline and reverse. */
    MONOCHROME
  }

  /** How steady the fingers are. */
  public enum Hands {
    /** As many lines as fit. */
    WARM,
    /** Lines apart, and no key counts twice at once. */
    COLD
  }

  /**
   * As set.
   *
   * @param led whether the guide leads through the first card of a log
   */
  public static Ease of(Looks looks, Hands hands, boolean led) {
    return new Ease(looks, hands, Guide.first(led));
  }

  /** What is usual, nobody being led. */
  public static Ease usual() {
    return new Ease(Looks.BLACK_ON_WHITE, Hands.WARM, Guide.off());
  }

  /** True where fingers are cold. */
  boolean cold() {
    return hands == Hands.COLD;
  }

  /** Rows from one line of a list to the next. */
  int step() {
    return cold() ? 2 : 1;
  }

  /** What was chosen, in one line. */
  String words() {
    String shown =
        switch (looks) {
          case BLACK_ON_WHITE -> "Black on white, for the sun";
          case WHITE_ON_BLACK -> "White on black, for dusk";
          case MONOCHROME -> "No colours";
        };
    return shown + "; " + (cold() ? "cold hands." : "warm hands.");
  }

  Ease nextLooks() {
    Looks next =
        switch (looks) {
          case BLACK_ON_WHITE -> Looks.WHITE_ON_BLACK;
          case WHITE_ON_BLACK -> Looks.MONOCHROME;
          case MONOCHROME -> Looks.BLACK_ON_WHITE;
        };
    return new Ease(next, hands, guide);
  }

  Ease otherHands() {
    return new Ease(looks, cold() ? Hands.WARM : Hands.COLD, guide);
  }

  Ease with(Guide other) {
    return new Ease(looks, hands, other);
  }
}
