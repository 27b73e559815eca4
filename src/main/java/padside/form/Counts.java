package padside.form;

import padside.units.Notation;
import padside.units.Reading;

/**
 * Whole numbers of things.
 *
 * @param belowZero whether fewer than none makes sense, as for a correction
 */
public record Counts(boolean belowZero) implements Notation<Integer> {
  @Override
  public Reading<Integer> read(String typed) {
    String text = typed.strip().replace('\u2212', '-');
    if (!text.matches("[+-]?[0-9]{1,6}")) {
      return Reading.refused(
          Reading.echo(typed) + " is not a whole number; type it like " + example() + ".");
    }
    int count = Integer.parseInt(text);
    return count < 0 && !belowZero
        ? Reading.refused(
            Reading.echo(text) + " is below zero; type a count like " + example() + ".")
        : Reading.of(count);
  }

  @Override
  public String show(Integer count) {
    return String.valueOf(count);
  }

  @Override
  public String example() {
    return belowZero ? "-1" : "3";
  }
}
