package padside.app;

import java.io.Console;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import padside.screen.Sync;
import padside.sync.Stranger;
import padside.sync.Terms;
import padside.units.PrintableText;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * An exchange started from the command line: machines the log does not know are named, and taken
 * when the flier says so.
 *
 * @param yes whether the flier said so beforehand
 */
record SyncTerms(CommandLine command, boolean onlyLook, boolean yes, Set<Stage> begun)
    implements Terms {
  /** So many lines take a while. */
  private static final long MANY = 5000;

  static SyncTerms of(CommandLine command, boolean onlyLook, boolean yes) {
    return new SyncTerms(command, onlyLook, yes, EnumSet.noneOf(Stage.class));
  }

  @Override
  public boolean mayTake(List<Stranger> strangers) {
    strangers.forEach(stranger -> tell("New to this log: " + shown(stranger).words()));
    Optional<Console> console = console();
    if (!yes && console.isEmpty()) {
      throw new ParameterException(
          command,
          "Lines of machines new to this log would come, and nobody can be asked; look whose they"
              + " are, then say --yes.");
    }
    return yes || isYes(console.orElseThrow());
  }

  /** The terminal, where somebody can be asked. */
  static Optional<Console> console() {
    return Optional.ofNullable(System.console());
  }

  private static boolean isYes(Console console) {
    String answer = console.readLine("Take them? (y/n) ");
    return answer != null && answer.strip().toLowerCase(Locale.ROOT).startsWith("y");
  }

  /** As the screens show a machine that is new to the log. */
  static Sync.Stranger shown(Stranger stranger) {
    return new Sync.Stranger(stranger.device().label(), stranger.device().id(), stranger.lines());
  }

  @Override
  public void moved(Stage stage, long done, long of) {
    if (of >= MANY && begun.add(stage)) {
      tell((stage == Stage.GIVING ? "Giving " : "Taking in ") + of + " lines ...");
    }
  }

  private void tell(String sentence) {
    command.getErr().println("padside: " + PrintableText.of(sentence));
    command.getErr().flush();
  }
}
