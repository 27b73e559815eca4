package padside.report;

import padside.fact.Fault;
import padside.page.Page;
import padside.units.Reading;

/** Makes pages of the log, as many flights as there are for them. */
public final class Pages {
  private Pages() {}

  /**
   * A page, or why there is none.
   *
   * @param which of its kind, as {@link PageKind#which} tells, blank for the usual one; the id of a
   *     record does too
   */
  public static Reading<Page> of(PageKind kind, String which, PageSource source) throws Fault {
    String wanted = which.strip();
    return switch (kind) {
      case DAY -> DayPage.of(wanted, source);
      case ROCKET -> RocketPage.of(wanted, source);
      case SEASON -> SeasonPage.of(wanted, source);
      case MOTORS -> MotorsPage.of(wanted, source);
      case FAILURE -> FailurePage.of(wanted, source);
      case CARDS -> Reading.of(CardsPage.of(source));
      case KEYS -> Reading.of(KeysPage.of(source));
    };
  }
}
