package padside.app;

import padside.fact.Fault;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Ticket;

/**
 * Makes and writes pages on a thread of its own, the one asked for last; what it reads of the log
 * takes its turn on the log's thread.
 */
final class PageKeeper implements AutoCloseable {
  private static final long CLOSING_SECONDS = 5;

  private final LogKeeper keeper;
  private final PageMaker pages;
  private final Inbox inbox;
  private final OwnThread thread;

  private volatile Ticket wanted = new Ticket(0, 0);
  private volatile boolean closing;

  PageKeeper(LogKeeper keeper, PageMaker pages, Inbox inbox) {
    this.keeper = keeper;
    this.pages = pages;
    this.inbox = inbox;
    this.thread = OwnThread.named("pages", inbox::failed);
  }

  /** Starts what is to be done with pages; leaves alone what has nothing to do with them. */
  void does(Effect effect) {
    if (effect instanceof Effect.MakePage page) {
      wanted = page.ticket();
      thread.execute(() -> inbox.answer(made(page)));
    } else if (effect instanceof Effect.WritePage page) {
      thread.execute(() -> inbox.answer(pages.written(page)));
    }
  }

  private Event made(Effect.MakePage page) {
    try {
      return pages.made(page, new LogInTurn(keeper, () -> goOn(page)));
    } catch (Fault fault) {
      return new Event.NotRead(page.ticket(), fault);
    }
  }

  /** Nobody waits for a page that another was asked for after. */
  private void goOn(Effect.MakePage page) throws Fault {
    if (closing || !page.ticket().equals(wanted)) {
      throw new Fault("page-given-up", "The page was given up for another.", "Ask for it again.");
    }
  }

  /** Waits for the page being written; one being made is given up. */
  @Override
  public void close() {
    closing = true;
    try {
      thread.finish(CLOSING_SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
