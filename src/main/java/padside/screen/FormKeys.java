package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.form.Form;

/** The keys every form has in common. */
final class FormKeys {
  static final Binding NEXT =
      Binding.of("<tab><enter><pagedown>", "next", "accept the field and go on");
  static final Binding BACK = Binding.of("<s-tab><pageup>", "back", "accept the field and go back");
  static final Binding UP_DOWN =
      Binding.of(
          "<down><up>", "", "through a list where the field has one, else through the fields");
  static final Binding CLEAR = Binding.of("<c-u><f11>", "", "empty the field");

  /** For footers and help, in this order. */
  static final List<Binding> TABLE = List.of(NEXT, BACK, UP_DOWN, CLEAR);

  private FormKeys() {}

  /** The form after a key of its own; empty when the key means nothing to forms. */
  static Optional<Form> press(Form form, Key key) {
    if (key.character().isPresent()) {
      return Optional.of(form.type(key.name()));
    }
    if (NEXT.has(key)) {
      return Optional.of(form.next());
    }
    if (BACK.has(key)) {
      return Optional.of(form.previous());
    }
    if (CLEAR.has(key)) {
      return Optional.of(form.clear());
    }
    return edited(form, key).or(() -> moved(form, key));
  }

  private static Optional<Form> edited(Form form, Key key) {
    return switch (key.name()) {
      case "<backspace>" -> Optional.of(form.backspace());
      case "<delete>" -> Optional.of(form.delete());
      case "<left>" -> Optional.of(form.left());
      case "<right>" -> Optional.of(form.right());
      case "<home>" -> Optional.of(form.home());
      case "<end>" -> Optional.of(form.end());
      default -> Optional.empty();
    };
  }

  private static Optional<Form> moved(Form form, Key key) {
    boolean list = !form.suggestions().isEmpty();
    return switch (key.name()) {
      case "<down>" -> Optional.of(list ? form.pickNext() : form.next());
      case "<up>" -> Optional.of(list ? form.pickPrevious() : form.previous());
      default -> Optional.empty();
    };
  }
}
