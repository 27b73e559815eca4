package padside.app;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.screen.Setting;

/**
 * The text of a settings file: one {@code name = value} a line, {@code #} begins a comment. A
 * change leaves every other line as the flier wrote it.
 */
record SettingsText(String text) {
  private static final String MARK = "\uFEFF";

  /** A line that sets something, or one of the program's own that would without its {@code #}. */
  private static final Pattern LINE = Pattern.compile("\\s*(#?)\\s*([\\w.-]+)\\s*[=:].*");

  /** A text of a file, whose mark of its encoding is passed over. */
  SettingsText {
    text = text.startsWith(MARK) ? text.substring(MARK.length()) : text;
  }

  /** All settings with what they mean, none of them set. */
  static SettingsText fresh() {
    StringBuilder text =
        new StringBuilder("# Settings of Padside. Take the # away from a line to set it.\n");
    for (Setting setting : Setting.ALL) {
      text.append('\n').append(said(setting));
    }
    return new SettingsText(text.toString());
  }

  private static String said(Setting setting) {
    return "# " + setting.explained() + "\n#" + setting.line(unset(setting)) + "\n";
  }

  /** What is set, by name, the names nobody knows among them; refused where it is no such text. */
  Map<String, String> values() {
    Properties lines = new Properties();
    try {
      lines.load(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail", e);
    }
    Map<String, String> values = new TreeMap<>();
    for (String name : lines.stringPropertyNames()) {
      String value = lines.getProperty(name).strip();
      if (!value.isEmpty()) {
        values.put(name, value);
      }
    }
    return values;
  }

  /** The same with one setting set, or with none where nothing is given. */
  SettingsText with(Setting setting, Optional<String> value) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int set = last(lines, setting, "");
    int proposed = last(lines, setting, "#");
    String line = value.map(setting::line).orElse("#" + setting.line(unset(setting)));
    if (set >= 0) {
      boolean more = goesOn(lines.get(set));
      lines.set(set, line);
      while (more && set + 1 < lines.size()) {
        more = goesOn(lines.remove(set + 1));
      }
      boolean earlier = last(lines.subList(0, set), setting, "") >= 0;
      return value.isEmpty() && earlier ? of(lines).with(setting, value) : of(lines);
    }
    if (value.isEmpty()) {
      return this;
    }
    if (proposed >= 0) {
      lines.set(proposed, line);
    } else {
      lines.addAll(List.of("", "# " + setting.explained(), line));
    }
    return of(lines);
  }

  private static String unset(Setting setting) {
    return setting.usual().isEmpty() ? setting.example() : setting.usual();
  }

  private static boolean goesOn(String line) {
    int slashes = line.length() - line.replaceAll("\\\\+$", "").length();
    return slashes % 2 == 1;
  }

  private static int last(List<String> lines, Setting setting, String mark) {
    for (int i = lines.size() - 1; i >= 0; i--) {
      Matcher line = LINE.matcher(lines.get(i));
      if (line.matches() && line.group(1).equals(mark) && line.group(2).equals(setting.name())) {
        return i;
      }
    }
    return -1;
  }

  private static SettingsText of(List<String> lines) {
    return new SettingsText(String.join("\n", lines) + "\n");
  }
}
