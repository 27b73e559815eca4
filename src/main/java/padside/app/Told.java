package padside.app;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What the annotations of a command tell, in plain words. */
final class Told {
  private Told() {}

  /** The commands shown, in their order. */
  static List<CommandSpec> commands(CommandSpec root) {
    return root.subcommands().values().stream()
        .map(CommandLine::getCommandSpec)
        .filter(command -> !command.usageMessage().hidden())
        .toList();
  }

  /** The options of the program itself, which every command takes too. */
  static List<OptionSpec> common(CommandSpec root) {
    return root.options().stream().filter(option -> !option.hidden()).toList();
  }

  /** The options a command has beside those. */
  static List<OptionSpec> own(CommandSpec command) {
    List<String> common = common(command.root()).stream().map(OptionSpec::longestName).toList();
    return command.options().stream()
        .filter(option -> !option.hidden() && !common.contains(option.longestName()))
        .toList();
  }

  static boolean takesValue(ArgSpec argument) {
    return argument.arity().max() > 0;
  }

  static String description(CommandSpec command) {
    return plain(command.usageMessage().description());
  }

  static String description(ArgSpec argument) {
    return plain(argument.description());
  }

  /** What stands below the options, a paragraph each. */
  static List<String> footer(CommandSpec command) {
    return Stream.of(command.usageMessage().footer())
        .filter(line -> !line.isBlank())
        .map(Told::plain)
        .toList();
  }

  /** As picocli shows it: a percent sign is written twice. */
  private static String plain(String... lines) {
    return String.join(" ", lines).replace("%%", "%");
  }
}
