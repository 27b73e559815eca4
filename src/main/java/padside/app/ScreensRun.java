package padside.app;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.flight.Logbook;
import padside.motor.MotorTable;
import padside.preflight.Preflight;
import padside.screen.Bookmark;
import padside.screen.Ease;
import padside.screen.Ease.Colours;
import padside.screen.Ease.Looks;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Frame;
import padside.screen.Session;
import padside.screen.Setting;
import padside.screen.Size;
import padside.screen.World;
import padside.store.LogFolder;
import padside.terminal.Console;
import padside.terminal.Display;
import padside.terminal.Input;
import padside.terminal.Tty;
import padside.terminal.Window;
import padside.units.PrintableText;

/**
 * Shows the screens until the flier leaves; hands what they want done to the threads that do it.
 */
final class ScreensRun implements ScreenLoop.Outside, AutoCloseable {
  private static final int PATIENCE_SECONDS = 10;

  /** Nobody brings a program back sooner; a system that does not stop it takes a moment. */
  private static final double LEAST_ASIDE_S = 0.3;

  private final Inbox inbox = new Inbox();
  private final CountDownLatch closed = new CountDownLatch(1);
  private final Thread signalled = new Thread(this::leaveInGoodOrder, "padside signalled");
  private final ThisMachine machine;
  private final SettingsFile settings;
  private final Display display;
  private final LogKeeper keeper;
  private final Checker checker;
  private final PlaceKeeper place;

  /** Where the flier was when the program ended last without being left. */
  private final List<Bookmark> marks;

  private final SyncKeeper sync;
  private final TraceKeeper traces;
  private final PageKeeper pages;
  private final WindKeeper wind;
  private final SettingsKeeper set;

  /** True once the flier left by a key, and no signal ends the program. */
  private boolean left;

  private ScreensRun(
      Path folder,
      SettingsFile settings,
      ThisMachine machine,
      Optional<WindSource> meter,
      Where where) {
    this.settings = settings;
    this.machine = machine;
    this.keeper = new LogKeeper(folder, machine, inbox);
    this.place = new PlaceKeeper(folder, inbox::failed);
    this.marks = place.read();
    keeper.open(marks.isEmpty()); // a place may be at any flight
    this.display = display(where);
    this.checker = new Checker(check(settings), inbox);
    this.set =
        new SettingsKeeper(
            Folders.of(System.getenv()).settings(), now -> checker.use(check(now)), inbox);
    SyncPlaces places =
        new SyncPlaces(folder, SyncPlaces.ssh(settings, false), () -> keeper.ask(SyncCommand::now));
    this.sync = new SyncKeeper(keeper, places, inbox);
    this.traces = new TraceKeeper(folder, inbox);
    this.pages = new PageKeeper(keeper, new PageMaker(Folders.of(System.getenv()).pages()), inbox);
    this.wind = new WindKeeper(meter, machine::uptimeSeconds, inbox);
    Thread.setDefaultUncaughtExceptionHandler((thread, bug) -> inbox.failed(bug));
    Runtime.getRuntime().addShutdownHook(signalled);
  }

  /** Loads what opening the log will want, while other threads do what comes before that. */
  private static void loadAhead() {
    start("padside library", LogFolder::readyLibrary);
    start("padside motors", Shipped::motors);
  }

  private static void start(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    thread.start();
  }

  /** The log, which is being opened already, is let go where nothing can be shown. */
  private Display display(Where where) {
    Looks looks = shown(settings.ease());
    try {
      return where == Where.WINDOW
          ? Window.open(looks, inbox::input)
          : Console.open(Tty.of(System.getProperties()), looks, inbox::input);
    } catch (RuntimeException | Error unshown) {
      keeper.close();
      place.close();
      throw unshown;
    }
  }

  /** Where the screens are shown. */
  enum Where {
    TERMINAL,
    WINDOW;

    /** In a window where that is asked for, and where there is no terminal made ready for it. */
    static Where of(boolean window) {
      return window || !Tty.isReady(System.getProperties()) ? WINDOW : TERMINAL;
    }
  }

  /** Opens the screens on the flier's own log. */
  static int overOwnLog() {
    Folders folders = Folders.of(System.getenv());
    return over(folders.log(), Where.of(false));
  }

  /** Opens the screens on a log of the flier's, backed up afterwards; returns the exit status. */
  static int over(Path folder, Where where) {
    return ToldInWindow.during(where, () -> overBackedUp(folder, where));
  }

  private static int overBackedUp(Path folder, Where where) {
    loadAhead();
    SettingsFile settings = SettingsFile.own();
    ThisMachine machine = new ThisMachine(settings.clock());
    ScreensRun run = new ScreensRun(folder, settings, machine, settings.wind(), where);
    int status = over(run);
    if (status == Exit.DONE && run.keeper.saved() && run.left) {
      LeavingBackup.tell(folder, SettingsFile.own());
    }
    return status;
  }

  /** Opens the screens on the made-up season, whose dates no clock has to fit, in made-up wind. */
  static int overSeason(Path folder, Where where) {
    loadAhead();
    SettingsFile settings = SettingsFile.own();
    Optional<WindSource> meter = Optional.of(settings.wind().orElse(WindSource.simulated(2)));
    ThisMachine machine = new ThisMachine(Setting.Clock.TRUSTED);
    return ToldInWindow.during(
        where, () -> over(new ScreensRun(folder, settings, machine, meter, where)));
  }

  private static int over(ScreensRun run) {
    Fault failed;
    try (run) {
      World world = run.awaitLog();
      LogKeeper.Opened opened = run.inbox.awaitOpened();
      if (opened.fault().isEmpty()) {
        run.loop(world, opened);
        return Exit.DONE;
      }
      failed = opened.fault().get();
    } catch (RuntimeException | Error bug) {
      return CrashFile.write(bug, Optional.of(run.size()));
    }
    System.err.println("padside: " + PrintableText.of(failed.sentence()));
    System.err.println(PrintableText.of(failed.nextStep()));
    return Exit.FAULT;
  }

  /** What is shown before it is known what the display can show. */
  private static Looks shown(Ease ease) {
    return ease.within(noColour() ? Colours.NO_COLOR : Colours.SHOWN).shown();
  }

  /** The convention of no-color.org: set and not empty. */
  private static boolean noColour() {
    String value = System.getenv("NO_COLOR");
    return value != null && !value.isEmpty();
  }

  private Colours colours() {
    if (noColour()) {
      return Colours.NO_COLOR;
    }
    return display.showsColours() ? Colours.SHOWN : Colours.NONE_HERE;
  }

  /**
   * Waits for the log while it is shown that it is being opened, and meanwhile looks at a screen of
   * an empty one: what that loads the first screen needs too.
   */
  private World awaitLog() {
    display.paint(OpeningFrame.of(display.size()));
    World world = empty();
    Session.start(world).view(display.size());
    return world;
  }

  private static Supplier<Checker.Check> check(SettingsFile settings) {
    return () -> Checker.Check.of(new Preflight(settings.settings()));
  }

  private World empty() {
    return new World(
        machine.moment(),
        ZoneId.systemDefault(),
        settings.settings(),
        Logbook.empty(new MotorTable(List.of())),
        Shipped.outcomes(),
        Shipped.checklist(),
        Shipped.packing(),
        display.showsBraille(),
        settings.ease().within(colours()),
        Optional.empty(),
        sync.atStart(),
        wind.atStart(),
        0);
  }

  private void loop(World world, LogKeeper.Opened opened) {
    checker.prepare();
    wind.start();
    new ScreenLoop(inbox, this).run(start(world, opened));
  }

  private Session.Turn start(World empty, LogKeeper.Opened opened) {
    World world =
        empty.opened(
            machine.moment(), opened.book().orElseThrow(), opened.refused(), sync.atStart());
    Session.Turn turn = resumed(world);
    List<String> told = new ArrayList<>(turn.session().notice().stream().toList());
    told.addAll(settings.told());
    told.addAll(opened.notices());
    Session session = turn.session().tellingWhatIsRefused();
    return new Session.Turn(
        told.isEmpty() ? session : session.telling(String.join(" ", told)), turn.effects());
  }

  /** A place that cannot be shown must not keep the flier from the log. */
  private Session.Turn resumed(World world) {
    try {
      Session.Turn turn = Session.resume(world, marks);
      turn.session().view(display.size());
      return turn;
    } catch (RuntimeException | StackOverflowError bug) {
      return new Session.Turn(Session.start(world), List.of());
    }
  }

  @Override
  public Moment moment() {
    return machine.moment();
  }

  @Override
  public Size size() {
    return display.size();
  }

  @Override
  public void paint(Frame frame, boolean all) {
    if (all) {
      display.repaint(frame);
    } else {
      display.paint(frame);
    }
  }

  @Override
  public void does(Effect effect) {
    if (effect instanceof Effect.Check check) {
      checker.check(check);
    } else if (effect instanceof Effect.Bell) {
      display.bell();
    } else if (effect instanceof Effect.Use use) {
      display.use(shown(use.ease()));
    } else if (effect instanceof Effect.Quit) {
      place.forget();
      keeper.finish();
    } else {
      keeper.does(effect);
      sync.does(effect);
      traces.does(effect);
      pages.does(effect);
      set.does(effect);
    }
  }

  @Override
  public void keepPlace(List<Bookmark> marks) {
    place.keep(marks);
  }

  @Override
  public void forgetPlace() {
    place.forget();
  }

  @Override
  public void finish() {
    keeper.finish();
  }

  @Override
  public void putAside() {
    double before = machine.uptimeSeconds();
    display.putAside();
    if (machine.uptimeSeconds() - before < LEAST_ASIDE_S) {
      inbox.answer(
          new Event.Noticed(
              "Ctrl-Z found no shell here to wait in: Padside goes on; Ctrl-C leaves it."));
    }
  }

  @Override
  public void takeAgain() {
    display.takeAgain();
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
    display.close();
    wind.close();
    sync.close();
    traces.close();
    pages.close();
    set.close();
    keeper.close();
    place.close();
    closed.countDown();
    try {
      left = Runtime.getRuntime().removeShutdownHook(signalled);
    } catch (IllegalStateException e) {
      return; // it runs already, and finds everything closed
    }
  }
}
