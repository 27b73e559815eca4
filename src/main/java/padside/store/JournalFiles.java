package padside.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;

/** The journals in a folder, read line by line without ever holding more than one line. */
final class JournalFiles {
  static final String SUFFIX = ".jsonl";

  /** Gets what stands in a journal, in order. */
  interface Reader<E extends Exception> {
    /**
     * A whole line.
     *
     * @param at its first byte
     * @param next the first byte of the next line
     * @param bytes at most one byte more than the longest line allowed
     */
    void line(long at, long next, ByteBuffer bytes) throws E, IOException;

    /** The file ends without a line end; the bytes as for a line. */
    void torn(long at, ByteBuffer bytes) throws E, IOException;
  }

  private JournalFiles() {}

  /** The journals by name: plain files only, links are not followed. */
  static List<Path> in(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(SUFFIX))
          .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .sorted()
          .toList();
    }
  }

  /** How long the journals in a folder are together. */
  static long bytes(Path folder) throws IOException {
    long bytes = 0;
    for (Path journal : in(folder)) {
      bytes += Files.size(journal);
    }
    return bytes;
  }

  /** Adds a part of a block to a line, of one too long no more than shows that. */
  private static void add(ByteArrayOutputStream line, byte[] block, int from, int to) {
    line.write(block, from, Math.min(to - from, LineForm.MAX_BYTES + 1 - line.size()));
  }

  /** Reads a journal from a line's beginning to the file's end. */
  static <E extends Exception> void read(Path file, long from, Reader<E> reader)
      throws E, IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
        InputStream bytes = Channels.newInputStream(channel.position(from))) {
      ByteArrayOutputStream line = new ByteArrayOutputStream();
      byte[] block = new byte[1 << 16];
      long at = from;
      long lineAt = from;
      for (int got = bytes.read(block); got > 0; got = bytes.read(block)) {
        int begun = 0;
        for (int i = 0; i < got; i++) {
          if (block[i] == '\n') {
            add(line, block, begun, i);
            reader.line(lineAt, at + i + 1, ByteBuffer.wrap(line.toByteArray()));
            line.reset();
            begun = i + 1;
            lineAt = at + begun;
          }
        }
        add(line, block, begun, got);
        at += got;
      }
      if (lineAt < at) {
        reader.torn(lineAt, ByteBuffer.wrap(line.toByteArray()));
      }
    }
  }
}
