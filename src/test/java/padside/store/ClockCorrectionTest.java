package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.clock.Anchor;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Attempt;
import padside.flight.Day;
import padside.flight.Fix;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.Kind;
import padside.flight.Operation;
import padside.flight.Weather;
import padside.units.TimeSpan;

/** What a machine with a wrong clock put into the log is corrected, start by start. */
class ClockCorrectionTest {
  private static final Instant TRUE_MORNING = Instant.parse("2026-10-17T08:00:00Z");
  private static final Duration FIFTY_YEARS = Duration.ofDays(18_262);

  @TempDir Path folder;
  private final Bench bench = new Bench();

  /** A machine that is restarted and whose clock of the day is set at will. */
  private static final class Bench implements Machine {
    private final Random names = new Random(4);
    private Instant truth = TRUE_MORNING;
    private Duration wrong = Duration.ZERO;
    private Instant started = TRUE_MORNING.minusSeconds(600);
    private String boot = "boot-1";

    void pass(Duration time) {
      truth = truth.plus(time);
    }

    void reboot() {
      started = truth;
      boot += "'";
      pass(Duration.ofSeconds(30));
    }

    Instant shown() {
      return truth.plus(wrong);
    }

    TimeSpan up() {
      return new TimeSpan(uptimeSeconds());
    }

    @Override
    public long wallMillis() {
      return shown().toEpochMilli();
    }

    @Override
    public double uptimeSeconds() {
      return Duration.between(started, truth).toMillis() / 1e3;
    }

    @Override
    public String freshRun() {
      byte[] bits = new byte[10];
      names.nextBytes(bits);
      return HexFormat.of().formatHex(bits);
    }

    @Override
    public Identity identity() {
      return new Identity("bench", boot, "UTC", "proc", "0.1.0", 4711);
    }
  }

  private LogFolder open() throws Fault {
    return LogFolder.open(folder, bench);
  }

  private RecordId reading(LogFolder log) throws Fault {
    return kept(
        log,
        Kind.WEATHER,
        Facts.none()
            .with(Weather.AT, bench.shown())
            .with(Weather.UP, bench.up())
            .with(Weather.BOOT, bench.boot));
  }

  private static RecordId kept(LogFolder log, Kind kind, Facts facts) throws Fault {
    return log.save(Action.create("keep", kind, facts)).get(0);
  }

  private static <T> Optional<T> value(LogFolder log, Kind kind, RecordId id, Column<T> column)
      throws Fault {
    return log.find(kind, id).orElseThrow().facts().get(column);
  }

  /** What was told for the clock, kept as the screens keep it. */
  private List<RecordId> told(LogFolder log, Anchor.How how) throws Fault {
    Anchor anchor = new Anchor(bench.boot, bench.up(), bench.truth, how);
    return log.save(log.clockAction(anchor));
  }

  @Test
  void every_stamp_of_this_start_moves_by_its_own_uptime_and_no_other_does() throws Exception {
    try (LogFolder log = open()) {
      RecordId earlier = reading(log);
      bench.reboot();
      assertThat(value(log, Kind.WEATHER, earlier, Weather.AT)).contains(TRUE_MORNING);
    }
    bench.wrong = FIFTY_YEARS.negated();
    Instant read = bench.truth;
    try (LogFolder log = open()) {
      reading(log);
    }
    bench.pass(Duration.ofMinutes(20));
    bench.wrong = Duration.ofDays(1);
    try (LogFolder log = open()) {
      Instant lifted = bench.truth;
      RecordId flight = flight(log);
      bench.pass(Duration.ofMinutes(1));
      Instant misfired = bench.truth;
      RecordId attempt = kept(log, Kind.ATTEMPT, Facts.none().with(Attempt.AT, bench.shown()));
      bench.pass(Duration.ofMinutes(1));

      assertThat(told(log, Anchor.How.SET)).as("the anchor and three").hasSize(4);
      assertThat(log.list(Kind.WEATHER))
          .extracting(each -> each.facts().get(Weather.AT).orElseThrow())
          .containsExactly(TRUE_MORNING, read);
      assertThat(value(log, Kind.FLIGHT, flight, Flight.LIFTOFF_AT)).contains(lifted);
      assertThat(value(log, Kind.FLIGHT, flight, Flight.TOUCHDOWN_MARK))
          .contains(new TimeSpan(64.5));
      assertThat(value(log, Kind.ATTEMPT, attempt, Attempt.AT))
          .as("without an uptime beside it, by that of its line")
          .contains(misfired);
    }
  }

  private RecordId flight(LogFolder log) throws Fault {
    return kept(
        log,
        Kind.FLIGHT,
        Facts.none()
            .with(Flight.LIFTOFF_AT, bench.shown())
            .with(Flight.LIFTOFF_UP, bench.up())
            .with(Flight.LIFTOFF_BOOT, bench.boot)
            .with(Flight.TOUCHDOWN_MARK, new TimeSpan(64.5)));
  }

  @Test
  void dates_move_by_the_days_the_clock_was_off_when_each_was_given() throws Exception {
    bench.wrong = FIFTY_YEARS.negated();
    try (LogFolder log = open()) {
      LocalDate shown = LocalDate.of(1976, 10, 17);
      RecordId day = kept(log, Kind.DAY, Facts.none().with(Day.DATE, shown));
      RecordId ahead = kept(log, Kind.DAY, Facts.none().with(Day.DATE, shown.plusDays(1)));
      bench.pass(Duration.ofMinutes(5));
      bench.wrong = Duration.ofDays(1);
      LocalDate late = LocalDate.of(2026, 10, 18);
      RecordId fix = kept(log, Kind.FIX, Facts.none().with(Fix.DONE_ON, late));
      told(log, Anchor.How.SET);

      LocalDate right = LocalDate.of(2026, 10, 17);
      assertThat(value(log, Kind.DAY, day, Day.DATE)).contains(right);
      assertThat(value(log, Kind.DAY, ahead, Day.DATE)).contains(right.plusDays(1));
      assertThat(value(log, Kind.FIX, fix, Fix.DONE_ON)).contains(right);
    }
  }

  @Test
  void the_correction_is_one_entry_of_the_history_and_is_taken_back_and_done_again()
      throws Exception {
    bench.wrong = FIFTY_YEARS.negated();
    try (LogFolder log = open()) {
      RecordId one = reading(log);
      Instant shown = bench.shown();
      RecordId two = reading(log);
      bench.pass(Duration.ofMinutes(2));
      told(log, Anchor.How.SET);

      Operation correction = newest(log, one);
      assertThat(correction.label()).isEqualTo("set the clock");
      assertThat(correction.timed()).isTrue();
      log.save(correction.undoing().action());
      assertThat(value(log, Kind.WEATHER, one, Weather.AT)).contains(shown);
      assertThat(value(log, Kind.WEATHER, two, Weather.AT)).contains(shown);
      assertThat(log.anchors()).isEmpty();
      assertThat(newest(log, one).timed()).isFalse();

      log.save(newest(log, two).undoing().action());
      assertThat(value(log, Kind.WEATHER, one, Weather.AT)).contains(TRUE_MORNING);
      assertThat(log.anchors()).hasSize(1);
    }
  }

  private static Operation newest(LogFolder log, RecordId weather) throws Fault {
    List<Operation> history = log.history(Kind.WEATHER, weather);
    return history.get(history.size() - 1);
  }

  @Test
  void a_second_answer_corrects_the_first_from_what_was_stamped() throws Exception {
    bench.wrong = Duration.ofHours(-3);
    try (LogFolder log = open()) {
      RecordId weather = reading(log);
      Anchor hasty =
          new Anchor(bench.boot, bench.up(), bench.truth.plusSeconds(7200), Anchor.How.SET);
      log.save(log.clockAction(hasty));
      assertThat(value(log, Kind.WEATHER, weather, Weather.AT))
          .contains(TRUE_MORNING.plusSeconds(7200));
      bench.pass(Duration.ofMinutes(5));
      told(log, Anchor.How.SET);
      assertThat(value(log, Kind.WEATHER, weather, Weather.AT)).contains(TRUE_MORNING);
    }
  }

  @Test
  void what_the_flier_typed_and_what_is_removed_stays() throws Exception {
    bench.wrong = Duration.ofDays(-3);
    try (LogFolder log = open()) {
      LocalDate planned = LocalDate.of(2026, 10, 14);
      RecordId day = kept(log, Kind.DAY, Facts.none().with(Day.DATE, planned, "14 Oct"));
      RecordId gone = reading(log);
      Facts removed = Facts.none().with(Kind.REMOVED, true);
      log.save(Action.change("remove", Kind.WEATHER, gone, removed));
      assertThat(told(log, Anchor.How.SET)).as("the anchor alone").hasSize(1);
      assertThat(value(log, Kind.DAY, day, Day.DATE)).contains(planned);
      assertThat(log.removed(Kind.WEATHER)).hasSize(1);
    }
  }

  @Test
  void a_synchronised_clock_leaves_no_entry_where_it_corrects_nothing() throws Exception {
    try (LogFolder log = open()) {
      RecordId weather = reading(log);
      assertThat(told(log, Anchor.How.SYNCHRONISED)).isEmpty();
      assertThat(told(log, Anchor.How.CONFIRMED)).as("what the flier said is kept").hasSize(1);
      assertThat(value(log, Kind.WEATHER, weather, Weather.AT)).contains(TRUE_MORNING);
    }
  }

  @Test
  void the_newest_entry_is_the_last_one_kept_however_late_an_earlier_clock_was() throws Exception {
    bench.wrong = FIFTY_YEARS;
    try (LogFolder log = open()) {
      reading(log);
    }
    bench.reboot();
    bench.wrong = Duration.ZERO;
    try (LogFolder log = open()) {
      assertThat(log.newest().orElseThrow().boot()).isEqualTo("boot-1");
      RecordId second = reading(log);
      assertThat(log.newest().orElseThrow().boot()).isEqualTo("boot-1'");
      assertThat(log.list(Kind.WEATHER)).extracting(FlightLog.Stored::id).last().isEqualTo(second);
    }
  }

  @Test
  void at_random_every_start_that_was_told_of_is_right_and_the_order_stays() throws Exception {
    long seed = System.nanoTime();
    System.out.println("ClockCorrectionTest seed " + seed);
    Random random = new Random(seed);
    Map<RecordId, Instant> truth = new LinkedHashMap<>();
    Map<RecordId, Instant> untold = new LinkedHashMap<>();
    List<RecordId> order = new ArrayList<>();
    for (int start = 0; start < 6; start++) {
      Map<RecordId, Instant> now = new LinkedHashMap<>();
      Map<RecordId, Instant> stamped = new LinkedHashMap<>();
      boolean tells = random.nextBoolean();
      try (LogFolder log = open()) {
        for (int i = 0; i < 8; i++) {
          bench.wrong = Duration.ofMinutes(random.nextInt(200_000) - 100_000);
          bench.pass(Duration.ofMillis(random.nextInt(900_000)));
          RecordId id = reading(log);
          order.add(id);
          now.put(id, bench.truth);
          stamped.put(id, bench.shown());
        }
        if (tells) {
          told(log, Anchor.How.SET);
        }
      }
      (tells ? truth : untold).putAll(tells ? now : stamped);
      bench.reboot();
    }
    Files.delete(folder.resolve("padside.sqlite"));
    try (LogFolder log = open()) {
      List<FlightLog.Stored> read = log.list(Kind.WEATHER);
      assertThat(read).extracting(FlightLog.Stored::id).containsExactlyElementsOf(order);
      for (FlightLog.Stored each : read) {
        Instant at = each.facts().get(Weather.AT).orElseThrow();
        Instant meant = truth.getOrDefault(each.id(), untold.get(each.id()));
        // What is nearer than two seconds is left as it is.
        assertThat(Duration.between(meant, at).abs()).isLessThan(Duration.ofSeconds(2));
      }
    }
  }
}
