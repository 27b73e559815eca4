package padside.form;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import padside.units.Notation;

/**
 * Doubts what lies outside the usual range, bounds included in it. The ranges of the forms are
 * common practice, no source, unless the field says otherwise; nothing is refused by them.
 *
 * @param what is measured, as the sentence begins: {@code Rod length}
 * @param size puts values in order
 */
public record Range<T>(String what, Notation<T> notation, ToDoubleFunction<T> size, T least, T most)
    implements Rule<T> {
  @Override
  public Optional<String> doubt(T value) {
    double given = size.applyAsDouble(value);
    if (given >= size.applyAsDouble(least) && given <= size.applyAsDouble(most)) {
      return Optional.empty();
    }
    return Optional.of(
        what
            + " "
            + notation.show(value)
            + " is outside "
            + notation.show(least)
            + " to "
            + notation.show(most)
            + "; check the number and its unit, or go on and keep it.");
  }
}
