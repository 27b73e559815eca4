package padside.screen;

import java.util.List;
import java.util.Optional;

/**
 * One thing a screen's keys do. A screen's bindings are one table: it decides what a key does, and
 * footer, help page and the README's key list are made from it.
 *
 * @param keys any of them does it; the first is the one shown
 * @param label one or two words for the footer
 * @param meaning one line for the help page
 */
record Binding(List<Key> keys, String label, String meaning) {
  Binding {
    keys = List.copyOf(keys);
  }

  /** A binding of the keys in a script, such as {@code "n"} or {@code "<enter><tab>"}. */
  static Binding of(String keys, String label, String meaning) {
    return new Binding(Key.script(keys), label, meaning);
  }

  boolean has(Key key) {
    return keys.contains(key);
  }

  /** The first of a table that a key belongs to. */
  static Optional<Binding> find(List<Binding> table, Key key) {
    return table.stream().filter(binding -> binding.has(key)).findFirst();
  }

  /** The shown key without brackets: {@code Enter}, {@code F2}, {@code n}. */
  String shownKey() {
    String name = keys.get(0).name();
    if (name.length() == 1) {
      return name.equals(" ") ? "Space" : name;
    }
    String bare = name.substring(1, name.length() - 1);
    if (bare.startsWith("c-")) {
      return "Ctrl-" + bare.substring(2).toUpperCase(java.util.Locale.ROOT);
    }
    return bare.equals("s-tab") ? "Shift-Tab" : Paragraph.capital(bare);
  }
}
