package padside.insight;

/** What lies between two values, both included. */
public record Interval(double low, double high) {
  /** Refuses ends that are no numbers or the wrong way round. */
  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("an interval from " + low + " to " + high);
    }
  }

  public boolean holds(double value) {
    return low <= value && value <= high;
  }
}
