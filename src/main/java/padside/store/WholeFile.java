package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * A small text beside the log that is replaced as a whole: whatever happens, the text before or the
 * one after it is read. It is no part of the log and may be missing.
 */
public final class WholeFile {
  /** What is larger was not written here. */
  static final int MOST_BYTES = 1 << 16;

  private final Path file;
  private final Medium medium;

  /** Writes what a file is to hold. */
  public interface Filling {
    void fill(FileChannel file) throws IOException;
  }

  /** The file of that name in a folder. */
  public WholeFile(Path folder, String name) {
    this(folder.resolve(name), new Medium());
  }

  private WholeFile(Path file, Medium medium) {
    this.file = file;
    this.medium = medium;
  }

  /** One that is there for other people too, as far as its folder lets them. */
  public static WholeFile forOthers(Path file) {
    return new WholeFile(file, new Open());
  }

  /** Where files are made with the rights that are usual there. */
  private static final class Open extends Medium {
    @Override
    FileChannel fresh(Path file) throws IOException {
      return FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }
  }

  /** Writes all there is from a place in a file on; answers where that ends. */
  public static long write(FileChannel file, ByteBuffer bytes, long from) throws IOException {
    return Medium.write(file, bytes, from);
  }

  /**
   * Fills the file, of whatever size, under another name first; once this returns it lasts.
   *
   * @param unfinished that name, in the same folder; what is left there from before goes
   */
  public void fill(String unfinished, Filling filling) throws IOException {
    medium.whole(file, file.resolveSibling(unfinished), filling::fill);
    force();
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
