package padside.screen;

/** One line of a text to be drawn, in one style. */
record Line(String text, Style style) {
  static Line plain(String text) {
    return new Line(text, Style.PLAIN);
  }

  static Line strong(String text) {
    return new Line(text, Style.STRONG);
  }

  static Line blank() {
    return plain("");
  }
}
