package padside.screen;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.flight.Attempt;
import padside.flight.Flight;

/** Misfires told in words. */
final class MisfireText {
  private MisfireText() {}

  /** Which attempt comes next or was the one that flew, from the second on: {@code 2nd attempt}. */
  static Optional<String> attempt(Flight flight, World world) {
    int before = world.log().attemptsOf(flight.id()).size();
    return before == 0 ? Optional.empty() : Optional.of(ordinal(before + 1) + " attempt");
  }

  private static String ordinal(int number) {
    boolean teen = number / 10 % 10 == 1;
    String end =
        teen ? "th" : List.of("th", "st", "nd", "rd").get(number % 10 > 3 ? 0 : number % 10);
    return number + end;
  }

  /** {@code 10:31 igniter burnt and the motor unlit, igniter own copper}. */
  static String told(Attempt attempt, World world) {
    Facts facts = attempt.facts();
    List<String> parts = new ArrayList<>();
    facts
        .get(Attempt.CAUSE)
        .map(code -> world.outcomes().words(Attempt.CAUSE.name(), code))
        .ifPresent(parts::add);
    facts
        .get(Attempt.IGNITER)
        .filter(text -> !text.isBlank())
        .map("igniter "::concat)
        .ifPresent(parts::add);
    facts.get(Attempt.NOTE).filter(text -> !text.isBlank()).ifPresent(parts::add);
    String time =
        facts
            .get(Attempt.AT)
            .map(at -> at.atZone(world.zone()).toLocalTime().truncatedTo(ChronoUnit.MINUTES) + " ")
            .orElse("");
    return time + (parts.isEmpty() ? "cause not told" : String.join(", ", parts));
  }
}
