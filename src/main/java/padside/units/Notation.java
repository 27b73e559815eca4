package padside.units;

/** How a value of one kind is written: reads what a flier types and shows it again. */
public interface Notation<T> {
  /** Reads typed text; surrounding blanks and letter case do not matter. */
  Reading<T> read(String typed);

  /** Shows a value so that {@link #read} takes it back, rounded as a flier would say it. */
  String show(T value);

  /** One example of right input, for objections and hints. */
  String example();
}
