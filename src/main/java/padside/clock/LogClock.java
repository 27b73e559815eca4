package padside.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Tells the log's time: from the newest anchor of a start of the machine by its uptime, without one
 * as the machine's clock has it.
 *
 * @param anchors in the order they were kept
 * @param newest when the newest operation of the log was done, by the clocks of the machine it was
 *     done on
 */
public record LogClock(List<Anchor> anchors, Optional<Moment> newest) {
  /** A clock may be read so much late. */
  private static final Duration TOLERANCE = Duration.ofMinutes(1);

  /** Keeps its own list. */
  public LogClock {
    anchors = List.copyOf(anchors);
  }

  /** A moment with the log's time as its time of day. */
  public Moment told(Moment machine) {
    return anchor(machine.boot())
        .map(anchor -> machine.at(anchor.timeAt(machine.up())))
        .orElse(machine);
  }

  /** What rules one start of a machine. */
  public Optional<Anchor> anchor(String boot) {
    return anchors.stream()
        .filter(each -> each.boot().equals(boot))
        .reduce((older, newer) -> newer);
  }

  /** Whether the time is known rather than only shown by a clock nobody vouches for. */
  public boolean knows(Moment machine) {
    boolean kept =
        machine.trust() == Moment.Trust.BATTERY
            && !isBehind(machine.wall(), machine.boot())
            && !jumped(machine);
    return machine.sure() || kept || anchor(machine.boot()).isPresent();
  }

  /**
   * Whether the flier is to be asked before anything is done: the time is not known, and lies
   * before the newest entry, or jumped since it, or the machine was started again since it.
   */
  public boolean asks(Moment machine) {
    return !knows(machine)
        && (jumped(machine)
            || newest.filter(entry -> !entry.boot().equals(machine.boot())).isPresent());
  }

  /** The log's time of the newest operation. */
  public Optional<Instant> newestTime() {
    return newest.map(this::told).map(Moment::wall);
  }

  /**
   * Whether a time would lie before the newest entry. What was entered since the machine's start
   * does not count: it moves with the clock.
   */
  public boolean isBehind(Instant time, String boot) {
    return newest
        .filter(entry -> !entry.boot().equals(boot))
        .flatMap(entry -> newestTime())
        .filter(entry -> time.plus(TOLERANCE).isBefore(entry))
        .isPresent();
  }

  /** Whether the machine's clock was set since the newest entry, which no anchor covers. */
  public boolean jumped(Moment machine) {
    return anchor(machine.boot()).isEmpty() && newest.filter(machine::jumpedSince).isPresent();
  }

  static Duration duration(double seconds) {
    return Duration.ofMillis(Math.round(seconds * 1000));
  }
}
