package padside.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import padside.clock.Anchor;
import padside.clock.LogClock;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Logbook;
import padside.motor.MotorTable;
import padside.screen.Effect;
import padside.screen.Event;
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

  // Only the log's own thread touches these.
  private MotorTable motors = new MotorTable(List.of());
  private Optional<LogFolder> log = Optional.empty();
  private Optional<Logbook> book = Optional.empty();

  LogKeeper(Path folder, ThisMachine machine, Inbox inbox) {
    this.folder = folder;
    this.machine = machine;
    this.inbox = inbox;
    this.thread = OwnThread.named("log", inbox::failed);
  }

  /** A question to the log. */
  private interface Reading {
    Event of(LogFolder log) throws Fault;
  }

  /** Something to be kept; answers the records changed. */
  private interface Writing {
    List<RecordId> in(LogFolder log) throws Fault;
  }

  /** What came of opening the log: a first reading of it, or a fault. */
  record Opened(Optional<Logbook> book, List<String> notices, Optional<Fault> fault) {}

  void open() {
    thread.execute(() -> inbox.opened(opened()));
  }

  void save(Effect.Save save) {
    keep(save.ticket(), open -> open.save(save.action()));
  }

  void set(Effect.SetClock set) {
    keep(set.ticket(), open -> open.setClock(set.anchor()));
  }

  private void keep(Ticket ticket, Writing writing) {
    savesWaiting.incrementAndGet();
    thread.execute(() -> inbox.answer(kept(ticket, writing)));
  }

  /** Reads what was done to a record, once all saves before are kept. */
  void read(Effect.ReadHistory read) {
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
  void read(Effect.ReadRemoved read) {
    thread.execute(
        () ->
            inbox.answer(
                read(
                    read.ticket(),
                    open -> new Event.RemovedRead(read.ticket(), open.removed(read.kind())))));
  }

  /** Tells the inbox once everything handed over so far is kept. */
  void finish() {
    thread.execute(inbox::gone);
  }

  /** Waits for what is being kept, then lets go of the log. */
  void close() {
    thread.execute(this::letGo);
    try {
      if (!thread.finish(CLOSING_SECONDS)) {
        throw new IllegalStateException("the log could not be closed in time");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Opened opened() {
    try {
      motors = Shipped.motors();
      LogFolder opened = LogFolder.open(folder, machine);
      log = Optional.of(opened);
      correct(opened);
      book = Optional.of(Logbook.read(opened, motors));
      return new Opened(book, opened.notices(), Optional.empty());
    } catch (Fault fault) {
      return new Opened(Optional.empty(), List.of(), Optional.of(fault));
    }
  }

  /** The machine's clock was set right while the program was closed. */
  private void correct(LogFolder opened) throws Fault {
    LogClock clock = new LogClock(opened.anchors(), opened.newest());
    Moment now = machine.moment();
    if (now.sure() && clock.jumped(now)) {
      opened.setClock(Anchor.of(now, now.wall(), Anchor.How.SYNCHRONISED));
    }
  }

  private Event kept(Ticket ticket, Writing writing) {
    int stillWaiting = savesWaiting.decrementAndGet();
    try {
      LogFolder open = log.orElseThrow();
      List<RecordId> records = writing.in(open);
      if (stillWaiting == 0) {
        book = Optional.of(Logbook.read(open, motors));
      }
      return new Event.Saved(ticket, records, book.orElseThrow());
    } catch (Fault fault) {
      return new Event.NotSaved(ticket, fault);
    }
  }

  private Event read(Ticket ticket, Reading reading) {
    try {
      return reading.of(log.orElseThrow());
    } catch (Fault fault) {
      return new Event.NotRead(ticket, fault);
    }
  }

  private void letGo() {
    try {
      if (log.isPresent()) {
        log.get().close();
      }
    } catch (Fault fault) {
      System.err.println("padside: " + PrintableText.of(fault.sentence()));
    }
  }
}
