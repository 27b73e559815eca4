package padside.app;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import padside.fact.Fault;
import padside.flight.Logbook;
import padside.preflight.Preflight;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Session;
import padside.screen.World;
import padside.terminal.Console;
import padside.terminal.Input;
import padside.terminal.Looks;
import padside.terminal.Tty;
import padside.units.PrintableText;

/**
 * Shows the screens until the flier leaves: takes events one at a time, paints once all that waits
 * is taken, and hands effects to the threads that do them.
 */
final class ScreensRun implements AutoCloseable {
  private static final int PATIENCE_SECONDS = 10;

  private final Inbox inbox = new Inbox();
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Thread signalled = new Thread(this::leaveInGoodOrder, "padside signalled");
  private final ThisMachine machine;
  private final SettingsFile settings;
  private final Console console;
  private final LogKeeper keeper;
  private final Checker checker;

  /** True once the flier left by a key, and no signal ends the program. */
  private boolean left;

  private ScreensRun(Path folder, SettingsFile settings, ThisMachine machine) {
    this.settings = settings;
    this.machine = machine;
    Looks looks = noColour() ? Looks.MONOCHROME : settings.looks();
    this.console = Console.open(Tty.of(System.getProperties()), looks, inbox::input);
    this.keeper = new LogKeeper(folder, machine, inbox);
    this.checker = new Checker(() -> Checker.Check.of(new Preflight(settings.settings())), inbox);
    Runtime.getRuntime().addShutdownHook(signalled);
  }

  /** Opens the screens on the flier's own log. */
  static int overOwnLog() {
    Folders folders = Folders.of(System.getenv());
    return over(folders.log());
  }

  /** Opens the screens on a log of the flier's, backed up afterwards; returns the exit status. */
  static int over(Path folder) {
    SettingsFile settings = SettingsFile.read(Folders.of(System.getenv()).settings());
    ScreensRun run = new ScreensRun(folder, settings, new ThisMachine(settings.clock()));
    int status = over(run);
    if (run.keeper.saved() && run.left) {
      LeavingBackup.of(folder, settings).tell();
    }
    return status;
  }

  /** Opens the screens on the made-up season, whose dates no clock has to fit. */
  static int overSeason(Path folder) {
    SettingsFile settings = SettingsFile.read(Folders.of(System.getenv()).settings());
    return over(new ScreensRun(folder, settings, new ThisMachine(ThisMachine.Clock.TRUSTED)));
  }

  private static int over(ScreensRun run) {
    Fault failed;
    try (run) {
      LogKeeper.Opened opened = run.awaitLog();
      if (opened.fault().isEmpty()) {
        run.loop(run.start(opened));
        return Exit.DONE;
      }
      failed = opened.fault().get();
    }
    System.err.println("padside: " + PrintableText.of(failed.sentence()));
    System.err.println(PrintableText.of(failed.nextStep()));
    return Exit.FAULT;
  }

  /** The convention of no-color.org: set and not empty. */
  private static boolean noColour() {
    String value = System.getenv("NO_COLOR");
    return value != null && !value.isEmpty();
  }

  /** Waits for the log while the console already shows that it is being opened. */
  private LogKeeper.Opened awaitLog() {
    console.paint(OpeningFrame.of(console.size()));
    keeper.open();
    return inbox.awaitOpened();
  }

  private Session start(LogKeeper.Opened opened) {
    Logbook book = opened.book().orElseThrow();
    World world =
        new World(
            machine.moment(),
            ZoneId.systemDefault(),
            settings.settings(),
            book,
            Shipped.outcomes(),
            Shipped.checklist(),
            Shipped.packing(),
            console.showsBraille(),
            opened.refused(),
            0);
    List<String> told = new ArrayList<>(settings.told());
    told.addAll(opened.notices());
    Session session = Session.start(world).tellingWhatIsRefused();
    return told.isEmpty() ? session : session.telling(String.join(" ", told));
  }

  private void loop(Session first) {
    Session session = first;
    console.repaint(session.view(console.size()));
    checker.prepare();
    try {
      while (true) {
        boolean all = false;
        for (Inbox.Item item : inbox.take(session.untilTick(machine.moment()))) {
          if (item instanceof Inbox.Gone) {
            return;
          }
          Session.Turn turn = turn(session, item);
          session = turn.session();
          all |= does(turn.effects());
          all |= item instanceof Inbox.FromTerminal from && from.input() instanceof Input.Resized;
        }
        if (all) {
          console.repaint(session.view(console.size()));
        } else {
          console.paint(session.view(console.size()));
        }
      }
    } catch (RuntimeException | Error bug) {
      keepHalfTyped(session, bug);
      throw bug;
    }
  }

  /** Of the screens as they were before the mistake; closing waits for it. */
  private void keepHalfTyped(Session session, Throwable bug) {
    try {
      does(session.on(new Event.Leaving()).effects());
    } catch (RuntimeException | Error again) {
      bug.addSuppressed(again);
    }
  }

  private Session.Turn turn(Session session, Inbox.Item item) {
    if (item instanceof Inbox.FromTerminal from) {
      if (from.input() instanceof Input.Pressed pressed) {
        return session.on(new Event.Pressed(pressed.key(), machine.moment()));
      }
      if (from.input() instanceof Input.HungUp) {
        Session.Turn turn = session.on(new Event.Leaving());
        List<Effect> effects = new ArrayList<>(turn.effects());
        effects.add(new Effect.Quit());
        return new Session.Turn(turn.session(), effects);
      }
    }
    if (item instanceof Inbox.Failed failed) {
      throw new IllegalStateException("work on a thread of its own failed", failed.bug());
    }
    if (item instanceof Inbox.Answered answered) {
      return session.on(answered.event());
    }
    return session.ticked(machine.moment());
  }

  /** Starts what is to be done; true when everything is to be painted anew. */
  private boolean does(List<Effect> effects) {
    boolean repaint = false;
    for (Effect effect : effects) {
      if (effect instanceof Effect.Save save) {
        keeper.save(save);
      } else if (effect instanceof Effect.SetClock set) {
        keeper.set(set);
      } else if (effect instanceof Effect.ReadHistory read) {
        keeper.read(read);
      } else if (effect instanceof Effect.ReadRemoved read) {
        keeper.read(read);
      } else if (effect instanceof Effect.TryAgain) {
        keeper.tryAgain();
      } else if (effect instanceof Effect.KeepIn other) {
        keeper.keepIn(other);
      } else if (effect instanceof Effect.Check check) {
        checker.check(check);
      } else if (effect instanceof Effect.Bell) {
        console.bell();
      } else if (effect instanceof Effect.Repaint) {
        repaint = true;
      } else if (effect instanceof Effect.Quit) {
        keeper.finish();
      }
    }
    return repaint;
  }

  /** A signal ends the program: as when the terminal hangs up, what is half typed is kept first. */
  private void leaveInGoodOrder() {
    inbox.input(new Input.HungUp());
    try {
      if (!closed.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        System.err.println("padside: ended before all that was typed could be kept");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    console.close();
    keeper.close();
    closed.countDown();
    try {
      left = Runtime.getRuntime().removeShutdownHook(signalled);
    } catch (IllegalStateException e) {
      return; // it runs already, and finds everything closed
    }
  }
}
