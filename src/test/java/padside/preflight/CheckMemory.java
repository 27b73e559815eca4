package padside.preflight;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryMXBean;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A program that checks card after card, with a quarter of the draws, and says how much of the heap
 * is in use after the first thousand and after ten thousand; every tenth is looked what would help
 * it. The same check does it all, as it does through a morning.
 */
public final class CheckMemory {
  private static final int CARDS = 200;
  private static final int ADVISED_EVERY = 10;
  private static final long SEED = 20261126;

  private CheckMemory() {}

  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Preflight preflight = new Preflight(Settings.standard(), Scattering.shipped().few());
    List<Card> cards = AdviceBox.cards(SEED, CARDS);
    int done = 0;
    for (int until : List.of(1_000, 10_000)) {
      for (; done < until; done++) {
        Card card = cards.get(done % CARDS);
        Answer answer =
            done % ADVISED_EVERY == 0 ? preflight.advised(card) : preflight.answer(card);
        if (answer.headline().isEmpty()) {
          throw new IllegalStateException("a card without a headline");
        }
      }
      out.printf("after %,d checks %,d bytes of the heap are in use%n", done, used());
    }
  }

  private static long used() {
    MemoryMXBean memory = ManagementFactory.getMemoryMXBean();
    memory.gc();
    memory.gc();
    return memory.getHeapMemoryUsage().getUsed();
  }
}
