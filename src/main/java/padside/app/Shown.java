package padside.app;

/** Text from the log or from files as a terminal may be shown it on standard output. */
final class Shown {
  private Shown() {}

  /** Control characters and what turns the reading direction become {@code ·}. */
  static String of(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              int type = Character.getType(point);
              boolean drives =
                  type == Character.CONTROL
                      || type == Character.FORMAT
                      || type == Character.LINE_SEPARATOR
                      || type == Character.PARAGRAPH_SEPARATOR
                      || type == Character.SURROGATE;
              shown.appendCodePoint(drives ? '·' : point);
            });
    return shown.toString();
  }
}
