package padside;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * How often a fault test tries: so often within {@code mvn verify}, more often with {@code
 * -Dpadside.long}, or as often as a property of its own says ({@code -Dpadside.kills=200}). {@code
 * -Dpadside.seed=N} changes what is tried.
 */
public final class Trials {
  private static final int WORKERS = 2;

  private Trials() {}

  /** One trial, told its number, which begins at 1, and its own source of luck. */
  public interface Trial {
    void run(int number, Random random) throws Exception;
  }

  /** The number of trials of a kind. */
  public static int of(String kind, int usual, int atLength) {
    return Integer.getInteger("padside." + kind, isLong() ? atLength : usual);
  }

  /** True when the tests are run at length. */
  public static boolean isLong() {
    return System.getProperty("padside.long") != null;
  }

  /** What everything random begins from. */
  public static long seed() {
    return Long.getLong("padside.seed", 20L);
  }

  /**
   * The source of luck of one trial, the same whatever ran before it. {@link Random} begins nearly
   * alike from numbers that lie beside each other, so its seed is mixed.
   */
  public static Random random(int number) {
    return new Random(new SplittableRandom(seed() * 1_000_003L + number).nextLong());
  }

  /** Says what a run of trials came to. */
  public static void say(String figures) {
    System.out.println("[trials] seed " + seed() + ": " + figures);
  }

  /** Runs trials, two at a time; the first failure is told with its number and the seed. */
  public static void run(int trials, Trial trial) throws Exception {
    run(WORKERS, trials, trial);
  }

  /** Runs trials, so many at a time. */
  public static void run(int workers, int trials, Trial trial) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(workers);
    try {
      List<Future<Void>> running = new ArrayList<>();
      for (int number = 1; number <= trials; number++) {
        running.add(threads.submit(told(number, trial)));
      }
      for (Future<Void> each : running) {
        each.get();
      }
    } catch (ExecutionException e) {
      throw new AssertionError(e.getCause().getMessage(), e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }

  private static Callable<Void> told(int number, Trial trial) {
    return () -> {
      try {
        trial.run(number, random(number));
        return null;
      } catch (Exception | Error e) {
        throw new AssertionError("trial " + number + " of seed " + seed() + ": " + e, e);
      }
    };
  }
}
