package padside.wire;

import java.util.Optional;
import padside.units.TimeSpan;
import padside.units.Wind;

/**
 * What a wind meter tells that sends lines. Now is told by the uptime.
 *
 * @param set whether there is one in the settings
 * @param wind mean and gust of the last minutes, as they came to with the last reading
 * @param last the uptime of that reading; nothing of it is meant before the first
 * @param span what is averaged over, and how long a reading counts
 * @param trouble why nothing can be read, the end of a sentence; absent while readings come
 */
public record WireWind(
    boolean set,
    Optional<Wind> wind,
    Gusts gusts,
    TimeSpan last,
    TimeSpan span,
    Optional<String> trouble) {
  /** Whether the gust told is one. */
  public enum Gusts {
    TOLD(""),
    TOO_EARLY(" · too early for a gust"),
    MISSED(" · misses gusts");

    private final String words;

    Gusts(String words) {
      this.words = words;
    }
  }

  /** With no meter. */
  public static WireWind none() {
    return new WireWind(
        false,
        Optional.empty(),
        Gusts.TOO_EARLY,
        new TimeSpan(0),
        new TimeSpan(0),
        Optional.of("no wind meter is set"));
  }

  /** With a meter that has sent nothing yet. */
  public static WireWind awaited(TimeSpan span, String trouble) {
    return new WireWind(
        true, Optional.empty(), Gusts.TOO_EARLY, new TimeSpan(0), span, Optional.of(trouble));
  }

  private double silence(TimeSpan now) {
    return Math.max(0, now.seconds() - last.seconds());
  }

  /** The wind that may stand for one of now: none once it was silent for what is averaged over. */
  public Optional<Wind> counting(TimeSpan now) {
    return wind.filter(any -> silence(now) <= span.seconds());
  }

  /** Whether no reading has come for longer than a meter takes. */
  public boolean isSilent(TimeSpan now) {
    return wind.isPresent() && silence(now) > WireWindow.STALE.seconds();
  }

  /** How old the last reading is: {@code now}, {@code 3 s ago}, {@code silent 34 s}. */
  public String age(TimeSpan now) {
    long seconds = (long) silence(now);
    if (isSilent(now)) {
      return "silent " + (seconds < 120 ? seconds + " s" : seconds / 60 + " min");
    }
    return seconds <= 1 ? "now" : seconds + " s ago";
  }

  /** Why no wind counts: what keeps it from being read, else that it is silent. */
  public String lack(TimeSpan now) {
    String silent = wind.map(any -> age(now)).orElse("nothing was sent yet");
    return trouble.orElse(silent);
  }

  /** What keeps the gust from being one, behind the wind. */
  public String doubt() {
    return gusts.words;
  }

  /** When its age has to be told anew, while no reading comes. */
  public Optional<TimeSpan> untilTick(TimeSpan now) {
    double silence = silence(now);
    boolean over = wind.isEmpty() || silence > span.seconds() + WireWindow.STALE.seconds();
    return over ? Optional.empty() : Optional.of(new TimeSpan(1));
  }
}
