package padside.app;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.FlightLog;
import padside.flight.Logbook;
import padside.plan.Packing;
import padside.plan.Plan;
import padside.plan.PlanDays;
import padside.preflight.Answer;
import padside.preflight.LotRecords;
import padside.preflight.Preflight;
import padside.preflight.Settings;
import padside.screen.PlanText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Tells the plan of a day and its packing list. */
@Command(
    name = "plan",
    description = {
      "The flights planned for a day, what wind each stands, what the range box lacks for it, and"
          + " what to pack.",
      "Each is checked in still air: the wind of that day nobody knows yet."
    },
    footer = {"", "Exit status: 0 done, 1 the log failed, 2 wrong input."})
final class PlanCommand implements Callable<Integer> {
  @Mixin private Output output;
  @ParentCommand private RootCommand root;
  @Spec private CommandSpec spec;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "of this day, such as 2026-05-02; else of the next with a plan")
  private String date;

  @Override
  public Integer call() throws Fault {
    Logbook book = book();
    Optional<Day> day = date == null ? next(book) : Optional.of(dated(book));
    if (day.isEmpty()) {
      output.print(
          PlanJson.nothing(),
          () -> List.of("No day to plan for; padside opens one with t on the Day screen."));
      return Exit.DONE;
    }
    Settings settings = root.settings().settings();
    Plan plan = Plan.of(day.get(), book);
    Packing packing = Packing.of(plan, book, Shipped.packing());
    Map<RecordId, Answer> answers = answers(plan, book, settings);
    output.print(
        new PlanJson(plan, packing, answers, book).whole(),
        () -> PlanText.whole(plan, answers, packing, book, settings.units()));
    return Exit.DONE;
  }

  private Logbook book() throws Fault {
    try (FlightLog open = root.openLogToRead()) {
      return Logbook.readWhole(open, Shipped.motors());
    }
  }

  private static Optional<Day> next(Logbook book) {
    return PlanDays.of(book, new ThisMachine().today(book)).first();
  }

  /** Of two days on one date the one with a plan, else the one opened last. */
  private Day dated(Logbook book) {
    return PlanDays.of(book, wanted()).days().stream()
        .filter(day -> day.date().equals(Optional.of(wanted())))
        .reduce((first, second) -> Plan.of(second, book).lines().isEmpty() ? first : second)
        .orElseThrow(
            () ->
                refused(
                    "There is no day \""
                        + date
                        + "\" in this log; leave --date out for the next one."));
  }

  private LocalDate wanted() {
    try {
      return LocalDate.parse(date);
    } catch (DateTimeParseException e) {
      throw refused("--date is \"" + date + "\"; write it like 2026-05-02.");
    }
  }

  private ParameterException refused(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  private static Map<RecordId, Answer> answers(Plan plan, Logbook book, Settings settings) {
    Preflight preflight = new Preflight(settings);
    LotRecords records = new LotRecords(book, Shipped.outcomes());
    Map<RecordId, Answer> answers = new LinkedHashMap<>();
    for (Plan.Line line : plan.lines()) {
      answers.put(
          line.flight().id(), preflight.answer(PlanText.inStillAir(line.flight(), records)));
    }
    return answers;
  }
}
