package padside.screen;

import java.util.Optional;
import padside.units.TimeSpan;
import padside.units.Wind;
import padside.wire.WireWindow;

/**
 * What a wind meter tells that sends lines.
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
    TOO_EARLY(" · too few readings yet to tell a gust"),
    MISSED(" · gusts between readings are missed");

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

  private double silence(World world) {
    return Math.max(0, world.machine().up().seconds() - last.seconds());
  }

  /** The wind that may stand for one of now: none once it was silent for what is averaged over. */
  Optional<Wind> counting(World world) {
    return wind.filter(any -> silence(world) <= span.seconds());
  }

  boolean isSilent(World world) {
    return wind.isPresent() && silence(world) > WireWindow.STALE.seconds();
  }

  /** How old the last reading is: {@code now}, {@code 3 s ago}, {@code silent 34 s}. */
  String age(World world) {
    long seconds = (long) silence(world);
    if (isSilent(world)) {
      return "silent " + (seconds < 120 ? seconds + " s" : seconds / 60 + " min");
    }
    return seconds <= 1 ? "now" : seconds + " s ago";
  }

  /** Why no wind counts: what keeps it from being read, else that it is silent. */
  String lack(World world) {
    String silent = wind.map(any -> age(world)).orElse("nothing was sent yet");
    return trouble.orElse(silent);
  }

  /** What keeps the gust from being one, behind the wind. */
  String doubt() {
    return gusts.words;
  }

  /** When its age has to be told anew, while no reading comes. */
  Optional<TimeSpan> untilTick(World world) {
    double silence = silence(world);
    boolean over = wind.isEmpty() || silence > span.seconds() + WireWindow.STALE.seconds();
    return over ? Optional.empty() : Optional.of(new TimeSpan(1));
  }
}
