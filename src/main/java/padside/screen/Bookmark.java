package padside.screen;

import java.util.Optional;
import padside.fact.RecordId;
import padside.form.Form;

/**
 * A screen and the spot on it, as plain data that outlives the program.
 *
 * @param screen which one, by the names of {@link Bookmarks}
 * @param of the record it is about
 * @param at the field or line under the cursor
 * @param typing whether the field there has been typed into since it was entered
 * @param text typed where no record keeps it; mostly empty
 */
public record Bookmark(
    String screen, Optional<RecordId> of, Optional<String> at, boolean typing, String text) {
  static Bookmark of(String screen) {
    return new Bookmark(screen, Optional.empty(), Optional.empty(), false, "");
  }

  static Bookmark of(String screen, RecordId record) {
    return new Bookmark(screen, Optional.of(record), Optional.empty(), false, "");
  }

  Bookmark about(Optional<RecordId> record) {
    return new Bookmark(screen, record, at, typing, text);
  }

  Bookmark at(String spot) {
    return new Bookmark(screen, of, Optional.of(spot), typing, text);
  }

  Bookmark at(Optional<RecordId> line) {
    return new Bookmark(screen, of, line.map(RecordId::text), typing, text);
  }

  Bookmark withText(String typed) {
    return new Bookmark(screen, of, at, typing, typed);
  }

  Bookmark in(Form form) {
    return new Bookmark(screen, of, Optional.of(form.field().name()), !form.entry().fresh(), text);
  }

  /** Where there is no record yet, nothing was kept that could be gone on with. */
  Bookmark nothingTyped() {
    return new Bookmark(screen, of, at, false, text);
  }

  /** The same screen about the same record. */
  boolean isOf(Bookmark other) {
    return screen.equals(other.screen) && of.equals(other.of);
  }

  /** A form with the cursor where it was. */
  Form resumed(Form form) {
    return at.map(field -> form.resumed(field, typing)).orElse(form);
  }

  ListCursor on(ListCursor cursor) {
    return at.map(line -> cursor.on(new RecordId(line))).orElse(cursor);
  }
}
