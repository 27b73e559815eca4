package padside.screen;

import padside.flight.Action;
import padside.preflight.Card;

/**
 * What a screen wants done outside. The app does it on its own threads and answers with an event.
 */
public sealed interface Effect {
  /** Keep an action; answered with {@link Event.Saved} or {@link Event.NotSaved}, in order. */
  record Save(Ticket ticket, Action action) implements Effect {}

  /** Put a card to the check; only the newest of a screen is answered. */
  record Check(Ticket ticket, Card card) implements Effect {}

  /** Ring the terminal's bell. */
  record Bell() implements Effect {}

  /** Paint everything anew. */
  record Repaint() implements Effect {}

  /** Leave the program once all that was to be saved is saved. */
  record Quit() implements Effect {}
}
