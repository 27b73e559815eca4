package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Place;
import padside.form.Rule;
import padside.units.Notations;

/** The wind typed in place at the pad. */
final class PadWind {
  static final Binding KEEP =
      Binding.of("<enter><f2>", "keep", "keep it as read now, on the day and on the card");
  private static final Binding LEAVE =
      Binding.of("<esc>", "leave", "the wind stays as it was read before");

  static final List<Binding> TABLE = List.of(KEEP, LEAVE, FormKeys.CLEAR);

  private PadWind() {}

  /**
   * One field; Enter alone says that the wind was looked at and is the same, or takes the meter's
   * that stands there.
   */
  static Form of(Flight card, World world) {
    Optional<Facts> wire = ByWire.taken(card.facts(), world);
    return Form.of(
        List.of(
            new FormField<>(
                Place.wind(),
                "Wind",
                Notations.wind(world.settings().units()),
                Rule.none(),
                wire.isPresent()
                    ? "Enter goes by the meter; or type one like 6g9 SW."
                    : "Like 6g9 SW, calm or B3 W; Enter keeps it as read now.")),
        card.facts().with(wire.orElse(Facts.none())));
  }

  /** True of a wind that can be read. */
  static boolean isRead(Form form) {
    return !form.entry().typed().isBlank() && form.firstObjection().isEmpty();
  }
}
