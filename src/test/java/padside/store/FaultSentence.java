package padside.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import padside.fact.Fault;

/**
 * What a fault says, kept as text under {@code src/test/resources/faults}: the code, the sentence
 * and the next step, with {@code FOLDER} for the log's folder. Rewritten only by {@code
 * -Dpadside.golden=rewrite}.
 */
final class FaultSentence {
  private static final Path KEPT = Path.of("src/test/resources/faults");

  private FaultSentence() {}

  static void holds(String name, Fault fault, Path folder) {
    Path kept = KEPT.resolve(name + ".txt");
    String said =
        (fault.code() + "\n" + fault.sentence() + "\n" + fault.nextStep() + "\n")
            .replace(folder.toString(), "FOLDER");
    try {
      if (System.getProperty("padside.golden", "").equals("rewrite")) {
        Files.createDirectories(KEPT);
        Files.writeString(kept, said);
      }
      assertThat(said).as("fault %s", kept).isEqualTo(Files.readString(kept));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
