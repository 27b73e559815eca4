package padside.page;

/** One line of a page in letters. */
public record TextLine(String text, boolean strong) {
  public static TextLine plain(String text) {
    return new TextLine(text, false);
  }

  public static TextLine strong(String text) {
    return new TextLine(text, true);
  }
}
