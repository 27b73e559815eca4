package padside.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Flight;
import padside.flight.Kind;
import padside.flight.MemoryFlightLog;
import padside.flight.Rocket;
import padside.page.Form;
import padside.page.Page;
import padside.page.Table;
import padside.page.TextLine;
import padside.page.TextPage;
import padside.preflight.Settings;
import padside.units.Length;
import padside.units.UnitSystem;

/** The pages of the made-up season, and those of logs made for one question. */
class PagesTest {
  private static final Path GOLDENS = Path.of("src/test/resources/pages");

  private static String text(Page page) {
    return TextPage.lines(page, TextPage.USUAL_WIDTH).stream()
        .map(TextLine::text)
        .collect(Collectors.joining("\n", "", "\n"));
  }

  /** Rewritten by {@code -Dpadside.golden=rewrite}; look at every one that changed. */
  @ParameterizedTest
  @EnumSource(PageKind.class)
  void the_season_makes_these_pages(PageKind kind) throws IOException {
    Path kept = GOLDENS.resolve(kind.code() + ".txt");
    String text = text(DemoPages.any(kind));
    if (System.getProperty("padside.golden", "").equals("rewrite")) {
      Files.createDirectories(GOLDENS);
      Files.writeString(kept, text);
    }

    assertThat(text).isEqualTo(Files.readString(kept));
  }

  @ParameterizedTest
  @EnumSource(PageKind.class)
  void a_page_fits_its_width(PageKind kind) {
    for (int width : List.of(58, 80, 118)) {
      assertThat(TextPage.lines(DemoPages.any(kind), width))
          .as(kind + " " + width)
          .allSatisfy(line -> assertThat(line.text().length()).isLessThanOrEqualTo(width));
    }
  }

  @Test
  void a_season_counts_more_flights_than_a_logbook_holds() throws Exception {
    MemoryFlightLog log = new MemoryFlightLog();
    RecordId rocket = log.has(Kind.ROCKET, Facts.none().with(Rocket.NAME, "Alder"));
    RecordId day =
        log.has(Kind.DAY, Facts.none().with(Day.DATE, java.time.LocalDate.of(2026, 5, 2)));
    for (int i = 0; i < 700; i++) {
      log.has(
          Kind.FLIGHT,
          Facts.none()
              .with(Flight.STATUS, i < 690 ? Flight.Status.FLOWN : Flight.Status.SCRUBBED)
              .with(Flight.DAY, day)
              .with(Flight.ROCKET, rocket)
              .with(Flight.MOTOR, i % 2 == 0 ? "2xA8-3" : "C6-0 then C6-7")
              .with(Flight.BURN, i < 5 ? "cato_case" : "nominal")
              .with(Flight.PREDICTED_APOGEE, new Length(100))
              .with(Flight.ALTITUDE, new Length(100 + i % 3)));
    }
    Page season =
        Pages.of(
                PageKind.SEASON,
                "2026",
                DemoPages.source(log, Settings.standard().with(UnitSystem.METRIC)))
            .value()
            .orElseThrow();

    assertThat(told(season, "Flights")).isEqualTo("690");
    assertThat(told(season, "Called off")).isEqualTo("10");
    assertThat(told(season, "With a malfunction")).isEqualTo("5");
    assertThat(told(season, "Motors fired")).isEqualTo("1380");
    assertThat(told(season, "Highest")).isEqualTo("102 m");
    assertThat(table(season, "Flights by motor class").rows())
        .containsExactly(List.of("A", "342", "3"), List.of("C", "343", "2"));
    assertThat(text(season)).contains("half of 690 flights lie below 101 %");
  }

  @Test
  void the_name_that_is_set_stands_on_every_page_and_where_a_flier_is_asked_for() throws Exception {
    MemoryFlightLog log = new MemoryFlightLog();
    Facts burst =
        Facts.none().with(Flight.STATUS, Flight.Status.FLOWN).with(Flight.BURN, "cato_case");
    log.has(Kind.FLIGHT, burst.with(Flight.FLIER, "Bram <Varrowby>"));
    PageSource own = DemoPages.source(log, Settings.standard().withFlier("Ines Varrowby"));

    Page cards = Pages.of(PageKind.CARDS, "", own).value().orElseThrow();
    assertThat(told(cards, "Flier")).isEqualTo("Ines Varrowby");
    assertThat(text(cards).replaceAll("\\s+", " ")).contains("from the log of Ines Varrowby.");
    assertThat(
            text(Pages.of(PageKind.SEASON, "all", own).value().orElseThrow())
                .replaceAll("\\s+", " "))
        .contains("from the log of Ines Varrowby.");
    assertThat(told(Pages.of(PageKind.FAILURE, "", own).value().orElseThrow(), "Flier"))
        .as("the one named on the card")
        .isEqualTo("Bram <Varrowby>");

    log.has(Kind.FLIGHT, burst);
    assertThat(told(Pages.of(PageKind.FAILURE, "", own).value().orElseThrow(), "Flier"))
        .as("nobody else is named")
        .isEqualTo("Ines Varrowby");
  }

  private static String told(Page page, String label) {
    return page.sections().stream()
        .flatMap(section -> section.blocks().stream())
        .filter(Form.class::isInstance)
        .flatMap(form -> ((Form) form).entries().stream())
        .filter(entry -> entry.label().equals(label))
        .findFirst()
        .orElseThrow()
        .value();
  }

  private static Table table(Page page, String caption) {
    return page.tables().stream()
        .filter(table -> table.caption().equals(caption))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_stretch_of_dates_leaves_the_others_out() {
    Page spring = DemoPages.page(PageKind.SEASON, "2026-03-01..2026-05-29");

    assertThat(table(spring, "Days with a flight").rows())
        .extracting(row -> row.get(0))
        .containsExactly("2026-03-14", "2026-04-18");
  }

  @Test
  void what_cannot_be_found_is_told_in_a_sentence() {
    assertThat(DemoPages.reading(PageKind.DAY, "yesterday").objection().orElseThrow())
        .contains("\"yesterday\"")
        .contains("2026-05-02");
    assertThat(DemoPages.reading(PageKind.DAY, "2031-01-01").objection().orElseThrow())
        .contains("2031-01-01");
    assertThat(DemoPages.reading(PageKind.ROCKET, "Nobody").objection().orElseThrow())
        .contains("Nobody", "Tin Whistle");
    assertThat(DemoPages.reading(PageKind.SEASON, "20-26").objection().orElseThrow())
        .contains("20-26", "all");
    assertThat(
            DemoPages.reading(PageKind.SEASON, "2026-10-31..2026-03-01").objection().orElseThrow())
        .contains("before it begins");
    assertThat(DemoPages.reading(PageKind.FAILURE, "1999").objection().orElseThrow())
        .contains("1999");
  }

  @Test
  void an_empty_log_has_no_failure_and_still_gives_cards() throws Exception {
    PageSource empty = DemoPages.source(new MemoryFlightLog(), Settings.standard());
    for (PageKind kind : PageKind.values()) {
      var page = Pages.of(kind, "", empty);
      assertThat(page.objection().map(text -> text.endsWith(".")).orElse(true))
          .as("" + kind)
          .isTrue();
    }
    assertThat(Pages.of(PageKind.CARDS, "", empty).value()).isPresent();
  }

  @Test
  void a_report_of_a_failed_motor_leaves_blank_what_nobody_knows() {
    Page report = DemoPages.page(PageKind.FAILURE, "2026-05-30");

    assertThat(told(report, "Burn")).isEqualTo("CATO: case burst");
    assertThat(told(report, "Lot")).isEqualTo("B611");
    assertThat(told(report, "Maker")).isEmpty();
    assertThat(text(report)).contains("testing body", "Maker: ____");
  }

  @Test
  void of_very_many_failed_motors_the_newest_are_told() throws Exception {
    MemoryFlightLog log = new MemoryFlightLog();
    for (int i = 1; i <= 102; i++) {
      log.has(
          Kind.FLIGHT,
          Facts.none()
              .with(Flight.STATUS, Flight.Status.FLOWN)
              .with(Flight.MOTOR, "C6-5")
              .with(Flight.BURN, "cato_case")
              .with(Flight.NOTE, "number " + i + "."));
    }
    Page page =
        Pages.of(PageKind.FAILURE, "all", DemoPages.source(log, Settings.standard()))
            .value()
            .orElseThrow();

    assertThat(text(page))
        .contains("The newest 100 of 102", "number 3.", "number 102.")
        .doesNotContain("number 2.");
  }

  @Test
  void no_cell_of_a_page_drives_a_spreadsheet() throws Exception {
    MemoryFlightLog log = new MemoryFlightLog();
    log.has(Kind.ROCKET, Facts.none().with(Rocket.NAME, "=1+1\u001b[2J"));
    Page page =
        Pages.of(PageKind.ROCKET, "=1+1\u001b[2J", DemoPages.source(log, Settings.standard()))
            .value()
            .orElseThrow();

    String csv = Sheet.csv(page.tables());

    assertThat(csv).contains("\"'=1+1·[2J\"").doesNotContain("\u001b", "\"=");
  }
}
