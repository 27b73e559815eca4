package padside.form;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import padside.fact.Column;
import padside.fact.Facts;
import padside.units.Notation;

/**
 * Doubts a part that is not less than the whole, which another field of the form has.
 *
 * @param what is measured, as the sentence begins: {@code Booster mass}
 * @param whole where the other field keeps its value
 * @param ofWhole what that is, within the sentence: {@code bare mass}
 * @param size puts values in order
 */
public record Below<T>(
    String what, Column<T> whole, String ofWhole, Notation<T> notation, ToDoubleFunction<T> size)
    implements Rule<T> {
  @Override
  public Optional<String> doubt(T value) {
    return Optional.empty();
  }

  @Override
  public Optional<String> doubt(T value, Facts form) {
    return form.get(whole)
        .filter(all -> size.applyAsDouble(value) >= size.applyAsDouble(all))
        .map(
            all ->
                "%s %s is not below the %s of %s, which it is a part of; check both, or go on and keep it."
                    .formatted(what, notation.show(value), ofWhole, notation.show(all)));
  }
}
