package padside.screen;

/** One line of a text to be drawn, in one style. */
record Line(String text, Style style) {
  static Line plain(String text) {
    return new Line(text, Style.PLAIN);
  }

  static Line strong(String text) {
    return new Line(text, Style.STRONG);
  }

  /** That a text goes on, with the key that shows how. */
  static Line more(String key) {
    return new Line("… more: " + key, Style.LABEL);
  }

  static Line blank() {
    return plain("");
  }
}
