package padside.units;

/** A span of time in seconds, fractions included. */
public record TimeSpan(double seconds) {
  /** Refuses what is not a finite number. */
  public TimeSpan {
    Finite.require(seconds, "seconds");
  }

  /** Exact: SI prefix. */
  public static TimeSpan ofMilliseconds(double milliseconds) {
    return new TimeSpan(milliseconds / 1000.0);
  }

  /** Exact: SI prefix. */
  public double inMilliseconds() {
    return seconds * 1000.0;
  }

  /** Exact: SI brochure table 8. */
  public static TimeSpan ofMinutes(double minutes) {
    return new TimeSpan(minutes * 60.0);
  }

  /** Exact: SI brochure table 8. */
  public double inMinutes() {
    return seconds / 60.0;
  }

  /** Exact: SI brochure table 8. */
  public static TimeSpan ofHours(double hours) {
    return new TimeSpan(hours * 3600.0);
  }

  /** Exact: SI brochure table 8. */
  public double inHours() {
    return seconds / 3600.0;
  }
}
