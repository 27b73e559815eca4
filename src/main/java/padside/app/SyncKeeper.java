package padside.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import padside.fact.Fault;
import padside.flight.Logbook;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Sync;
import padside.store.Exchange;
import padside.sync.Partners;
import padside.sync.Stranger;
import padside.sync.Terms;
import padside.sync.Told;

/**
 * Synchronises with other machines on a thread of its own, one place at a time, and tells the
 * screens how far it is. What it does to the log takes its turn on the log's thread.
 */
final class SyncKeeper {
  private static final long CLOSING_SECONDS = 5;
  private static final long MOST_OFTEN_NANOS = 100_000_000;

  private final LogKeeper keeper;
  private final Inbox inbox;
  private final Places places;
  private final OwnThread thread;

  /** What the flier says to strangers; nothing but a stop, which is no. */
  private final BlockingQueue<Boolean> answers = new LinkedBlockingQueue<>();

  private volatile boolean stopped;

  // Only the own thread touches these.
  private List<Sync.Partner> partners = List.of();
  private long toldAt;

  /** Where there is something to exchange with. */
  interface Places {
    /** What was exchanged with, the last first. */
    List<Partners.Partner> list();

    void drop(String place) throws Fault;

    /** Exchanges all that either lacks and notes how it ended. */
    Told exchange(String place, Exchange log, Terms terms) throws Fault;
  }

  SyncKeeper(LogKeeper keeper, Places places, Inbox inbox) {
    this.keeper = keeper;
    this.places = places;
    this.inbox = inbox;
    this.thread = OwnThread.named("sync", inbox::failed);
  }

  /** How it stands before anything was exchanged in this run. */
  Sync atStart() {
    return new Sync(listed(), Optional.empty());
  }

  private List<Sync.Partner> listed() {
    return places.list().stream()
        .map(
            each ->
                new Sync.Partner(each.place(), each.when(), each.out(), each.in(), each.ended()))
        .toList();
  }

  /** Starts what is to be done with other machines; leaves alone what is not. */
  void does(Effect effect) {
    if (effect instanceof Effect.Synchronise exchange) {
      thread.execute(() -> exchange(exchange.place()));
    } else if (effect instanceof Effect.TakeStrangers answer) {
      answers.add(answer.yes());
    } else if (effect instanceof Effect.StopSync) {
      stop();
    } else if (effect instanceof Effect.DropPartner drop) {
      thread.execute(() -> drop(drop.place()));
    }
  }

  private void stop() {
    stopped = true;
    answers.add(false);
  }

  /** Stops what is under way; what has come stays. */
  void close() {
    stop();
    try {
      thread.finish(CLOSING_SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void drop(String place) {
    try {
      places.drop(place);
      tell(Optional.empty(), Optional.empty(), Optional.empty());
    } catch (Fault fault) {
      tell(Optional.empty(), Optional.empty(), Optional.of(fault.sentence()));
    }
  }

  private void exchange(String typed) {
    stopped = false;
    answers.clear();
    String place = SyncPlaces.named(typed);
    partners = listed();
    Watching watch = new Watching(place);
    watch.tell("", 0, 0, List.of());
    String told;
    try {
      Told done = places.exchange(place, new ExchangeInTurn(keeper, this::goOn), watch);
      told = words(place, done);
    } catch (Fault fault) {
      told = fault.sentence() + " " + fault.nextStep();
    }
    tell(Optional.empty(), keeper.reread(), Optional.of(told));
  }

  private static String words(String place, Told done) {
    List<String> words = new ArrayList<>(List.of(SyncPlaces.sentence(place, done)));
    words.addAll(done.here());
    done.there().forEach(said -> words.add("There: " + said));
    return String.join(" ", words);
  }

  /** Lets go of an exchange the flier stopped, between two batches. */
  private void goOn() throws Fault {
    if (stopped) {
      throw new Fault(
          "sync-stopped",
          "The exchange was stopped; what had come until then stays.",
          "Synchronise again for the rest.");
    }
  }

  private void tell(Optional<Sync.Running> running, Optional<Logbook> log, Optional<String> told) {
    if (running.isEmpty()) {
      partners = listed();
    }
    inbox.answer(new Event.Synced(new Sync(partners, running), log, told));
  }

  /** Tells the screens of one exchange, and asks for them. */
  private final class Watching implements Terms {
    private final String place;

    private Watching(String place) {
      this.place = place;
    }

    @Override
    public boolean onlyLook() {
      return false;
    }

    @Override
    public void goOn() throws Fault {
      SyncKeeper.this.goOn();
    }

    @Override
    public void moved(Stage stage, long done, long of) throws Fault {
      goOn();
      long now = System.nanoTime();
      if (now - toldAt >= MOST_OFTEN_NANOS) {
        toldAt = now;
        tell(stage == Stage.GIVING ? "Giving" : "Taking in", done, of, List.of());
      }
    }

    @Override
    public boolean mayTake(List<Stranger> strangers) throws Fault {
      goOn();
      tell("", 0, 0, strangers);
      inbox.answer(
          new Event.Noticed("Machines new to this log want to be let in: y asks about them."));
      try {
        boolean yes = answers.take();
        goOn();
        tell("", 0, 0, List.of());
        return yes;
      } catch (InterruptedException e) {
        throw new IllegalStateException("nothing interrupts the thread of the exchanges", e);
      }
    }

    private void tell(String doing, long done, long of, List<Stranger> strangers) {
      List<Sync.Stranger> named = strangers.stream().map(SyncTerms::shown).toList();
      Sync.Running running = new Sync.Running(place, doing, done, of, stopped, named);
      SyncKeeper.this.tell(Optional.of(running), Optional.empty(), Optional.empty());
    }
  }
}
