package padside.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Operation;

/**
 * A program of its own that saves without end and says so for each save: its main prints {@code ID
 * COUNT} after the save of that count has returned. Told to undo, it takes every second save back
 * and prints the count that stands again.
 */
final class SavingProgram implements AutoCloseable {
  private final Process process;
  private final BufferedReader said;
  private final List<String> acknowledged = new ArrayList<>();

  private SavingProgram(Process process) {
    this.process = process;
    this.said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  static SavingProgram start(Path folder) throws IOException {
    return start(folder, "save");
  }

  static SavingProgram startUndoing(Path folder) throws IOException {
    return start(folder, "undo");
  }

  private static SavingProgram start(Path folder, String what) throws IOException {
    return started(program(folder, what));
  }

  /**
   * Starts it under strace.
   *
   * @param expressions what strace is to record or to do, such as {@code trace=write}
   */
  static SavingProgram startTraced(Path folder, Path record, String... expressions)
      throws IOException {
    return traced(folder, record, "save", expressions);
  }

  /**
   * As {@link #startTraced}, making so many tries whatever comes of them; a save that failed is
   * told as {@code FAULT sentence} and not tried again. Then it ends.
   */
  static SavingProgram startTrying(Path folder, Path record, int tries, String... expressions)
      throws IOException {
    return traced(folder, record, String.valueOf(tries), expressions);
  }

  private static SavingProgram traced(Path folder, Path record, String what, String... expressions)
      throws IOException {
    List<String> command = new ArrayList<>(strace(record, expressions));
    command.addAll(program(folder, what));
    return started(command);
  }

  /** Waits until it ends by itself and answers all it said. */
  List<String> end() throws IOException {
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      acknowledged.add(line);
    }
    return List.copyOf(acknowledged);
  }

  /** Whether strace is there and may trace a program. */
  static boolean canBeTraced() throws IOException, InterruptedException {
    Path record = Files.createTempFile("strace", "");
    try {
      List<String> command = new ArrayList<>(strace(record, "trace=write"));
      command.add("true");
      return new ProcessBuilder(command).start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    } finally {
      Files.delete(record);
    }
  }

  private static List<String> strace(Path record, String... expressions) {
    List<String> command = new ArrayList<>(List.of("strace", "-f", "-xx", "-y"));
    command.addAll(List.of("-s", "1048576", "-e", "signal=none", "-o", record.toString()));
    for (String expression : expressions) {
      command.addAll(List.of("-e", expression));
    }
    return command;
  }

  private static List<String> program(Path folder, String what) {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        "-cp",
        System.getProperty("java.class.path"),
        SavingProgram.class.getName(),
        folder.toString(),
        what);
  }

  private static SavingProgram started(List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    return new SavingProgram(builder.start());
  }

  /** Waits until so many saves were acknowledged and answers all that were so far. */
  List<String> acknowledged(int atLeast) throws IOException {
    while (acknowledged.size() < atLeast) {
      acknowledged.add(line());
    }
    return List.copyOf(acknowledged);
  }

  /** Ends it by kill -9 and answers every save it acknowledged. */
  List<String> kill() throws IOException, InterruptedException {
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.toHandle().destroyForcibly(); // unlike the process itself it leaves what was said
    process.waitFor();
    for (String line = said.readLine(); line != null; line = said.readLine()) {
      acknowledged.add(line);
    }
    return List.copyOf(acknowledged);
  }

  @Override
  public void close() throws IOException, InterruptedException {
    kill();
    said.close();
  }

  private String line() throws IOException {
    String line = said.readLine();
    if (line == null) {
      throw new IOException("the saving program ended after " + acknowledged);
    }
    return line;
  }

  public static void main(String[] args) throws Fault {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Machine machine = new PretendMachine(System.nanoTime());
    try (LogFolder log = LogFolder.open(Path.of(args[0]), machine)) {
      if (args[1].equals("undo")) {
        saveAndUndo(log, out);
      } else if (args[1].equals("save")) {
        save(log, out);
      } else {
        tryToSave(log, out, Integer.parseInt(args[1]));
      }
    }
  }

  /** Records of one save each. */
  private static void tryToSave(LogFolder log, PrintStream out, int tries) {
    for (long count = 0; count < tries; count++) {
      try {
        RecordId day = log.save(Action.create("begin", Kind.DAY, counted(count))).get(0);
        out.println(day + " " + count);
      } catch (Fault fault) {
        out.println("FAULT " + fault.code() + " " + fault.sentence());
      }
    }
    out.println("DONE");
  }

  /** One record for each ten saves, the others change it. */
  private static void save(LogFolder log, PrintStream out) throws Fault {
    RecordId day = new RecordId("none");
    for (long count = 0; ; count++) {
      Action action =
          count % 10 == 0
              ? Action.create("begin", Kind.DAY, counted(count))
              : Action.change("note", Kind.DAY, day, counted(count));
      day = log.save(action).get(0);
      out.println(day + " " + count);
    }
  }

  /** A count far above the last, then that taken back: the one before, then that plus one. */
  private static void saveAndUndo(LogFolder log, PrintStream out) throws Fault {
    RecordId day = log.save(Action.create("begin", Kind.DAY, counted(0))).get(0);
    for (long count = 0; ; count++) {
      log.save(Action.change("note", Kind.DAY, day, counted(count + 1_000_000)));
      out.println(day + " " + (count + 1_000_000));
      Operation slip = Operation.last(log.history(Kind.DAY, day)).orElseThrow();
      log.save(slip.undoing().action());
      out.println(day + " " + count);
      log.save(Action.change("note", Kind.DAY, day, counted(count + 1)));
    }
  }

  private static Facts counted(long count) {
    return Facts.none()
        .with("note", Facts.Cell.of(count, "typed " + count))
        .with("twin", Facts.Cell.of(count));
  }
}
