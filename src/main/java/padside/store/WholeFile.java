package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A small text beside the log that is replaced as a whole: whatever happens, the text before or the
 * one after it is read. It is no part of the log and may be missing.
 */
public final class WholeFile {
  /** What is larger was not written here. */
  static final int MOST_BYTES = 1 << 16;

  private final Path file;
  private final Medium medium = new Medium();

  /** The file of that name in a folder. */
  public WholeFile(Path folder, String name) {
    this.file = folder.resolve(name);
  }

  /** Puts a text in place of the one there; {@link #force} makes that last. */
  public void write(String text) throws IOException {
    ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
    medium.whole(file, channel -> Medium.write(channel, bytes, 0));
  }

  /** Once this returns a cut of the power brings back no text from before the last one. */
  public void force() throws IOException {
    medium.forceFolder(file.getParent());
  }

  /** What was written last; absent where nothing was, or what is there cannot be read. */
  public Optional<String> read() {
    try {
      return Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES
          ? Optional.of(Files.readString(file))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Takes the file away. */
  public void remove() throws IOException {
    if (Files.deleteIfExists(file)) {
      force();
    }
  }
}
