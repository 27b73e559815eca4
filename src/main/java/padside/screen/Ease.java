package padside.screen;

import java.util.Optional;

/**
 * How screens are shown and worked: the flier's choice, to be changed while they are looked at.
 *
 * @param looks as chosen, also where nothing shows them
 * @param colours whether they can be shown, which no key changes
 */
public record Ease(Looks looks, Hands hands, Guide guide, Colours colours) {
  /** How the screens are coloured. */
  public enum Looks {
    /** Best in bright sun. */
    BLACK_ON_WHITE("black on white", ", for the sun"),
    /** Best at dusk and in the dark. */
    WHITE_ON_BLACK("white on black", ", for dusk"),
    /** The terminal's own two colours with bold, underline and reverse. */
    MONOCHROME("no colours", "");

    private final String words;
    private final String light;

    Looks(String words, String light) {
      this.words = words;
      this.light = light;
    }
  }

  /** Whether there is anything to show colours with. */
  public enum Colours {
    SHOWN(""),
    /** The convention of no-color.org, which every program keeps to. */
    NO_COLOR("NO_COLOR is set and wins over "),
    NONE_HERE("this terminal cannot show ");

    private final String words;

    Colours(String words) {
      this.words = words;
    }
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
    return new Ease(looks, hands, Guide.first(led), Colours.SHOWN);
  }

  /** What is usual, nobody being led. */
  public static Ease usual() {
    return new Ease(Looks.BLACK_ON_WHITE, Hands.WARM, Guide.off(), Colours.SHOWN);
  }

  /** True where fingers are cold. */
  boolean cold() {
    return hands == Hands.COLD;
  }

  /** Rows from one line of a list to the next. */
  int step() {
    return cold() ? 2 : 1;
  }

  /** What is shown of what was chosen. */
  public Looks shown() {
    return colours == Colours.SHOWN ? looks : Looks.MONOCHROME;
  }

  /** Why what was chosen is not what is shown. */
  Optional<String> overruled() {
    return shown() == looks
        ? Optional.empty()
        : Optional.of("No colours: " + colours.words + looks.words);
  }

  /** What is shown and chosen, in one line. */
  String words() {
    String told = overruled().orElse(Paragraph.capital(looks.words) + looks.light);
    return told + "; " + (cold() ? "cold hands." : "warm hands.");
  }

  /** The same choice where only these colours can be shown. */
  public Ease within(Colours other) {
    return new Ease(looks, hands, guide, other);
  }

  /** The looks after these; as they are where no others could be seen. */
  Ease nextLooks() {
    if (colours != Colours.SHOWN) {
      return this;
    }
    Looks next =
        switch (looks) {
          case BLACK_ON_WHITE -> Looks.WHITE_ON_BLACK;
          case WHITE_ON_BLACK -> Looks.MONOCHROME;
          case MONOCHROME -> Looks.BLACK_ON_WHITE;
        };
    return new Ease(next, hands, guide, colours);
  }

  Ease otherHands() {
    return new Ease(looks, cold() ? Hands.WARM : Hands.COLD, guide, colours);
  }

  Ease with(Guide other) {
    return new Ease(looks, hands, other, colours);
  }
}
