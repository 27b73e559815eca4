package padside.screen;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import padside.fact.RecordId;

/**
 * Where the cursor is in a list and what has been typed to find a line.
 *
 * @param at the record under the cursor; the first line when it is absent or gone
 * @param find lines shown are those that hold every word of it
 * @param finding keys are being typed into {@code find}
 * @param asking the log is asked for what is typed, and the lines there are are its answer
 */
record ListCursor(Optional<RecordId> at, String find, boolean finding, boolean asking) {
  /** Keys know nothing of the height of the terminal; ten lines are half the smallest page. */
  private static final int PAGE = 10;

  static final Binding FIND =
      Binding.of(
          "/<f3>", "find", "type words, only lines that hold them stay; Esc shows all again");
  static final Binding MOVE =
      Binding.of(
          "<down><up><pagedown><pageup><home><end>",
          "",
          "to the next line; Up before, Page by ten, Home, End");

  static ListCursor start() {
    return new ListCursor(Optional.empty(), "", false, false);
  }

  /** The same, what is typed being asked of the log. */
  ListCursor asking(boolean asks) {
    return new ListCursor(at, find, finding, asks);
  }

  /** The lines that hold every word typed, in any letter case. */
  List<ListPane.Item> shown(List<ListPane.Item> items) {
    if (asking || find.isBlank()) {
      return items;
    }
    List<String> words = List.of(find.toLowerCase(Locale.ROOT).strip().split("\\s+"));
    return items.stream()
        .filter(
            item -> {
              String text = String.join(" ", item.cells()).toLowerCase(Locale.ROOT);
              return words.stream().allMatch(text::contains);
            })
        .toList();
  }

  /** The line the cursor is in, 0 in an empty list. */
  int index(List<ListPane.Item> shown) {
    return at.flatMap(
            id ->
                IntStream.range(0, shown.size())
                    .filter(i -> shown.get(i).id().equals(id))
                    .boxed()
                    .findFirst())
        .orElse(0);
  }

  /** The record of the line the cursor is in. */
  Optional<RecordId> current(List<ListPane.Item> items) {
    List<ListPane.Item> shown = shown(items);
    return shown.isEmpty() ? Optional.empty() : Optional.of(shown.get(index(shown)).id());
  }

  /** The cursor after a key of its own; empty when the key means nothing to it. */
  Optional<ListCursor> press(Key key, List<ListPane.Item> items) {
    if (finding && key.character().isPresent()) {
      return Optional.of(new ListCursor(Optional.empty(), find + key.name(), true, asking));
    }
    return switch (key.name()) {
      case "<down>" -> Optional.of(moved(1, items));
      case "<up>" -> Optional.of(moved(-1, items));
      case "<pagedown>" -> Optional.of(moved(PAGE, items));
      case "<pageup>" -> Optional.of(moved(-PAGE, items));
      case "<home>" -> Optional.of(moved(-items.size(), items));
      case "<end>" -> Optional.of(moved(items.size(), items));
      default -> finding ? edited(key) : Optional.empty();
    };
  }

  private Optional<ListCursor> edited(Key key) {
    if (key.equals(Key.BACKSPACE) && !find.isEmpty()) {
      return Optional.of(new ListCursor(at, find.substring(0, find.length() - 1), true, asking));
    }
    return Optional.empty();
  }

  ListCursor on(RecordId id) {
    return new ListCursor(Optional.of(id), find, finding, asking);
  }

  /** Begins to take typed words, keeping those typed before. */
  ListCursor toFind() {
    return new ListCursor(at, find, true, asking);
  }

  /** Stops taking words; the lines stay as found. */
  ListCursor found() {
    return new ListCursor(at, find, false, asking);
  }

  /** All lines again, the cursor on the record it was on. */
  ListCursor whole(List<ListPane.Item> items) {
    return new ListCursor(current(items), "", false, asking);
  }

  /** The cursor on the line that takes the place of the current one when that goes. */
  ListCursor besides(List<ListPane.Item> items) {
    List<ListPane.Item> shown = shown(items);
    int index = index(shown);
    boolean last = index + 1 >= shown.size();
    int next = last ? index - 1 : index + 1;
    return next < 0 || next >= shown.size() ? this : on(shown.get(next).id());
  }

  private ListCursor moved(int lines, List<ListPane.Item> items) {
    List<ListPane.Item> shown = shown(items);
    if (shown.isEmpty()) {
      return this;
    }
    int index = Math.max(0, Math.min(shown.size() - 1, index(shown) + lines));
    return on(shown.get(index).id());
  }
}
