package padside.report;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import padside.app.DemoLog;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.flight.OutcomeTable;
import padside.motor.MotorTable;
import padside.page.Page;
import padside.preflight.Settings;
import padside.screen.KeyCard;
import padside.units.Reading;

/** Pages of the made-up season as they are made on one day after it. */
public final class DemoPages {
  private static final FlightLog SEASON = DemoLog.written();

  private DemoPages() {}

  /** What the pages of the season are made of. */
  public static PageSource source() {
    return source(SEASON, Settings.standard());
  }

  /** Of another log on the same day. */
  public static PageSource source(FlightLog log, Settings settings) {
    try (Reader motors = Files.newBufferedReader(Path.of("data/motors.csv"));
        Reader outcomes = Files.newBufferedReader(Path.of("data/outcomes.csv"))) {
      return new PageSource(
          log,
          new MotorTable(MotorTable.read(motors, "motors.csv").types()),
          OutcomeTable.read(outcomes),
          settings,
          ZoneId.of("Europe/London"),
          LocalDate.of(2026, 10, 18),
          KeyCard.ofMainScreens());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One of the season's. */
  public static Page page(PageKind kind, String which) {
    return reading(kind, which).value().orElseThrow();
  }

  static Reading<Page> reading(PageKind kind, String which) {
    try {
      return Pages.of(kind, which, source());
    } catch (Fault e) {
      throw new AssertionError("a log in memory cannot fail", e);
    }
  }

  /** One of each kind. */
  public static Page any(PageKind kind) {
    return page(kind, kind == PageKind.ROCKET ? "Tin Whistle" : "");
  }
}
