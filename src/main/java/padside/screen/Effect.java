package padside.screen;

import java.util.Map;
import padside.clock.Anchor;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.page.Page;
import padside.preflight.Card;
import padside.preflight.Settings;
import padside.report.PageKind;
import padside.search.Search;
import padside.trace.TraceAir;
import padside.units.UnitSystem;

/**
 * What a screen wants done outside. The app does it on its own threads and answers with an event.
 */
public sealed interface Effect {
  /** Keep an action; answered with {@link Event.Saved} or {@link Event.NotSaved}, in order. */
  record Save(Ticket ticket, Action action) implements Effect {}

  /**
   * Tie this start of the machine to the true time and correct with it what was entered since;
   * answered as {@link Save}, the anchor's record first, then those corrected.
   */
  record SetClock(Ticket ticket, Anchor anchor) implements Effect {}

  /**
   * Read what was done to a record; answered with {@link Event.HistoryRead}, after earlier saves.
   */
  record ReadHistory(Ticket ticket, Kind kind, RecordId id) implements Effect {}

  /** Read the records of a kind that are marked as removed; {@link Event.RemovedRead}. */
  record ReadRemoved(Ticket ticket, Kind kind) implements Effect {}

  /**
   * Look for flights, so many at most; {@link Event.FlightsFound} or {@link Event.NotRead}. Asked
   * again before it is answered only the newest question is.
   */
  record FindFlights(Ticket ticket, Search search, int most) implements Effect {}

  /** Make a page of all the log has for it; answered with {@link Event.PageMade}. */
  record MakePage(Ticket ticket, PageKind kind, String which, Settings settings)
      implements Effect {}

  /** Write a page where it can be printed from; answered with {@link Event.Noticed}. */
  record WritePage(PageKind kind, Page page) implements Effect {}

  /** Try again to write what the medium refused; answered with {@link Event.Medium}. */
  record TryAgain() implements Effect {}

  /**
   * Keep what the medium refuses in another folder; {@link Event.Medium} or {@link Event.NotRead}.
   */
  record KeepIn(Ticket ticket, String folder) implements Effect {}

  /**
   * Exchange lines with a place, a folder or {@code ssh:user@host}, unless that is under way;
   * answered with {@link Event.Synced} as it goes on, while saves go in between.
   */
  record Synchronise(String place) implements Effect {}

  /** Take the lines of machines the log knows nothing of, or go without. */
  record TakeStrangers(boolean yes) implements Effect {}

  /** Stop the exchange under way; what has come stays. */
  record StopSync() implements Effect {}

  /** Take a place out of the list; the log keeps all that came from there. */
  record DropPartner(String place) implements Effect {}

  /**
   * List the newest files of a folder, the one a trace was read from last where it is empty; {@link
   * Event.TracesListed}.
   */
  record ListTraces(Ticket ticket, String folder) implements Effect {}

  /**
   * Read an altimeter's file and find what happened; {@link Event.TraceRead} or {@link
   * Event.NotRead}.
   *
   * @param part which flight of the file, from 1; 0 for the last
   */
  record ReadTrace(Ticket ticket, String path, int part, TraceAir air, UnitSystem units)
      implements Effect {}

  /** Show a line above the footer until the next key; the session itself does it. */
  record Tell(String line) implements Effect {}

  /** Show and work the screens so from now on; the session does its own part of it. */
  record Use(Ease ease) implements Effect {}

  /** Read what the flier has set; answered with {@link Event.SettingsRead}. */
  record ReadSettings(Ticket ticket) implements Effect {}

  /**
   * Set some settings, by name, each a text its notation has taken, a blank one to unset it; {@link
   * Event.SettingsKept} or {@link Event.NotRead}.
   */
  record KeepSettings(Ticket ticket, Map<String, String> changed) implements Effect {
    public KeepSettings {
      changed = Map.copyOf(changed);
    }
  }

  /** Put a card to the check; only the newest of a screen is answered. */
  record Check(Ticket ticket, Card card) implements Effect {}

  /** Ring the terminal's bell. */
  record Bell() implements Effect {}

  /** Paint everything anew. */
  record Repaint() implements Effect {}

  /** Give the terminal back to the shell once all that was to be saved is saved; go on after it. */
  record PutAside() implements Effect {}

  /** Leave the program once all that was to be saved is saved. */
  record Quit() implements Effect {}
}
