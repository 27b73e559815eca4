package padside.screen;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import padside.clock.Moment;
import padside.flight.Checklist;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.plan.PackingTable;
import padside.preflight.Settings;
import padside.wire.WireWind;

/**
 * All that screens know of the outside at one moment.
 *
 * @param machine this moment by the machine's own clocks
 * @param log the log as last read
 * @param checklist the lines shipped with the program
 * @param packing what goes along whatever is flown
 * @param braille whether the terminal shows the Unicode braille patterns
 * @param ease how screens are shown and worked
 * @param refused why the medium takes nothing now; mostly absent
 * @param sync how it stands with other machines
 * @param wire what a wind meter tells that sends lines
 * @param turn counts the keys pressed, so that every screen opened can have a number of its own
 */
public record World(
    Moment machine,
    ZoneId zone,
    Settings settings,
    Logbook log,
    OutcomeTable outcomes,
    Checklist checklist,
    PackingTable packing,
    boolean braille,
    Ease ease,
    Optional<Refused> refused,
    Sync sync,
    WireWind wire,
    long turn) {
  /** This moment, with the log's time as its time of day: what stamps and tells every time. */
  Moment moment() {
    return log.clock().told(machine);
  }

  /** The log's time. */
  Instant now() {
    return moment().wall();
  }

  World with(Logbook newer) {
    return new World(
        machine, zone, settings, newer, outcomes, checklist, packing, braille, ease, refused, sync,
        wire, turn);
  }

  /** The same with a log that was just opened. */
  public World opened(Moment now, Logbook book, Optional<Refused> other, Sync partners) {
    return at(now).with(book).with(other).with(partners);
  }

  World with(Optional<Refused> other) {
    return new World(
        machine, zone, settings, log, outcomes, checklist, packing, braille, ease, other, sync,
        wire, turn);
  }

  World with(Sync other) {
    return new World(
        machine, zone, settings, log, outcomes, checklist, packing, braille, ease, refused, other,
        wire, turn);
  }

  World with(Settings other) {
    return new World(
        machine, zone, other, log, outcomes, checklist, packing, braille, ease, refused, sync, wire,
        turn);
  }

  /** With another choice; what colours can be shown stays. */
  World with(Ease other) {
    Ease chosen = other.within(ease.colours());
    return new World(
        machine, zone, settings, log, outcomes, checklist, packing, braille, chosen, refused, sync,
        wire, turn);
  }

  World with(WireWind other) {
    return new World(
        machine, zone, settings, log, outcomes, checklist, packing, braille, ease, refused, sync,
        other, turn);
  }

  /** Words that say something is kept, or what stands for them while the medium takes nothing. */
  String keptWords(String words) {
    return refused.map(Refused::words).orElse(words);
  }

  World at(Moment later) {
    return new World(
        later, zone, settings, log, outcomes, checklist, packing, braille, ease, refused, sync,
        wire, turn);
  }

  World next(Moment later) {
    return new World(
        later, zone, settings, log, outcomes, checklist, packing, braille, ease, refused, sync,
        wire, turn + 1);
  }
}
