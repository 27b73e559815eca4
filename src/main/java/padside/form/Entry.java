package padside.form;

/**
 * What stands in one field of a form right now.
 *
 * @param cursor how many characters stand before the cursor
 * @param fresh nothing has been typed since the field was entered and what is typed first replaces
 *     all; never for free text, which is added to
 * @param touched the text was changed by the flier since the form was opened
 */
public record Entry(String typed, int cursor, boolean fresh, boolean touched) {
  /** An untouched entry with the cursor behind its text. */
  static Entry of(String typed, boolean fresh) {
    return new Entry(typed, typed.length(), fresh, false);
  }

  Entry insert(String text) {
    if (fresh) {
      return new Entry(text, text.length(), false, true);
    }
    String longer = typed.substring(0, cursor) + text + typed.substring(cursor);
    return new Entry(longer, cursor + text.length(), false, true);
  }

  Entry backspace() {
    if (cursor == 0) {
      return stale();
    }
    int before = typed.offsetByCodePoints(cursor, -1);
    return new Entry(typed.substring(0, before) + typed.substring(cursor), before, false, true);
  }

  Entry delete() {
    if (cursor == typed.length()) {
      return stale();
    }
    int after = typed.offsetByCodePoints(cursor, 1);
    return new Entry(typed.substring(0, cursor) + typed.substring(after), cursor, false, true);
  }

  Entry left() {
    return cursorTo(cursor == 0 ? 0 : typed.offsetByCodePoints(cursor, -1));
  }

  Entry right() {
    return cursorTo(cursor == typed.length() ? cursor : typed.offsetByCodePoints(cursor, 1));
  }

  Entry cursorTo(int position) {
    return new Entry(typed, Math.max(0, Math.min(typed.length(), position)), false, touched);
  }

  Entry replaced(String text) {
    return new Entry(text, text.length(), false, touched || !text.equals(typed));
  }

  Entry showing(String text) {
    return new Entry(text, text.length(), fresh, touched);
  }

  Entry entered(boolean anew) {
    return new Entry(typed, typed.length(), anew, touched);
  }

  private Entry stale() {
    return new Entry(typed, cursor, false, touched);
  }
}
