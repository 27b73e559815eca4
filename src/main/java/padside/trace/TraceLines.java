package padside.trace;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * The lines of a file one by one, whether they end in LF, CR LF or CR; of one that is too long only
 * its beginning. Sums up all it has read.
 */
final class TraceLines {
  /** Bytes a line of a table may have. */
  static final int LONGEST = 4096;

  private final InputStream in;
  private final byte[] block = new byte[1 << 16];
  private final byte[] line = new byte[LONGEST];
  private final CRC32 sum = new CRC32();
  private int at;
  private int end;
  private int length;
  private boolean cut;
  private boolean binary;
  private long number;
  private boolean afterReturn;

  TraceLines(InputStream in) {
    this.in = in;
  }

  /** Goes on to the next line; false after the last. */
  boolean next() throws IOException {
    length = 0;
    cut = false;
    boolean any = false;
    while (fill()) {
      byte each = block[at++];
      if (each == '\n' && afterReturn) {
        afterReturn = false;
        continue;
      }
      afterReturn = each == '\r';
      if (each == '\n' || each == '\r') {
        number++;
        return true;
      }
      any = true;
      take(each);
    }
    number += any ? 1 : 0;
    return any;
  }

  private void take(byte each) {
    binary |= each == 0;
    if (length < LONGEST) {
      line[length++] = each;
    } else {
      cut = true;
    }
  }

  private boolean fill() throws IOException {
    if (at == end) {
      at = 0;
      end = Math.max(0, in.read(block));
      sum.update(block, 0, end);
    }
    return end > 0;
  }

  /** The line, without a byte order mark and without what no text has. */
  String text() {
    boolean mark = number == 1 && length >= 3 && (line[0] & 0xff) == 0xef;
    int from = mark ? 3 : 0;
    return new String(line, from, length - from, StandardCharsets.UTF_8);
  }

  /** Whether the line was longer than is read. */
  boolean isCut() {
    return cut;
  }

  /** Whether a NUL was among all that was read: no text then. */
  boolean isBinary() {
    return binary;
  }

  /** Of the line, from 1. */
  long number() {
    return number;
  }

  /** CRC-32 of all blocks read so far; of the file once its last line was read. */
  long crc32() {
    return sum.getValue();
  }
}
