package padside.insight;

/**
 * What became of motors that were fired. On a flight on several motors one of them failed where the
 * flight's burn is told as a malfunction; of a stack's stages the log does not say which, so each
 * lot of it counts one.
 *
 * @param told fired on flights whose burn was told
 * @param untold fired on flights of which nothing was told yet
 * @param failed those that malfunctioned
 * @param burst those of them that did not stay whole
 */
public record Burns(int told, int untold, int failed, int burst) {
  /** Nothing was fired. */
  public static final Burns NONE = new Burns(0, 0, 0, 0);

  /** Refuses more of a part than of the whole. */
  public Burns {
    if (burst > failed || failed > told || untold < 0 || burst < 0) {
      throw new IllegalArgumentException(
          "%d burst, %d failed, %d told, %d untold".formatted(burst, failed, told, untold));
    }
  }

  Burns and(Burns other) {
    return new Burns(
        told + other.told, untold + other.untold, failed + other.failed, burst + other.burst);
  }

  /** What is left when a part is taken out. */
  Burns without(Burns part) {
    return new Burns(
        told - part.told, untold - part.untold, failed - part.failed, burst - part.burst);
  }

  public int fired() {
    return told + untold;
  }

  /** Failures of every kind among those told of. */
  public Failures failures() {
    return new Failures(failed, told);
  }

  /** Whether a motor has malfunctioned. */
  public boolean isMarked() {
    return failed > 0;
  }

  /** What those that failed did: {@code burst} where none of them stayed whole. */
  public String verb() {
    return failed > 0 && burst == failed ? "burst" : "failed";
  }

  /**
   * In words: {@code 1 of 6 burst (1 in 238 to 2 in 3)}, {@code 2 of 9 failed (1 in 36 to 5 in 8),
   * 1 of them burst}, {@code none of 24 failed (at most 1 in 7)}.
   */
  public String words() {
    if (told == 0) {
      return untold == 0 ? "none fired" : untold + " fired, none told of yet";
    }
    String words = failures().words(verb());
    return burst == 0 || burst == failed ? words : words + ", " + burst + " of them burst";
  }
}
