package padside.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import padside.clock.Moment;
import padside.screen.Bookmark;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Frame;
import padside.screen.Session;
import padside.screen.Size;
import padside.terminal.Input;
import padside.units.TimeSpan;

/**
 * Takes events one at a time until all is over, paints once all that waits is taken, and hands
 * effects on. A mistake of the program's own ends it too, what is half typed having been handed on
 * before.
 */
final class ScreenLoop {
  private static final TimeSpan PATIENCE = new TimeSpan(10);

  private final Inbox inbox;
  private final Outside outside;

  /** Taken out and not done yet; what a mistake cuts short is done after it. */
  private final Deque<Inbox.Item> taken = new ArrayDeque<>();

  private boolean pressed;

  /** What surrounds the screens. None of it makes the loop wait but a terminal put aside. */
  interface Outside {
    Moment moment();

    Size size();

    /** Shows a frame; all of it, whatever the terminal shows, or what differs. */
    void paint(Frame frame, boolean all);

    /** Starts what is to be done. */
    void does(Effect effect);

    /** The flier is here now. */
    void keepPlace(List<Bookmark> place);

    /** Nobody came to this place by hand, and it cannot be shown: the next start avoids it. */
    void forgetPlace();

    /** Leaves once all that was to be saved is saved. */
    void finish();

    /** Gives the terminal to the shell until the flier comes back; all is saved by now. */
    void putAside();

    /** The terminal was somebody else's for a while. */
    void takeAgain();
  }

  ScreenLoop(Inbox inbox, Outside outside) {
    this.inbox = inbox;
    this.outside = outside;
  }

  /** Goes on from there. */
  void run(Session.Turn first) {
    Session session = first.session();
    try {
      first.effects().forEach(outside::does);
      boolean all = true;
      while (true) {
        outside.paint(session.view(outside.size()), all);
        outside.keepPlace(session.bookmarks());
        all = false;
        taken.addAll(inbox.take(session.untilTick(outside.moment())));
        while (!taken.isEmpty()) {
          Inbox.Item item = taken.remove();
          if (item instanceof Inbox.Gone) {
            outside.keepPlace(session.bookmarks());
            return;
          }
          Session.Turn turn = turn(session, item);
          session = turn.session();
          turn.effects().forEach(outside::does);
          if (isHungUp(item)) {
            outside.finish();
          }
          all |=
              isWhole(item) || turn.effects().stream().anyMatch(Effect.Repaint.class::isInstance);
        }
      }
    } catch (RuntimeException | Error bug) {
      keepHalfTyped(session, bug);
      throw bug;
    }
  }

  /** After these nothing is as it was painted last. */
  private static boolean isWhole(Inbox.Item item) {
    boolean terminal =
        item instanceof Inbox.FromTerminal from && !(from.input() instanceof Input.Pressed);
    return terminal || item instanceof Inbox.Settled;
  }

  private static boolean isHungUp(Inbox.Item item) {
    return item instanceof Inbox.FromTerminal from && from.input() instanceof Input.HungUp;
  }

  /** Of the screens as they were before the mistake, and where they are once it is kept. */
  private void keepHalfTyped(Session session, Throwable bug) {
    try {
      Session.Turn leaving = session.on(new Event.Leaving());
      leaving.effects().forEach(outside::does);
      outside.finish();
      outside.keepPlace(onceKept(leaving.session()).bookmarks());
    } catch (RuntimeException | Error again) {
      bug.addSuppressed(again);
    }
    if (!pressed) {
      outside.forgetPlace();
    }
  }

  /** A new record is gone on with only once its id is known, and keeps the rest of it then. */
  private Session onceKept(Session session) {
    Session last = session;
    while (true) {
      if (taken.isEmpty()) {
        taken.addAll(inbox.take(PATIENCE));
      }
      Inbox.Item item = taken.remove();
      if (item instanceof Inbox.Gone || item instanceof Inbox.Tick) {
        return last;
      }
      if (item instanceof Inbox.Answered answered) {
        Session.Turn turn = last.on(answered.event());
        turn.effects().forEach(outside::does);
        last = turn.session();
      }
    }
  }

  private Session.Turn turn(Session session, Inbox.Item item) {
    if (item instanceof Inbox.FromTerminal from) {
      return heard(session, from.input());
    }
    if (item instanceof Inbox.Failed failed) {
      throw new IllegalStateException("work on a thread of its own failed", failed.bug());
    }
    if (item instanceof Inbox.Answered answered) {
      Session.Turn turn = session.on(answered.event());
      return answered.event() instanceof Event.Winded
          ? turn.session().ticked(outside.moment())
          : turn;
    }
    if (item instanceof Inbox.Settled) {
      outside.putAside();
    }
    return session.ticked(outside.moment());
  }

  private Session.Turn heard(Session session, Input input) {
    if (input instanceof Input.Pressed key) {
      pressed = true;
      return session.on(new Event.Pressed(key.key(), outside.moment()));
    }
    if (input instanceof Input.HungUp) {
      return session.on(new Event.Leaving());
    }
    if (input instanceof Input.BroughtBack) {
      outside.takeAgain();
    }
    return session.ticked(outside.moment());
  }
}
