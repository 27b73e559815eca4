package padside.report;

import java.util.ArrayList;
import java.util.List;
import padside.page.Block;
import padside.page.Form;
import padside.page.Page;

/** Cards to be filled by pen when no machine is at hand, and typed in afterwards. */
final class CardsPage {
  private static final int CARDS = 3;

  private CardsPage() {}

  static Page of(PageSource source) {
    List<Block> cards = new ArrayList<>();
    for (int i = 0; i < CARDS; i++) {
      cards.add(card(source));
      cards.add(debrief());
    }
    return new Page(
        "Blank flight cards",
        source.made(
            "To be filled by pen when the battery is flat, cut apart and typed in later."
                + " Tell the unit with every number."),
        List.of(new Page.Section("", cards)));
  }

  private static Form card(PageSource source) {
    return new Form(
        "Flight card",
        List.of(
            half("Rocket"),
            Form.Entry.of("Flier", source.flier().orElse("")),
            half("Date, time"),
            half("Field, pad"),
            half("Motor and delay"),
            half("Lot"),
            half("Recovery, checked"),
            half("Altimeter"),
            half("Bare mass"),
            half("Rod length"),
            half("Rod tilt, toward"),
            half("Wind, gust, from"),
            half("Check: GO / MARGINAL / NO-GO"),
            half("Stand back"),
            wide("Wadding · hooked · lug · igniter · sky · people · key"),
            wide("Note")),
        true);
  }

  private static Form debrief() {
    return new Form(
        "Debrief",
        List.of(
            half("Lift-off at"),
            half("Misfires, why"),
            half("Boost: straight, arced toward"),
            half("Burn: nominal, or what"),
            half("Ejection after s: apogee, early, late"),
            half("Down after s"),
            half("Recovery: full, or what"),
            half("Landing: soft, hard, on"),
            half("Altitude"),
            half("Lies toward, distance"),
            wide("Condition, part by part"),
            wide("To mend; ! grounds it")),
        true);
  }

  private static Form.Entry half(String label) {
    return Form.Entry.of(label, "");
  }

  private static Form.Entry wide(String label) {
    return Form.Entry.wide(label, "");
  }
}
