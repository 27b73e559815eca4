package padside.screen;

import java.time.Instant;
import padside.units.TimeSpan;

/**
 * One moment by the machine's two clocks.
 *
 * @param wall the clock that tells the time of day; may be wrong and may jump
 * @param up time since the machine was started, which never goes back and counts sleep too
 * @param boot names that start of the machine; times of two boots have nothing to do with each
 *     other
 */
public record Moment(Instant wall, TimeSpan up, String boot) {}
