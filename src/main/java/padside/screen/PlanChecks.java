package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.preflight.Answer;
import padside.preflight.Card;
import padside.preflight.LotRecords;

/**
 * Puts the flights of a plan to the check one after the other, as the check looks only at the
 * newest card it is asked about.
 *
 * @param screen number of the screen that asks
 * @param serial of the question asked last
 * @param asked what it was about, while it is not answered
 */
record PlanChecks(long screen, long serial, Optional<Question> asked, List<Answered> answers) {
  /** A flight as it is put to the check. */
  record Question(RecordId flight, Card card) {}

  /** What the check said to it. */
  record Answered(Question question, Answer answer) {}

  /** The checks and the effects they want. */
  record Asked(PlanChecks checks, List<Effect> effects) {}

  /** Keeps its own list. */
  PlanChecks {
    answers = List.copyOf(answers);
  }

  static PlanChecks of(long screen) {
    return new PlanChecks(screen, 0, Optional.empty(), List.of());
  }

  /** Asks about the first flight whose answer is missing or was given to something else. */
  Asked ask(List<Flight> flights, World world) {
    LotRecords records = new LotRecords(world.log(), world.outcomes());
    List<Question> questions =
        flights.stream()
            .map(flight -> new Question(flight.id(), PlanText.inStillAir(flight, records)))
            .toList();
    List<Answered> current = new ArrayList<>(answers);
    current.removeIf(answered -> !questions.contains(answered.question()));
    Optional<Question> next =
        questions.stream()
            .filter(question -> current.stream().noneMatch(a -> a.question().equals(question)))
            .findFirst();
    if (next.equals(asked)) {
      return new Asked(new PlanChecks(screen, serial, asked, current), List.of());
    }
    PlanChecks checks = new PlanChecks(screen, serial + 1, next, current);
    return new Asked(
        checks,
        next.map(each -> new Effect.Check(new Ticket(screen, checks.serial), each.card()))
            .map(List::<Effect>of)
            .orElse(List.of()));
  }

  /** Takes the answer to what was asked last. */
  PlanChecks on(Event.Checked checked) {
    if (asked.isEmpty() || !checked.ticket().equals(new Ticket(screen, serial))) {
      return this;
    }
    List<Answered> more = new ArrayList<>(answers);
    more.add(new Answered(asked.get(), checked.answer()));
    return new PlanChecks(screen, serial, Optional.empty(), more);
  }

  /** The question may have made way for another screen's: it is asked once more. */
  PlanChecks anew() {
    return new PlanChecks(screen, serial, Optional.empty(), answers);
  }

  /** What the check said to a flight, as far as it has come. */
  Optional<Answer> of(Flight flight) {
    return answers.stream()
        .filter(answered -> answered.question().flight().equals(flight.id()))
        .map(Answered::answer)
        .findFirst();
  }
}
