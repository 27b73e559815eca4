package padside.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Whole frames kept as text under {@code src/test/resources/frames}. They are rewritten only by
 * {@code -Dpadside.golden=rewrite}; look at every one that changed before keeping it.
 */
final class Golden {
  private static final Path FRAMES = Path.of("src/test/resources/frames");

  private Golden() {}

  /** Holds a frame against the kept one of that name. */
  static void holds(String name, String frame) {
    Path kept = FRAMES.resolve(name + ".txt");
    try {
      if (System.getProperty("padside.golden", "").equals("rewrite")) {
        Files.createDirectories(kept.getParent());
        Files.writeString(kept, frame);
      }
      assertThat(Files.exists(kept)).as("no frame kept as %s", kept).isTrue();
      assertThat(frame).as("frame %s", kept).isEqualTo(Files.readString(kept));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
