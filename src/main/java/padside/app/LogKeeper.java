package padside.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import padside.clock.Anchor;
import padside.clock.LogClock;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Logbook;
import padside.motor.MotorTable;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Refused;
import padside.screen.Ticket;
import padside.store.LogFolder;
import padside.units.PrintableText;

/** The one thread that has the log: opens it, keeps actions in order, reads it anew after them. */
final class LogKeeper {
  private static final long CLOSING_SECONDS = 30;

  private final Path folder;
  private final ThisMachine machine;
  private final Inbox inbox;
  private final AtomicInteger savesWaiting = new AtomicInteger();
  private final OwnThread thread;
  private final InTurn turns;
  private final PastReading past = new PastReading();
  private final Searching searching = new Searching();

  // Only the log's own thread touches these.
  private MotorTable motors = new MotorTable(List.of());
  private Optional<LogFolder> log = Optional.empty();
  private Optional<Logbook> book = Optional.empty();
  private Optional<Refused> told = Optional.empty();
  private int noticesTold;

  private volatile boolean saved;
  private volatile boolean closing;

  LogKeeper(Path folder, ThisMachine machine, Inbox inbox) {
    this.folder = folder;
    this.machine = machine;
    this.inbox = inbox;
    this.thread = OwnThread.named("log", inbox::failed);
    this.turns = new InTurn(thread);
  }

  /** A question to the log. */
  private interface Reading {
    Event of(LogFolder log) throws Fault;
  }

  /** Something another thread wants of the log. */
  interface Asked<T> {
    T of(LogFolder log) throws Fault;
  }

  /** Something to be kept. */
  private interface Writing {
    Action in(LogFolder log) throws Fault;
  }

  /**
   * What came of opening the log: a first reading of it, or a fault.
   *
   * @param refused why nothing can be written to it now
   */
  record Opened(
      Optional<Logbook> book,
      List<String> notices,
      Optional<Refused> refused,
      Optional<Fault> fault) {}

  /**
   * Opens the log.
   *
   * @param atOnce true to look at no more of it than the first screen shows, and then at the rest
   */
  void open(boolean atOnce) {
    thread.execute(() -> inbox.opened(opened(atOnce)));
    thread.execute(this::readRest);
    thread.execute(() -> log.ifPresent(LogFolder::layBallast));
  }

  /** Starts what is to be done with the log; leaves alone what has nothing to do with it. */
  void does(Effect effect) {
    if (effect instanceof Effect.Save save) {
      keep(save.ticket(), open -> save.action());
    } else if (effect instanceof Effect.SetClock set) {
      keep(set.ticket(), open -> open.clockAction(set.anchor()));
    } else if (effect instanceof Effect.ReadHistory read) {
      read(read);
    } else if (effect instanceof Effect.ReadRemoved read) {
      read(read);
    } else if (effect instanceof Effect.FindFlights find) {
      searching.asked(find);
      thread.execute(() -> find(find));
    } else if (effect instanceof Effect.TryAgain) {
      thread.execute(() -> inbox.answer(triedAgain()));
    } else if (effect instanceof Effect.KeepIn other) {
      keepIn(other);
    } else if (effect instanceof Effect.PutAside) {
      thread.execute(inbox::settled);
    }
  }

  private void keep(Ticket ticket, Writing writing) {
    savesWaiting.incrementAndGet();
    thread.execute(() -> inbox.answer(kept(ticket, writing)));
  }

  /** Reads what was done to a record, once all saves before are kept. */
  private void read(Effect.ReadHistory read) {
    thread.execute(
        () ->
            inbox.answer(
                read(
                    read.ticket(),
                    open ->
                        new Event.HistoryRead(
                            read.ticket(), open.history(read.kind(), read.id())))));
  }

  /** Reads what is marked as removed. */
  private void read(Effect.ReadRemoved read) {
    thread.execute(
        () ->
            inbox.answer(
                read(
                    read.ticket(),
                    open -> new Event.RemovedRead(read.ticket(), open.removed(read.kind())))));
  }

  /** Keeps what the medium refuses in another folder. */
  private void keepIn(Effect.KeepIn other) {
    thread.execute(
        () ->
            inbox.answer(
                read(
                    other.ticket(),
                    open -> {
                      open.keepIn(Folders.typed(other.folder()));
                      return medium(open, Optional.of(other.ticket()));
                    })));
  }

  /**
   * Does something with the log in its turn; the calling thread, not the screens', waits for it.
   */
  <T> T ask(Asked<T> asked) throws Fault {
    return turns.ask(
        () -> {
          LogFolder open = log.orElseThrow();
          T answer = asked.of(open);
          tell(open);
          return answer;
        });
  }

  /** The log read anew, as what came from elsewhere has left it; nothing where that fails. */
  Optional<Logbook> reread() {
    try {
      return Optional.of(
          ask(
              open -> {
                saved = true;
                past.changed();
                Logbook read = read(open);
                book = Optional.of(read);
                return read;
              }));
    } catch (Fault fault) {
      inbox.answer(new Event.Noticed(fault.sentence()));
      return Optional.empty();
    }
  }

  /** Tells the inbox once everything handed over so far is kept. */
  void finish() {
    thread.execute(inbox::gone);
  }

  /** True when anything was saved since the log was opened. */
  boolean saved() {
    return saved;
  }

  /** Waits for what is being kept, then lets go of the log. */
  void close() {
    closing = true;
    thread.execute(this::letGo);
    try {
      if (!thread.finish(CLOSING_SECONDS)) {
        throw new IllegalStateException("the log could not be closed in time");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Opened opened(boolean atOnce) {
    try {
      motors = Shipped.motors();
      LogFolder opened = LogFolder.openOrRead(folder, machine, Folders.temporary());
      log = Optional.of(opened);
      correct(opened);
      book = Optional.of(atOnce ? Logbook.firstLook(opened, motors) : read(opened));
      told = refused(opened);
      noticesTold = opened.notices().size();
      return new Opened(book, opened.notices(), told, Optional.empty());
    } catch (Fault fault) {
      return new Opened(Optional.empty(), List.of(), Optional.empty(), Optional.of(fault));
    }
  }

  private void readRest() {
    if (book.isEmpty() || closing || !book.get().isFirstLook()) {
      return;
    }
    try {
      book = Optional.of(read(log.orElseThrow()));
      inbox.answer(new Event.PastRead(book.get()));
    } catch (Fault fault) {
      inbox.answer(new Event.Noticed(fault.sentence()));
    }
  }

  /** The machine's clock was set right while the program was closed. */
  private void correct(LogFolder opened) throws Fault {
    LogClock clock = new LogClock(opened.anchors(), opened.newest());
    Moment now = machine.moment();
    if (now.sure() && clock.jumped(now) && opened.refusal().isEmpty()) {
      opened.keep(opened.clockAction(Anchor.of(now, now.wall(), Anchor.How.SYNCHRONISED)));
    }
  }

  private Event kept(Ticket ticket, Writing writing) {
    int stillWaiting = savesWaiting.decrementAndGet();
    try {
      LogFolder open = log.orElseThrow();
      Action action = writing.in(open);
      List<RecordId> records = open.keep(action).records();
      past.changed(action, book.orElseThrow());
      saved = true;
      if (stillWaiting == 0) {
        book = Optional.of(read(open));
      }
      tell(open);
      return new Event.Saved(ticket, records, book.orElseThrow());
    } catch (Fault fault) {
      return new Event.NotSaved(ticket, fault);
    }
  }

  /** The log as it is; where it is large its older flights are looked through later. */
  private Logbook read(LogFolder open) throws Fault {
    Logbook read = searching.over(past.over(Logbook.read(open, motors)), open);
    if (past.begins(read)) {
      goOn(this::readPast);
    }
    if (read.isLarge()) {
      goOn(this::lookThrough);
    }
    return read;
  }

  /** A search goes on until all is looked through, and everything else goes between. */
  private void find(Effect.FindFlights find) {
    if (searching.isOutdated(find)) {
      return;
    }
    try {
      if (searching.more(log.orElseThrow())) {
        goOn(() -> find(find));
        if (!searching.isDue()) {
          return;
        }
      }
      Event.FlightsFound found = searching.answer(find, log.orElseThrow(), book.orElseThrow());
      book = Optional.of(found.log());
      inbox.answer(found);
    } catch (Fault fault) {
      inbox.answer(new Event.NotRead(find.ticket(), fault));
    }
  }

  private void lookThrough() {
    try {
      if (!closing && searching.more(log.orElseThrow())) {
        goOn(this::lookThrough);
      }
    } catch (Fault fault) {
      // Nobody asked for it; a search tells.
    }
  }

  private void goOn(Runnable work) {
    try {
      thread.execute(work);
    } catch (RejectedExecutionException e) {
      closing = true; // nobody looks any more
    }
  }

  /** A page of it, then whatever else waits. */
  private void readPast() {
    if (closing) {
      return;
    }
    try {
      if (past.more(log.orElseThrow())) {
        goOn(this::readPast);
        return;
      }
      Logbook whole = past.over(book.orElseThrow());
      book = Optional.of(whole);
      inbox.answer(new Event.PastRead(whole));
      if (past.begins(whole)) {
        goOn(this::readPast);
      }
    } catch (Fault fault) {
      inbox.answer(new Event.Noticed(fault.sentence()));
    }
  }

  private Event read(Ticket ticket, Reading reading) {
    try {
      return reading.of(log.orElseThrow());
    } catch (Fault fault) {
      return new Event.NotRead(ticket, fault);
    }
  }

  private Event triedAgain() {
    try {
      LogFolder open = log.orElseThrow();
      boolean before = open.refusal().isPresent();
      open.tryAgain();
      if (before && open.refusal().isEmpty()) {
        book = Optional.of(read(open));
        open.layBallast();
      }
      return medium(open, Optional.empty());
    } catch (Fault fault) {
      return new Event.Noticed(fault.sentence());
    }
  }

  /** Tells the screens before they learn of a save what has become of the medium with it. */
  private void tell(LogFolder open) {
    if (!told.equals(refused(open))) {
      inbox.answer(medium(open, Optional.empty()));
    }
    List<String> notices = open.notices();
    notices.subList(noticesTold, notices.size()).forEach(n -> inbox.answer(new Event.Noticed(n)));
    noticesTold = notices.size();
  }

  private Event medium(LogFolder open, Optional<Ticket> answers) {
    told = refused(open);
    return new Event.Medium(told, book.orElseThrow(), answers);
  }

  private static Optional<Refused> refused(LogFolder open) {
    return open.refusal()
        .map(
            refusal ->
                new Refused(
                    refusal.fault(),
                    refusal.reason(),
                    refusal.changes(),
                    refusal.elsewhere().map(Path::toString),
                    refusal.reading()));
  }

  private void letGo() {
    try {
      if (log.isPresent()) {
        LastResort.rescue(log.get());
        log.get().close();
      }
    } catch (Fault fault) {
      System.err.println("padside: " + PrintableText.of(fault.sentence()));
    }
  }
}
