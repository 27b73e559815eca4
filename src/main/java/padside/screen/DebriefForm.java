package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Flight;
import padside.form.Form;
import padside.form.FormField;
import padside.insight.Measured;
import padside.units.Notations;

/** How the fields of a debrief hang together: a boost asks where to, a mark gives the delay. */
final class DebriefForm {
  private static final String DELAY = Flight.MEASURED_DELAY.name();

  private DebriefForm() {}

  /** Filled with the outcome hoped for, with what is known, and with what the marks come to. */
  static Form of(Flight flight, World world) {
    // An emptied cell would empty the nominal one.
    Facts known = flight.facts().filled();
    Optional<?> timed = known.get(Flight.MEASURED_DELAY);
    Facts filled = DebriefFields.nominal(world.outcomes()).with(known);
    if (timed.isEmpty() && known.typed(Flight.MEASURED_DELAY).isEmpty()) {
      filled =
          filled.with(
              Flight.MEASURED_DELAY, Measured.of(flight.facts(), world.log().motors()).delay());
    }
    return Form.of(DebriefFields.of(flight, filled, world), filled);
  }

  /** The form after a key: the delay with its mark; a field left asks for others. */
  static Form fitted(Form before, Form now, Flight flight, World world) {
    Form timed = withDelay(before, now, flight, world);
    if (before.field().name().equals(now.field().name())) {
      return timed;
    }
    List<FormField<?>> fields = DebriefFields.of(flight, timed.facts(), world);
    if (names(fields).equals(names(timed.fields()))) {
      return timed;
    }
    Form fitted = timed.with(fields, timed.opened());
    boolean onward = now.at() == before.at() + 1;
    int next = names(fields).indexOf(before.field().name()) + 1;
    return onward && next > 0 && next < fields.size() ? fitted.to(next) : fitted;
  }

  private static List<String> names(List<FormField<?>> fields) {
    return fields.stream().<String>map(FormField::name).toList();
  }

  /** A delay that only said what the mark did says what it does now. */
  private static Form withDelay(Form before, Form now, Flight flight, World world) {
    String old = delay(before, flight, world);
    String fresh = delay(now, flight, world);
    return fresh.equals(old) || !now.text(DELAY).equals(old) ? now : now.set(DELAY, fresh);
  }

  private static String delay(Form form, Flight flight, World world) {
    Facts facts = flight.facts().with(form.facts());
    return Measured.of(facts, world.log().motors())
        .delay()
        .map(Notations.timeSpan()::show)
        .orElse("");
  }
}
