package padside.screen;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.clock.Moment;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.flight.Operation;
import padside.page.Page;
import padside.preflight.Answer;
import padside.preflight.Settings;
import padside.trace.TraceFinding;
import padside.units.Reading;
import padside.wire.WireWind;

/**
 * What happened. Keys go to the screen on top; everything else goes to every screen, which knows
 * its own by the ticket it gave with the effect.
 */
public sealed interface Event {
  /** The screen was just put on top; told to that screen alone. */
  record Opened() implements Event {}

  /** The screens over this one have gone; told to that screen alone. */
  record Uncovered() implements Event {}

  /** A key was pressed. */
  record Pressed(Key key, Moment at) implements Event {}

  /** Time has passed; screens that count find it in their world. */
  record Ticked() implements Event {}

  /** An action is in the log; on the medium unless {@link World#refused} tells otherwise. */
  record Saved(Ticket ticket, List<RecordId> records, Logbook log) implements Event {
    public Saved {
      records = List.copyOf(records);
    }
  }

  /** An action could not be kept; nothing of it is in the log. */
  record NotSaved(Ticket ticket, Fault fault) implements Event {}

  /**
   * How the medium takes what is kept has changed, or was asked.
   *
   * @param refused why it takes nothing; absent when all is on it
   * @param answers the question this answers, if one was asked
   */
  record Medium(Optional<Refused> refused, Logbook log, Optional<Ticket> answers)
      implements Event {}

  /** Something was found and mended in the log, or is to be known of its medium. */
  record Noticed(String line) implements Event {}

  /**
   * How it stands with other machines has changed.
   *
   * @param log as it is with what came
   * @param told a line for the flier, wherever they are
   */
  record Synced(Sync sync, Optional<Logbook> log, Optional<String> told) implements Event {}

  /** What the wind meter tells has changed; screens find it in their world, as time passes. */
  record Winded(WireWind wire) implements Event {}

  /** What was done to a record, oldest first; what was typed in pauses is told as one. */
  record HistoryRead(Ticket ticket, List<Operation> history) implements Event {
    public HistoryRead {
      history = Operation.joined(history);
    }
  }

  /** All flights of a large log were looked through for what they say of motors and delays. */
  record PastRead(Logbook log) implements Event {}

  /** The records that are marked as removed, the newest first. */
  record RemovedRead(Ticket ticket, List<FlightLog.Stored> records) implements Event {
    public RemovedRead {
      records = List.copyOf(records);
    }
  }

  /**
   * What a search came to; the log has those flights that were found.
   *
   * @param flights the newest of them
   * @param count of all
   * @param whole false where it is told again once more was looked through
   */
  record FlightsFound(Ticket ticket, List<RecordId> flights, int count, boolean whole, Logbook log)
      implements Event {
    public FlightsFound {
      flights = List.copyOf(flights);
    }
  }

  /** The newest files of a folder, with their paths as they may be typed. */
  record TracesListed(Ticket ticket, List<String> paths) implements Event {
    public TracesListed {
      paths = List.copyOf(paths);
    }
  }

  /**
   * What happened in one flight of an altimeter's file.
   *
   * @param part which of them, from 1
   * @param of how many there are
   */
  record TraceRead(Ticket ticket, String path, int part, int of, TraceFinding finding)
      implements Event {}

  /** A page, or why there is none. */
  record PageMade(Ticket ticket, Reading<Page> page) implements Event {}

  /** What was asked for could not be read. */
  record NotRead(Ticket ticket, Fault fault) implements Event {}

  /**
   * What the flier's file sets.
   *
   * @param texts by the name of the setting
   * @param told a sentence for every line that was not taken
   */
  record SettingsRead(Ticket ticket, Map<String, String> texts, List<String> told)
      implements Event {
    public SettingsRead {
      texts = Map.copyOf(texts);
      told = List.copyOf(told);
    }
  }

  /** The file has what was set; the check goes by it from now on, and so does the world. */
  record SettingsKept(Ticket ticket, Settings settings, Ease ease) implements Event {}

  /** The program may be about to end: what stands in a field and was not yet sent goes out now. */
  record Leaving() implements Event {}

  /** Nothing was typed for a moment: what stands in a field and was not yet sent goes out now. */
  record Paused() implements Event {}

  /** The check has answered. */
  record Checked(Ticket ticket, Answer answer) implements Event {}
}
