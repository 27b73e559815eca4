package padside.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/**
 * What another program writes to a file from now on, added behind or the file written anew; what
 * stood there before is old. Waits for more and has no end but that the file goes.
 */
final class GrowingFile extends InputStream {
  private static final long LOOK_MILLIS = 1_000;

  private final Path file;
  private long position;
  private FileTime written;

  GrowingFile(Path file) throws IOException {
    this.file = file;
    BasicFileAttributes now = look();
    this.position = now.size();
    this.written = now.lastModifiedTime();
  }

  private BasicFileAttributes look() throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class);
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    while (true) {
      BasicFileAttributes now = look();
      boolean anew = now.size() == position && !now.lastModifiedTime().equals(written);
      if (now.size() < position || anew) {
        position = 0;
      }
      int count = now.size() > position ? readOn(ByteBuffer.wrap(into, from, most)) : 0;
      if (count > 0) {
        return count;
      }
      written = now.lastModifiedTime();
      PacedInput.rest(LOOK_MILLIS);
    }
  }

  private int readOn(ByteBuffer into) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      int count = channel.position(position).read(into);
      position += Math.max(0, count);
      BasicFileAttributes then = look();
      if (then.size() == position) {
        written = then.lastModifiedTime(); // what was just read is no file written anew
      }
      return count;
    }
  }
}
