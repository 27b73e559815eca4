package padside.app;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of the command line, in the language of man(7). */
final class ManualPage {
  private static final List<List<String>> FILES =
      List.of(
          List.of("~/.local/share/padside/log", "the log, unless --log names another folder"),
          List.of("~/.local/share/padside/backups", "backups made when the screens are left"),
          List.of("~/.local/share/padside/demo", "the made-up season"),
          List.of("~/.config/padside/settings.properties", "settings, one a line"),
          List.of(
              "~/.cache/padside",
              "classes kept for a faster start of an installed Padside; may be deleted"));
  private static final List<List<String>> ENVIRONMENT =
      List.of(
          List.of(
              "XDG_DATA_HOME, XDG_CONFIG_HOME, XDG_CACHE_HOME",
              "stand for ~/.local/share, ~/.config and ~/.cache"),
          List.of("PADSIDE_JAVA", "the java program to use, 17 or newer"),
          List.of("NO_COLOR", "where it is set, screens are monochrome"));

  private final StringBuilder page = new StringBuilder();

  private ManualPage() {}

  static String of(CommandSpec root) {
    return new ManualPage().written(root);
  }

  private String written(CommandSpec root) {
    String name = root.name();
    line(
        ".TH "
            + name.toUpperCase(java.util.Locale.ROOT)
            + " 1 \"\" \"Padside "
            + Version.text()
            + "\"");
    section("NAME");
    text(name + " - " + Told.description(root).replaceFirst("^A ", "").replaceFirst("\\.$", ""));
    section("SYNOPSIS");
    line(".B " + name);
    text("[OPTION ...] [COMMAND [OPTION ...] [ARGUMENT ...]]");
    section("DESCRIPTION");
    text(Told.footer(root).get(0));
    section("OPTIONS");
    text("Every command takes these too.");
    Told.common(root).forEach(this::option);
    section("COMMANDS");
    Told.commands(root).forEach(this::command);
    section("EXIT STATUS");
    Told.footer(root).stream().skip(1).forEach(this::text);
    pairs("FILES", FILES);
    pairs("ENVIRONMENT", ENVIRONMENT);
    return page.toString();
  }

  private void command(CommandSpec command) {
    line(".SS " + escaped(new Help(command, Help.Ansi.OFF).abbreviatedSynopsis().strip()));
    text(Told.description(command));
    command.positionalParameters().stream().filter(each -> !each.hidden()).forEach(this::parameter);
    Told.own(command).forEach(this::option);
    for (String paragraph : Told.footer(command)) {
      line(".PP");
      text(paragraph);
    }
  }

  private void option(OptionSpec option) {
    String value = Told.takesValue(option) ? "=\\fI" + escaped(label(option)) + "\\fR" : "";
    String names =
        Stream.of(option.names())
            .map(name -> "\\fB" + escaped(name) + "\\fR")
            .collect(Collectors.joining(", "));
    item(names + value, Told.description(option));
  }

  private void parameter(PositionalParamSpec parameter) {
    item("\\fI" + escaped(label(parameter)) + "\\fR", Told.description(parameter));
  }

  private static String label(ArgSpec argument) {
    return argument.paramLabel();
  }

  private void pairs(String title, List<List<String>> pairs) {
    section(title);
    pairs.forEach(pair -> item(escaped(pair.get(0)), pair.get(1)));
  }

  private void item(String label, String description) {
    line(".TP");
    line(label);
    text(description);
  }

  private void section(String title) {
    line(".SH " + title);
  }

  private void text(String text) {
    line(escaped(text));
  }

  private void line(String line) {
    page.append(line).append('\n');
  }

  /** What man(7) would take for its own stands for itself and is copied as it is typed. */
  private static String escaped(String text) {
    String plain =
        text.replace("\\", "\\e")
            .replace("-", "\\-")
            .replace("'", "\\(aq")
            .replace("`", "\\(ga")
            .replace("^", "\\(ha")
            .replace("~", "\\(ti");
    return plain.startsWith(".") ? "\\&" + plain : plain;
  }
}
