package padside.app;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints what other programs show of the command line: man its page, a shell its completion. */
@Command(
    name = "manual",
    description = "Prints the manual page, or what completes commands and options in a shell.",
    footer = {
      "",
      "Read it: padside manual | man -l -",
      "In bash: source <(padside manual --bash)",
      "In zsh, once compinit has run: source <(padside manual --zsh)",
      "The Debian package has put all three where man and the shells look for them.",
      "Exit status: 0 done, 2 wrong input."
    })
final class ManualCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @ArgGroup private Shell shell = new Shell();

  /** At most one. */
  static final class Shell {
    @Option(names = "--bash", description = "completion for bash")
    private boolean bash;

    @Option(names = "--zsh", description = "completion for zsh")
    private boolean zsh;
  }

  @Override
  public Integer call() {
    CommandLine program = spec.root().commandLine();
    PrintWriter out = spec.commandLine().getOut();
    if (shell.bash) {
      out.print(AutoComplete.bash(spec.root().name(), program));
    } else if (shell.zsh) {
      out.print(ZshCompletion.of(spec.root()));
    } else {
      out.print(ManualPage.of(spec.root()));
    }
    out.flush();
    return Exit.DONE;
  }
}
