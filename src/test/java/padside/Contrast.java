package padside;

/**
 * The contrast of two colours after the Web Content Accessibility Guidelines 2.1 of the W3C
 * (definitions of relative luminance and contrast ratio; from memory), and what its success
 * criteria 1.4.6 and 1.4.11 ask for.
 */
public record Contrast(int red, int green, int blue) {
  /** Success criterion 1.4.6: enhanced contrast of text. */
  public static final double ENHANCED = 7;

  /** Success criterion 1.4.11: what a drawing needs to be understood. */
  public static final double OF_DRAWINGS = 3;

  /** The colour of six hexadecimal digits. */
  public static Contrast of(String hex) {
    int rgb = Integer.parseInt(hex, 16);
    return new Contrast(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff);
  }

  /** From 1, the same, to 21, black and white. */
  public double with(Contrast other) {
    double lighter = Math.max(luminance(), other.luminance());
    double darker = Math.min(luminance(), other.luminance());
    return (lighter + 0.05) / (darker + 0.05);
  }

  private double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
