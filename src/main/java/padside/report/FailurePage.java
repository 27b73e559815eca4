package padside.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.flight.OutcomeTable;
import padside.insight.Reliability;
import padside.page.Block;
import padside.page.Page;
import padside.page.Prose;
import padside.units.Reading;

/**
 * Motors that failed, told as who made or tested them asks: what the log knows and room for pen.
 */
final class FailurePage {
  private static final String WHERE =
      "Send it where the national association or the testing body you fly under asks for reports of"
          + " failed motors; what that body's own form asks stands above this page. Keep what is"
          + " left of the motor, its case and packaging, and fire no more of the lot until you have"
          + " an answer.";

  private static final FlightLog.Sought WANTED =
      FlightLog.Sought.of(Taught.ALIKE, Taught.and(List.of(Flight.DAY), Taught.OWN));

  /** Nobody reports more in one letter. */
  private static final int MOST = 100;

  private FailurePage() {}

  /** True of facts that tell of a motor or its charge failing. */
  static Predicate<Facts> failure(OutcomeTable outcomes) {
    return outcomes
        .malfunction(Flight.BURN.name())
        .or(outcomes.malfunction(Flight.EJECTION.name()));
  }

  static Reading<Page> of(String which, PageSource source) throws Fault {
    Register register = Register.of(source.log());
    List<RecordId> failed = new ArrayList<>();
    Reading<Dates> dates = which.isEmpty() ? Reading.of(Dates.ALL) : Dates.read(which);
    ByLikeness<Boolean> failure = new ByLikeness<>(failure(source.outcomes())::test);
    ByLikeness<Boolean> flown = new ByLikeness<>(FailurePage::isFlown);
    Taught taught = new Taught();
    source
        .log()
        .each(
            WANTED,
            flight -> {
              Optional<LocalDate> date = register.date(flight.own().get(Flight.DAY));
              boolean asked =
                  flight.id().text().equals(which)
                      || (failure.of(flight.alike())
                          && dates.value().filter(each -> each.holds(date)).isPresent());
              if (asked) {
                failed.add(flight.id());
              }
              if (flown.of(flight.alike())) {
                taught.take(flight);
              }
            });
    if (failed.isEmpty()) {
      return Reading.refused(none(which, dates));
    }
    return Reading.of(
        page(
            which.isEmpty() ? failed.subList(failed.size() - 1, failed.size()) : failed,
            source.book().with(taught.past()),
            source));
  }

  private static boolean isFlown(Facts facts) {
    return facts.get(Flight.STATUS).filter(Flight.Status.FLOWN::equals).isPresent();
  }

  private static String none(String which, Reading<Dates> dates) {
    return dates
        .objection()
        .orElse(
            which.isEmpty()
                ? "No motor has failed in this log; its debrief tells that."
                : "No motor failed in "
                    + dates.value().orElseThrow().words()
                    + "; leave the dates out for the last failure.");
  }

  private static Page page(List<RecordId> failed, Logbook book, PageSource source) throws Fault {
    List<Page.Section> sections = new ArrayList<>();
    sections.add(Page.Section.of("", Prose.notice(WHERE)));
    Reliability reliability = new Reliability(book, source.outcomes());
    List<RecordId> told = failed.subList(Math.max(0, failed.size() - MOST), failed.size());
    if (told.size() < failed.size()) {
      sections.add(
          Page.Section.of(
              "",
              Prose.of(
                  "The newest %d of %d; dates like 2022-08 tell others."
                      .formatted(told.size(), failed.size()))));
    }
    for (RecordId id : told) {
      Optional<Stored> stored = source.log().find(Kind.FLIGHT, id);
      if (stored.isPresent()) {
        Flight flight = new Flight(id, stored.get().facts());
        List<Block> blocks =
            new ArrayList<>(new FailureForm(flight, book, source, reliability).forms());
        String motor = flight.motor().orElse("motor not named");
        String date =
            flight
                .day()
                .flatMap(book::day)
                .flatMap(day -> day.date())
                .map(FlightWords::date)
                .orElse("no date");
        String name = motor + ", " + date;
        blocks.addAll(new TracePlot(source.units()).of(List.of(new TracePlot.Named(name, flight))));
        sections.add(new Page.Section(name, blocks));
      }
    }
    return new Page(
        failed.size() == 1 ? "Report of a failed motor" : "Reports of failed motors",
        source.made("What the log knows; what it does not is left to be filled in by pen."),
        sections);
  }
}
