package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Flight;
import padside.flight.FlightLog.FlightQuery;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.flight.Logbook;
import padside.motor.MotorTable;

/** How long the log takes, empty and with ten thousand flights of thirty fields each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class LogBenchmark {
  /** The log that is open while the others are measured. */
  @State(Scope.Benchmark)
  public static class OpenLog {
    @Param({"0", "10000"})
    public int flights;

    private Path folder;
    private LogFolder log;
    private RecordId card;
    private int edits;

    @Setup(Level.Trial)
    public void fill() throws IOException, Fault {
      folder = Files.createTempDirectory("padside-log");
      try (LogFolder filled = LogFolder.openToFill(folder, new PretendMachine(1))) {
        SeasonOfFlights.save(filled, flights);
      }
      log = LogFolder.open(folder, new PretendMachine(3));
      card = log.save(Action.create("begin card", Kind.FLIGHT, Facts.none())).get(0);
    }

    Path folder() {
      return folder;
    }

    void close() throws Fault {
      log.close();
    }

    @TearDown(Level.Trial)
    public void remove() throws Fault {
      close();
      FolderCopy.delete(folder);
    }
  }

  /** A closed log to open again and again. */
  @State(Scope.Benchmark)
  public static class ClosedLog extends OpenLog {
    @Override
    @Setup(Level.Trial)
    public void fill() throws IOException, Fault {
      super.fill();
      super.close();
    }

    @Override
    void close() {
      // It was closed when it was filled.
    }
  }

  @Benchmark
  public List<RecordId> durable_save_of_one_field(OpenLog open) throws Fault {
    Facts note = Facts.none().with(Flight.NOTE, "edit " + open.edits++);
    return open.log.save(Action.change("note", Kind.FLIGHT, open.card, note));
  }

  @Benchmark
  public List<Stored> list_500_newest(OpenLog open) throws Fault {
    return open.log.flights(FlightQuery.newest(500));
  }

  @Benchmark
  public List<Stored> last_flight_of_each_rocket(OpenLog open) throws Fault {
    return open.log.lastFlightOfEachRocket();
  }

  @Benchmark
  public Object fired_by_lot(OpenLog open) throws Fault {
    return open.log.firedByLot();
  }

  @Benchmark
  public Object past_of_all_flights(OpenLog open) throws Fault {
    return padside.flight.FlightLog.Past.ofAll(open.log);
  }

  @Benchmark
  public Object uses_of_gear(OpenLog open) throws Fault {
    return open.log.uses();
  }

  @Benchmark
  public List<String> open_and_close(ClosedLog closed) throws Fault {
    try (LogFolder log = LogFolder.open(closed.folder(), new PretendMachine(2))) {
      return log.notices();
    }
  }

  /** What the Day screen waits for. */
  @Benchmark
  public Logbook open_read_and_close(ClosedLog closed) throws Fault {
    try (LogFolder log = LogFolder.open(closed.folder(), new PretendMachine(2))) {
      return Logbook.read(log, new MotorTable(List.of()));
    }
  }
}
