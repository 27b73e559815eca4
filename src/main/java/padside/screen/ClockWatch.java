package padside.screen;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import padside.clock.Anchor;
import padside.clock.Moment;

/**
 * The machine's clock was set, or became sure, while the program runs.
 *
 * @param line what is told of it
 * @param effect what is to be done, where something is
 */
record ClockWatch(String line, Optional<Effect> effect) {
  /** No screen's, so that no screen takes the answer for its own. */
  private static final Ticket TICKET = new Ticket(-1, 0);

  private static final Duration WORTH_TELLING = Duration.ofMinutes(1);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("d MMM HH:mm:ss", Locale.ENGLISH);

  /** What is to be noticed as the world moves on to a later moment. */
  static Optional<ClockWatch> between(World world, Moment later) {
    boolean jumped = later.jumpedSince(world.machine());
    boolean found = later.sure() && !world.machine().sure();
    if (!jumped && !found) {
      return Optional.empty();
    }
    String set = jumped ? "The machine's clock was set to " : "The machine's clock is right: ";
    String head = set + text(later, world);
    Optional<Anchor> anchor = world.log().clock().anchor(later.boot()).filter(Anchor::byFlier);
    if (anchor.isPresent()) {
      return kept(head, anchor.get(), later, world);
    }
    return Optional.of(
        later.sure()
            ? new ClockWatch(
                head + "; what was entered since its start follows.",
                Optional.of(
                    new Effect.SetClock(
                        TICKET, Anchor.of(later, later.wall(), Anchor.How.SYNCHRONISED))))
            : new ClockWatch(head + ". Is that right? k on the Day screen.", Optional.empty()));
  }

  /** What the flier said rules on; where the machine now says otherwise he hears of it. */
  private static Optional<ClockWatch> kept(String head, Anchor anchor, Moment later, World world) {
    Moment told = world.log().clock().told(later);
    Duration apart = Duration.between(told.wall(), later.wall()).abs();
    boolean agrees = apart.compareTo(WORTH_TELLING) <= 0;
    String said = anchor.how() == Anchor.How.SET ? "set" : "confirmed";
    return Optional.of(
            new ClockWatch(
                head
                    + "; the log keeps to "
                    + text(told, world)
                    + ", as "
                    + said
                    + " (k changes it).",
                Optional.empty()))
        .filter(any -> !agrees);
  }

  private static String text(Moment moment, World world) {
    return TIME.format(LocalDateTime.ofInstant(moment.wall(), world.zone()));
  }
}
