/**
 * The log's time. A small computer may have no battery clock: it starts in the past and jumps once
 * a network tells it better. What it does have is its uptime, which never jumps.
 *
 * <p>An {@link padside.clock.Anchor} ties one uptime of one start of the machine to the true time;
 * {@link padside.clock.LogClock} works every other moment of that start out from the newest one,
 * and is the one place where that is done. Promises: with an anchor the log's time runs with the
 * uptime, whatever the machine's clock does. Refuses: asking any clock; {@link
 * padside.clock.Moment} is handed in.
 */
package padside.clock;
