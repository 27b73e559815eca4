package padside.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import padside.fact.Fault;
import padside.screen.Setting;
import padside.units.PrintableText;
import padside.units.Reading;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what is set, and sets it. */
@Command(
    name = "settings",
    description =
        "Tells what every setting stands at and what it means; one of them alone, or sets it. On"
            + " the screens: a on the Day screen.",
    footer = {
      "",
      "The file holds one setting a line, with comments; what else stands in it is left alone.",
      "Exit status: 0 done, 1 the file could not be read or written, 2 wrong input."
    })
final class SettingsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(names = "--file", description = "only tell where the file is, or would be")
  private boolean where;

  @Option(names = "--unset", description = "take the setting named back to what is usual")
  private boolean unset;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "one setting, such as units")
  private String name;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "VALUE",
      description = "what to set it to")
  private List<String> value = List.of();

  @Override
  public Integer call() throws Fault {
    Path file = Folders.of(System.getenv()).settings();
    if (where) {
      out(file.toString());
      return Exit.DONE;
    }
    if (name == null) {
      SettingsFile now = SettingsFile.read(file);
      Setting.ALL.forEach(setting -> tell(setting, now));
      tellUntaken(now);
      return Exit.DONE;
    }
    Optional<Setting> setting = Setting.find(name);
    if (setting.isEmpty()) {
      return refused(
          Reading.echo(name)
              + " is no setting; choose "
              + Setting.ALL.stream().map(Setting::name).collect(Collectors.joining(", "))
              + ".");
    }
    return one(file, setting.get());
  }

  private int one(Path file, Setting setting) throws Fault {
    SettingsFile now = SettingsFile.read(file);
    if (value.isEmpty() && !unset) {
      out(now.text(setting));
      tellUntaken(now);
      return Exit.DONE;
    }
    String kept = "";
    if (!unset) {
      Reading<String> read = setting.read(String.join(" ", value), now.settings().units());
      if (read.objection().isPresent()) {
        return refused(read.objection().get());
      }
      kept = read.value().orElseThrow();
    }
    SettingsFile.keep(file, Map.of(setting.name(), kept));
    tell(setting, SettingsFile.read(file));
    return Exit.DONE;
  }

  private void tellUntaken(SettingsFile now) {
    now.told().forEach(each -> spec.commandLine().getErr().println(PrintableText.of(each)));
  }

  private void tell(Setting setting, SettingsFile now) {
    String text = now.text(setting);
    out(setting.name() + " = " + (text.isEmpty() ? "(none)" : text));
    out("    " + setting.explained());
  }

  private int refused(String objection) {
    spec.commandLine().getErr().println(PrintableText.of(objection));
    return Exit.USAGE;
  }

  private void out(String line) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(PrintableText.of(line));
  }
}
