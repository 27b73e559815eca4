package padside.screen;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.Kind;

/** One thing to mend as a debrief notes it; several stand in one line, divided by semicolons. */
record ToMend(String text, Fix.Severity severity) {
  private static final String GROUNDS = "!";

  /**
   * All that a debrief notes.
   *
   * @param debrief with the line, and the severity of those that do not say their own
   */
  static List<ToMend> in(Facts debrief) {
    Fix.Severity usual = debrief.get(Flight.TO_MEND_SEVERITY).orElse(Fix.Severity.LOOK_AT);
    return Stream.of(debrief.get(Flight.TO_MEND).orElse("").split(";", -1))
        .map(String::strip)
        .filter(piece -> !piece.isEmpty())
        .map(piece -> of(piece, usual))
        .toList();
  }

  /** {@code reglue fin 2!} grounds the rocket, as does {@code reglue fin 2, grounds it}. */
  private static ToMend of(String piece, Fix.Severity usual) {
    if (piece.endsWith(GROUNDS)) {
      return named(piece, piece.substring(0, piece.length() - 1), Fix.Severity.GROUNDS_IT);
    }
    for (Fix.Severity severity : Fix.Severity.values()) {
      String words = ", " + severity.words();
      if (piece.toLowerCase(Locale.ROOT).endsWith(words)) {
        return named(piece, piece.substring(0, piece.length() - words.length()), severity);
      }
    }
    return new ToMend(piece, usual);
  }

  private static ToMend named(String piece, String text, Fix.Severity severity) {
    return new ToMend(text.isBlank() ? piece : text.strip(), severity);
  }

  /** What becomes of a debrief's line, as it is told: {@code reglue fin 2 (grounds it); ...}. */
  static Optional<String> told(Facts debrief) {
    List<ToMend> all = in(debrief);
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(
            all.stream()
                .map(each -> each.text + " (" + each.severity.words() + ")")
                .collect(Collectors.joining("; ", "To mend: ", "")));
  }

  /** As a record of its own, raised after a flight. */
  Action.Change fix(RecordId rocket, RecordId flight) {
    return new Action.Change(
        Kind.FIX,
        Optional.empty(),
        Facts.none()
            .with(Fix.ROCKET, rocket)
            .with(Fix.TEXT, text, text)
            .with(Fix.SEVERITY, severity)
            .with(Fix.FLIGHT, flight));
  }
}
