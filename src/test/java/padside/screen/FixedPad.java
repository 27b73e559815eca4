package padside.screen;

import java.util.ArrayList;
import java.util.List;
import padside.flight.Ruling;
import padside.preflight.Answer;

/** Made-up answers with what is told at the pad. */
final class FixedPad {
  private FixedPad() {}

  /** With how far people stand back, as the check words it. */
  static Answer standingBack(Answer answer) {
    Ruling ruling = answer.ruling();
    List<Ruling.Finding> findings = new ArrayList<>(ruling.findings());
    findings.add(
        new Ruling.Finding(
            "stand back", Ruling.Verdict.GO, "stand back 15 ft", "US model code, seen"));
    return new Answer(
        new Ruling(ruling.verdict(), ruling.limit(), ruling.reason(), ruling.limits(), findings),
        answer.headline(),
        answer.outlook(),
        answer.reminders(),
        answer.advice());
  }
}
