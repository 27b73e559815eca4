package padside.app;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Attempt;
import padside.flight.Fix;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Weather;

/**
 * A made-up season, so that every screen has something to show: invented rockets, fields and people
 * on motors of the motor table. What was measured comes from the flight model with a seeded
 * scatter; what the check said it says anew, knowing what was known at that moment.
 */
final class DemoSeason {
  private final FlightLog log;
  private final DemoNames names = new DemoNames();
  private final DemoForms forms = new DemoForms(names);
  private final DemoFlights flights;
  private final Map<RecordId, RecordId> lastFlights = new HashMap<>();
  private LocalDate date = LocalDate.MIN;
  private RecordId day = new RecordId("none");

  private DemoSeason(FlightLog log, DemoScript script) {
    this.log = log;
    this.flights = new DemoFlights(log, forms, new DemoOutcome(names, script));
  }

  /** Writes the season into an empty log; the same season every time but for the record ids. */
  static void write(FlightLog log) throws Fault {
    DemoScript script = DemoScript.shipped();
    DemoSeason season = new DemoSeason(log, script);
    for (List<DemoStep> act : script.acts()) {
      season.play(act);
    }
  }

  private void play(List<DemoStep> act) throws Fault {
    DemoStep first = act.get(0);
    switch (first.does()) {
      case "day" -> open(first);
      case "weather" -> weather(first);
      case "flight" -> fly(first);
      case "planned" -> flights.plan(first, day);
      case "attempt" -> misfired(first);
      case "fix" -> note(first);
      case "mended" -> change(Kind.FIX, first, "mark as mended", Facts.none().with(Fix.DONE, true));
      case "recounted" -> change(Kind.LOT, first, "change lot", Facts.none());
      default -> add(kind(first), act, Facts.none());
    }
  }

  private static Kind kind(DemoStep step) {
    return Kind.find(step.does()).orElseThrow(() -> step.wrong("does nothing known"));
  }

  /** Adds records of one kind as one action. */
  private List<RecordId> add(Kind kind, List<DemoStep> act, Facts more) throws Fault {
    List<Action.Change> changes =
        act.stream()
            .map(step -> forms.read(kind, step).with(more))
            .map(facts -> new Action.Change(kind, Optional.empty(), facts))
            .toList();
    List<RecordId> records = log.save(new Action("add " + kind.code(), changes));
    for (int i = 0; i < act.size(); i++) {
      names.put(kind, act.get(i), records.get(i));
    }
    return records;
  }

  private void open(DemoStep step) throws Fault {
    day = add(Kind.DAY, List.of(step), Facts.none()).get(0);
    date = LocalDate.parse(step.subject());
  }

  private void weather(DemoStep step) throws Fault {
    add(
        Kind.WEATHER,
        List.of(step),
        Facts.none().with(Weather.DAY, day).with(Weather.AT, at(step.subject())));
  }

  private void fly(DemoStep step) throws Fault {
    RecordId flight = flights.play(step, day, at(step.get("at")));
    lastFlights.put(names.get(Kind.ROCKET, step.subject()), flight);
  }

  /** Told behind the flight that its card became in the end. */
  private void misfired(DemoStep step) throws Fault {
    Facts facts =
        forms
            .read(Kind.ATTEMPT, step)
            .with(Attempt.AT, at(step.get("at")))
            .with(Attempt.FLIGHT, lastFlights.get(names.get(Kind.ROCKET, step.subject())));
    log.save(Action.create("add attempt", Kind.ATTEMPT, facts));
  }

  /** A fix is known by its text. */
  private void note(DemoStep step) throws Fault {
    Facts facts =
        forms
            .read(Kind.FIX, step)
            .with(Fix.FLIGHT, lastFlights.get(names.get(Kind.ROCKET, step.subject())));
    RecordId fix = log.save(Action.create("add fix", Kind.FIX, facts)).get(0);
    names.put(Kind.FIX, new DemoStep(Map.of("fix", step.get("text"))), fix);
  }

  private void change(Kind kind, DemoStep step, String label, Facts more) throws Fault {
    RecordId record = names.get(kind, step.subject());
    log.save(Action.change(label, kind, record, forms.read(kind, step).with(more)));
  }

  /** A clock time of the script, which counts in UTC, on the day it has come to. */
  private Instant at(String time) {
    return date.atTime(LocalTime.parse(time)).toInstant(ZoneOffset.UTC);
  }
}
