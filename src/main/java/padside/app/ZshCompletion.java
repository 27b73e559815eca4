package padside.app;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What zsh completes commands and options by, in the words of its function _arguments. */
final class ZshCompletion {
  private static final String FILES = "_files";
  private static final String FOLDERS = "_files -/";

  private ZshCompletion() {}

  static String of(CommandSpec root) {
    String commands =
        Told.commands(root).stream()
            .map(each -> "    " + quoted(coloned(each.name()) + ":" + Told.description(each)))
            .collect(Collectors.joining("\n"));
    String cases =
        Told.commands(root).stream().map(ZshCompletion::command).collect(Collectors.joining());
    return """
        #compdef %1$s
        _%1$s() {
          local curcontext=$curcontext state line
          local -A opt_args
          local -a commands common
          commands=(
        %2$s
          )
          common=(
        %3$s
          )
          _arguments -C -s $common '1:command:->command' '*::argument:->argument' && return
          case $state in
            command) _describe command commands ;;
            argument)
              case $line[1] in
        %4$s      esac
              ;;
          esac
        }
        if [ "$funcstack[1]" = _%1$s ]; then
          _%1$s "$@"
        else
          compdef _%1$s %1$s
        fi
        """
        .formatted(root.name(), commands, lines("    ", Told.common(root)), cases);
  }

  private static String command(CommandSpec command) {
    Stream<String> options = Told.own(command).stream().flatMap(ZshCompletion::option);
    Stream<String> parameters =
        command.positionalParameters().stream()
            .filter(each -> !each.hidden())
            .map(ZshCompletion::parameter);
    return "        %s) _arguments -s $common%s ;;\n"
        .formatted(
            command.name(),
            Stream.concat(options, parameters)
                .map(each -> " \\\n            " + each)
                .collect(Collectors.joining()));
  }

  private static String lines(String indent, List<OptionSpec> options) {
    return options.stream()
        .flatMap(ZshCompletion::option)
        .map(each -> indent + each)
        .collect(Collectors.joining("\n"));
  }

  /** One line for each name; a long one takes its value behind an equals sign or a blank. */
  private static Stream<String> option(OptionSpec option) {
    String told = "[" + bracketed(Told.description(option)) + "]";
    String value =
        Told.takesValue(option) ? ":" + coloned(option.paramLabel()) + ":" + choices(option) : "";
    String often = option.isMultiValue() ? "*" : "";
    return Stream.of(option.names())
        .map(
            name ->
                quoted(
                    often
                        + name
                        + (!value.isEmpty() && name.startsWith("--") ? "=" : "")
                        + told
                        + value));
  }

  private static String parameter(PositionalParamSpec parameter) {
    return quoted(
        (parameter.isMultiValue() ? "*" : parameter.arity().min() == 0 ? ":" : "")
            + ":"
            + coloned(parameter.paramLabel())
            + ":"
            + choices(parameter));
  }

  /** Files where one is meant, words where they are known; else a blank: anything. */
  private static String choices(ArgSpec argument) {
    if (argument.completionCandidates() != null) {
      List<String> words =
          java.util.stream.StreamSupport.stream(
                  argument.completionCandidates().spliterator(), false)
              .toList();
      return "(" + String.join(" ", words) + ")";
    }
    return switch (argument.paramLabel()) {
      case "FILE", "PLACE" -> FILES;
      case "FOLDER" -> FOLDERS;
      default -> " ";
    };
  }

  private static String coloned(String text) {
    return text.replace(":", "\\:");
  }

  private static String bracketed(String text) {
    return text.replace("\\", "\\\\").replace("[", "\\[").replace("]", "\\]");
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "'\\''") + "'";
  }
}
