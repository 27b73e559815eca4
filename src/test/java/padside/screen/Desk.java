package padside.screen;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Checklist;
import padside.flight.Logbook;
import padside.flight.MemoryFlightLog;
import padside.flight.OutcomeTable;
import padside.motor.MotorTable;
import padside.plan.PackingTable;
import padside.preflight.Advice;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.Settings;
import padside.units.TimeSpan;
import padside.wire.WireWind;

/**
 * Plays the app around a session, without threads: presses keys, keeps what is to be saved in a log
 * in memory, lets a function answer the checks. Saves and checks are answered at once unless held
 * back.
 */
final class Desk {
  /** A Saturday morning; the zone of a desk is UTC. */
  static final Instant MORNING = Instant.parse("2026-05-02T09:30:00Z");

  static final ZoneId ZONE = ZoneOffset.UTC;
  static final MotorTable MOTORS = DeskData.motors();
  static final OutcomeTable OUTCOMES = DeskData.outcomes();
  static final Checklist CHECKLIST = DeskData.checklist();
  static final PackingTable PACKING = DeskData.packing();

  private final MemoryFlightLog log;
  private final boolean braille;
  private final Deque<Effect> saves = new ArrayDeque<>();
  private final Deque<Effect> checks = new ArrayDeque<>();
  private Function<Card, Answer> checker = card -> DeskData.unknown();
  private Session session;
  private Instant now = MORNING;
  private Duration up = Duration.ofHours(1);
  private String boot = "boot-1";
  private Moment.Trust trust = Moment.Trust.SURE;
  private Optional<Fault> fault = Optional.empty();
  private Optional<Effect.Check> newest = Optional.empty();
  private final List<Effect> others = new ArrayList<>();
  private boolean holdsSaves;
  private boolean holdsChecks;
  private Optional<Ease> used = Optional.empty();
  private Ease.Colours colours = Ease.Colours.SHOWN;
  private boolean quit;
  private int keys;
  private int bells;

  private Desk(MemoryFlightLog log, Settings settings, boolean braille) {
    this.log = log;
    this.braille = braille;
    this.session = Session.start(world(settings));
  }

  private World world(Settings settings) {
    return new World(
        moment(),
        ZONE,
        settings,
        book(log),
        OUTCOMES,
        CHECKLIST,
        PACKING,
        braille,
        Ease.usual().within(colours),
        Optional.empty(),
        Sync.none(),
        WireWind.none(),
        0);
  }

  static Desk over(MemoryFlightLog log) {
    return over(log, Settings.standard());
  }

  static Desk over(MemoryFlightLog log, Settings settings) {
    return new Desk(log, settings, true);
  }

  /** The same desk at a terminal that shows no braille. */
  Desk withoutBraille() {
    return new Desk(log, session.world().settings(), false).checking(checker);
  }

  /** Started anew at a terminal that shows no other colours. */
  Desk showing(Ease.Colours shown) {
    colours = shown;
    return restart();
  }

  /** Answers every check from now on. */
  Desk checking(Function<Card, Answer> function) {
    checker = function;
    return this;
  }

  /** Puts a screen on top, as another screen's key would. */
  Desk opening(Function<World, Screen> opener) {
    World world = session.world().next(moment());
    List<Screen> stack = new ArrayList<>(session.stack());
    stack.add(opener.apply(world));
    session = new Session(stack, world);
    return this;
  }

  /** Presses the keys of a script, one after the other. */
  Desk press(String script) {
    for (Key key : Key.script(script)) {
      keys++;
      take(new Event.Pressed(key, moment()));
      if (!holdsSaves) {
        answerSaves();
      }
      if (!holdsChecks) {
        answerChecks();
      }
      if (!holdsSaves) {
        answerSaves();
      }
    }
    return this;
  }

  /** Lets time pass. */
  Desk after(Duration time) {
    now = now.plus(time);
    up = up.plus(time);
    Session.Turn turn = session.ticked(moment());
    take(turn);
    return this;
  }

  /** From now on saves wait for {@link #answerSaves}. */
  Desk holdSaves() {
    holdsSaves = true;
    return this;
  }

  /** From now on checks wait for {@link #answerChecks}. */
  Desk holdChecks() {
    holdsChecks = true;
    return this;
  }

  /** Makes the next save fail. */
  Desk failNextSave(Fault next) {
    fault = Optional.of(next);
    return this;
  }

  /** Does all saves that wait, and those they lead to; what is to be read comes in its turn. */
  Desk answerSaves() {
    log.at(moment());
    while (!saves.isEmpty()) {
      Effect next = saves.remove();
      Optional<Event> read = DeskReading.of(next, log);
      if (read.isPresent()) {
        take(read.get());
        continue;
      }
      keep(next);
    }
    return this;
  }

  private void keep(Effect next) {
    Ticket ticket =
        next instanceof Effect.SetClock set ? set.ticket() : ((Effect.Save) next).ticket();
    if (fault.isPresent()) {
      take(new Event.NotSaved(ticket, fault.get()));
      fault = Optional.empty();
      return;
    }
    try {
      List<RecordId> ids =
          next instanceof Effect.SetClock set
              ? log.save(log.clockAction(set.anchor()))
              : log.save(((Effect.Save) next).action());
      take(new Event.Saved(ticket, ids, book(log)));
    } catch (Fault e) {
      throw new AssertionError("a log in memory cannot fail", e);
    }
  }

  /** Answers the check that has waited longest. */
  Desk answerOldestCheck() {
    Effect.Check check = (Effect.Check) checks.remove();
    newest = Optional.of(check);
    take(new Event.Checked(check.ticket(), checker.apply(check.card())));
    return this;
  }

  /** Loses the question that has waited longest, as the app does once a newer one waits. */
  Desk dropOldestCheck() {
    checks.remove();
    return this;
  }

  /** Adds what would help to the answer given last. */
  Desk advise(Advice advice) {
    return answerAgain(card -> checker.apply(card).with(advice));
  }

  /** Answers the check answered last once more. */
  Desk answerAgain(Function<Card, Answer> function) {
    newest.ifPresent(
        check -> take(new Event.Checked(check.ticket(), function.apply(check.card()))));
    return this;
  }

  /** Answers all checks that wait; of several the app would answer only the newest. */
  Desk answerChecks() {
    while (!checks.isEmpty()) {
      answerOldestCheck();
    }
    return this;
  }

  /** The session starts anew over the same log, as after a quit. */
  Desk restart() {
    session = Session.start(world(session.world().settings()));
    saves.clear();
    checks.clear();
    return this;
  }

  /** The session starts anew over the same log, told where it was when it was cut off. */
  Desk cutOff(List<Bookmark> place) {
    restart();
    take(Session.resume(session.world(), place));
    return answerSaves().answerChecks().answerSaves();
  }

  String frame() {
    return frame(new Size(80, 24));
  }

  String frame(Size size) {
    return session.view(size).text();
  }

  Screen top() {
    return session.top();
  }

  Session session() {
    return session;
  }

  MemoryFlightLog log() {
    return log;
  }

  /** The log as the screens see it. */
  Logbook book() {
    return session.world().log();
  }

  /** What was to be done with other machines and altimeters' files so far. */
  List<Effect> exchanges() {
    return List.copyOf(others);
  }

  /** How it stands with other machines is this from now on, the log what it is by now. */
  Desk synced(Sync sync, Optional<String> told) {
    take(new Event.Synced(sync, Optional.of(book(log)), told));
    return this;
  }

  /** Tells an answer from outside. */
  Desk told(Event answer) {
    take(answer);
    return this;
  }

  /** How many keys were pressed so far. */
  int keys() {
    return keys;
  }

  /** How often the bell rang so far. */
  int bells() {
    return bells;
  }

  /** The machine is started anew, and the session over the same log. */
  Desk reboot() {
    boot = boot + "'";
    up = Duration.ofSeconds(20);
    return restart();
  }

  /** Lets a count or a clock run, told as often as the screen wants it. */
  Desk running(Duration time) {
    Instant end = now.plus(time);
    while (now.isBefore(end)) {
      Duration step = Duration.ofMillis(Math.round(session.untilTick(moment()).seconds() * 1000));
      after(step.compareTo(Duration.between(now, end)) < 0 ? step : Duration.between(now, end));
    }
    return this;
  }

  /** The machine's clock is set, without its uptime going on. */
  Desk jump(Duration by) {
    now = now.plus(by);
    return this;
  }

  /** How far the machine's clock is to be believed from now on. */
  Desk trusting(Moment.Trust how) {
    trust = how;
    return this;
  }

  /** Led from now on, or not. */
  Desk led(Guide guide) {
    session = session.using(List.of(new Effect.Use(session.world().ease().with(guide)))).session();
    return this;
  }

  /** The looks and hands the terminal was told last. */
  Optional<Ease> used() {
    return used;
  }

  boolean hasQuit() {
    return quit;
  }

  private void take(Event event) {
    take(session.on(event));
  }

  private void take(Session.Turn turn) {
    session = turn.session();
    for (Effect effect : turn.effects()) {
      if (effect instanceof Effect.Save
          || effect instanceof Effect.SetClock
          || effect instanceof Effect.ReadHistory
          || effect instanceof Effect.ReadRemoved
          || effect instanceof Effect.FindFlights
          || effect instanceof Effect.MakePage) {
        saves.add(effect);
      } else if (effect instanceof Effect.Check) {
        checks.add(effect);
      } else if (effect instanceof Effect.WritePage
          || effect instanceof Effect.ReadSettings
          || effect instanceof Effect.KeepSettings
          || effect instanceof Effect.Synchronise
          || effect instanceof Effect.TakeStrangers
          || effect instanceof Effect.StopSync
          || effect instanceof Effect.DropPartner
          || effect instanceof Effect.ListTraces
          || effect instanceof Effect.ReadTrace) {
        others.add(effect);
      } else if (effect instanceof Effect.Use use) {
        used = Optional.of(use.ease());
      } else if (effect instanceof Effect.Bell) {
        bells++;
      } else if (effect instanceof Effect.Quit) {
        quit = true;
      }
    }
  }

  static Logbook book(MemoryFlightLog log) {
    try {
      return Logbook.read(log, MOTORS);
    } catch (Fault e) {
      throw new AssertionError("a log in memory cannot fail", e);
    }
  }

  /** A moment on a machine that was started an hour before the morning begins. */
  static Moment moment(Instant at) {
    return new Moment(at, new TimeSpan(3600), "boot-1", Moment.Trust.SURE);
  }

  private Moment moment() {
    return new Moment(now, new TimeSpan(up.toMillis() / 1000.0), boot, trust);
  }
}
