package padside.sync;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.Pipe;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import padside.fact.Fault;
import padside.store.LogFolder;
import padside.store.PretendMachine;

/** Two logs at the two ends of a pair of pipes, which can be harmed. */
final class TalkTable {
  static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final long WALL = 1_795_601_335_000L;

  private final Path near;
  private final Path far;
  private long seed;

  /** How one direction is harmed. */
  interface Harmed {
    OutputStream of(OutputStream sound);
  }

  /** How one side ended. */
  record End(Optional<Told> told, Optional<Fault> fault) {}

  record Ends(End near, End far) {}

  private interface Side {
    Told run() throws Fault;
  }

  TalkTable(Path near, Path far, long seed) {
    this.near = near;
    this.far = far;
    this.seed = seed * 1000;
  }

  LogFolder open(Path folder) throws Fault {
    String name = folder.getFileName().toString();
    return LogFolder.open(
        folder, new PretendMachine(++seed + name.hashCode() * 77L, name, "boot " + name, WALL));
  }

  /** An exchange that must come to its end. */
  Told sound() throws Exception {
    Ends ends = exchange(out -> out, out -> out, new Answering(true, false));
    if (ends.far().fault().isPresent()) {
      throw ends.far().fault().get();
    }
    if (ends.near().fault().isPresent()) {
      throw ends.near().fault().get();
    }
    return ends.near().told().orElseThrow();
  }

  Ends exchange(Harmed out, Harmed back, Terms terms) throws Exception {
    Pipe there = Pipe.open();
    Pipe here = Pipe.open();
    CompletableFuture<End> served =
        CompletableFuture.supplyAsync(() -> end(() -> serve(there, here, back)));
    End started = end(() -> start(here, there, out, terms));
    return new Ends(started, served.get());
  }

  private Told start(Pipe in, Pipe out, Harmed harmed, Terms terms) throws Fault {
    try (LogFolder log = open(near);
        OutputStream to = harmed.of(Channels.newOutputStream(out.sink()));
        var from = Channels.newInputStream(in.source())) {
      return new Talk(new Talk.Streams(from, to, PATIENCE), "desk", "1")
          .near(log.exchange(), terms);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private Told serve(Pipe in, Pipe out, Harmed harmed) throws Fault {
    LogFolder[] log = new LogFolder[1];
    try (OutputStream to = harmed.of(Channels.newOutputStream(out.sink()));
        var from = Channels.newInputStream(in.source())) {
      return new Talk(new Talk.Streams(from, to, PATIENCE), "pad", "1")
          .far(
              notices -> {
                log[0] = open(far);
                return log[0].exchange();
              });
    } catch (IOException e) {
      throw new AssertionError(e);
    } finally {
      if (log[0] != null) {
        log[0].close();
      }
    }
  }

  private static End end(Side side) {
    try {
      return new End(Optional.of(side.run()), Optional.empty());
    } catch (Fault fault) {
      return new End(Optional.empty(), Optional.of(fault));
    }
  }

  /** Whoever started it says always the same. */
  record Answering(boolean yes, boolean onlyLook) implements Terms {
    @Override
    public boolean mayTake(List<Stranger> strangers) {
      return yes;
    }

    @Override
    public void moved(Stage stage, long done, long of) {}
  }

  /** Breaks off after so many bytes. */
  static Harmed cut(long after) {
    return out -> new Cut(out, after);
  }

  /** Turns one bit over. */
  static Harmed flipped(long at, int bit) {
    return out -> new Flipped(out, at, bit);
  }

  private static final class Cut extends FilterOutputStream {
    private long left;

    Cut(OutputStream out, long after) {
      super(out);
      this.left = after;
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      int some = (int) Math.min(left, count);
      out.write(bytes, from, some);
      left -= some;
      if (some < count) {
        out.close();
        throw new IOException("cut");
      }
    }

    @Override
    public void write(int value) throws IOException {
      write(new byte[] {(byte) value}, 0, 1);
    }
  }

  private static final class Flipped extends FilterOutputStream {
    private long before;
    private final int bit;

    Flipped(OutputStream out, long at, int bit) {
      super(out);
      this.before = at;
      this.bit = bit;
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      byte[] harmed = Arrays.copyOfRange(bytes, from, from + count);
      if (before >= 0 && before < count) {
        harmed[(int) before] ^= (byte) (1 << bit);
      }
      before -= count;
      out.write(harmed);
    }

    @Override
    public void write(int value) throws IOException {
      write(new byte[] {(byte) value}, 0, 1);
    }
  }
}
