package padside.form;

import padside.units.Notation;
import padside.units.Reading;

/**
 * Text as it is typed.
 *
 * @param example one example, for hints
 */
public record Texts(String example) implements Notation<String> {
  @Override
  public Reading<String> read(String typed) {
    return Reading.of(typed.strip());
  }

  @Override
  public String show(String value) {
    return value;
  }
}
