package padside.fact;

/**
 * The outside world failed: disk, folder, a log from a newer version. Says what happened with the
 * value seen, and what to do; the form underneath stays as it is.
 */
public final class Fault extends Exception {
  private static final long serialVersionUID = 1L;

  private final String code;
  private final String nextStep;

  /**
   * Makes a fault.
   *
   * @param code short and stable, such as {@code log-newer}
   * @param sentence what happened, with the value seen
   * @param nextStep what the flier can do
   */
  public Fault(String code, String sentence, String nextStep) {
    super(sentence);
    this.code = code;
    this.nextStep = nextStep;
  }

  public Fault(String code, String sentence, String nextStep, Throwable cause) {
    super(sentence, cause);
    this.code = code;
    this.nextStep = nextStep;
  }

  public String code() {
    return code;
  }

  public String sentence() {
    return getMessage();
  }

  public String nextStep() {
    return nextStep;
  }
}
