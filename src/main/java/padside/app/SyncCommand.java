package padside.app;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import padside.clock.DateAndTime;
import padside.clock.LogClock;
import padside.fact.Fault;
import padside.screen.Sync;
import padside.store.LogFolder;
import padside.sync.Bundle;
import padside.sync.SshPartner;
import padside.sync.Told;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Exchanges with another machine all that either lacks. */
@Command(
    name = "sync",
    description = "Exchanges with another machine all that either log lacks.",
    footer = {
      "",
      "A folder is one both machines see, at once or one after the other: a stick, a share, a"
          + " folder something keeps alike; Padside writes to padside-sync in it and changes"
          + " nothing there. ssh:user@host, or ssh://user@host:port, is a machine where padside is"
          + " found when you log in by ssh. Without PLACE the last one is taken again. Nothing is"
          + " lost and nothing overwritten: what two machines said differently stays until you"
          + " choose.",
      "Exit status: 0 done, 1 a file, folder or connection failed or lines were declined, 2 wrong"
          + " input."
    })
final class SyncCommand implements Callable<Integer> {
  private static final int MOST_CONTESTED = 1000;

  @Spec private CommandSpec spec;
  @Mixin private Output output;
  @ParentCommand private RootCommand root;

  @Parameters(
      arity = "0..1",
      paramLabel = "PLACE",
      description = "a folder, ssh:user@host, or a bundle to take in")
  private String place;

  @Option(
      names = "--bundle",
      paramLabel = "FILE",
      description = "write everything into one new file instead, to be sent or carried")
  private Path bundle;

  @Option(names = "--yes", description = "take lines of machines new to this log unasked")
  private boolean yes;

  @Option(
      names = "--stdio",
      description = "serve the other end of an exchange over standard input and output")
  private boolean stdio;

  @Option(names = "--dry-run", description = "only look and say what would move")
  private boolean dryRun;

  @Override
  public Integer call() throws Fault {
    if (place != null && bundle != null) {
      throw refused("Name a place or --bundle, not both.");
    }
    if (stdio) {
      return served();
    }
    SyncTerms terms = SyncTerms.of(spec.commandLine(), dryRun, yes);
    if (bundle != null) {
      root.existingLog();
    }
    try (LogFolder log = root.openLog()) {
      if (bundle != null) {
        bundled(new Bundle(bundle.toAbsolutePath()).write(log.exchange(), terms));
      } else {
        SyncPlaces places = new SyncPlaces(root.logFolder(), ssh(), () -> now(log));
        String where = SyncPlaces.named(place == null ? last(places) : place);
        Told told = places.exchange(where, log.exchange(), terms);
        told(where, told, contested(log));
      }
    }
    return Exit.DONE;
  }

  private int served() throws Fault {
    if (place != null || bundle != null || dryRun) {
      throw refused("--stdio serves whoever calls: name no place and no --bundle beside it.");
    }
    if (SyncTerms.console().isPresent()) {
      throw refused(
          "--stdio is what another machine's padside sync starts here; at a terminal name a place.");
    }
    SyncStdio.serve(root);
    return Exit.DONE;
  }

  private SshPartner.Means ssh() {
    return SyncPlaces.ssh(root.settings(), SyncTerms.console().isPresent());
  }

  private String last(SyncPlaces places) {
    return places.list().stream()
        .findFirst()
        .orElseThrow(
            () ->
                refused(
                    "This log was never synchronised; name a folder, such as /media/stick, or"
                        + " ssh:user@host."))
        .place();
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  /** The log's time, as lists show it. */
  static String now(LogFolder log) throws Fault {
    LogClock clock = new LogClock(log.anchors(), log.newest());
    var time = clock.told(new ThisMachine().moment()).wall();
    return new DateAndTime(time, time, ZoneId.systemDefault()).show(time);
  }

  private void bundled(long lines) {
    output.print(
        Map.of("file", bundle.toString(), "out", lines),
        () ->
            List.of(
                Sync.counted(lines) + (dryRun ? " would go into " : " are in ") + bundle + "."));
  }

  /** Records machines say different things of. */
  private static long contested(LogFolder log) throws Fault {
    return log.conflicts(MOST_CONTESTED).stream().map(each -> each.record()).distinct().count();
  }

  private void told(String where, Told told, long contested) {
    Map<String, Object> json = json(where, told);
    json.put("conflicts", contested);
    output.print(json, () -> List.of(sentence(where, told)));
    told.here().forEach(root::tell);
    told.there().forEach(said -> root.tell("There: " + said));
    if (contested > 0) {
      String records = contested == 1 ? "1 record" : contested + " records";
      root.tell("Machines say different things of " + records + "; r on the Day screen chooses.");
    }
  }

  private String sentence(String where, Told told) {
    return dryRun
        ? "To "
            + where
            + " would go "
            + Sync.counted(told.out())
            + ", and "
            + Sync.counted(told.in())
            + " would come."
        : SyncPlaces.sentence(where, told);
  }

  private Map<String, Object> json(String where, Told told) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("place", where);
    json.put("dry_run", dryRun);
    json.put("out", told.out());
    json.put("in", told.in());
    json.put("later", told.later());
    json.put("bytes_out", told.bytesOut());
    json.put("bytes_in", told.bytesIn());
    json.put("told", told.here());
    json.put("told_there", told.there());
    return json;
  }
}
