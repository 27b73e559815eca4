package padside.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import padside.units.Reading;

/**
 * A sound journal line and all that can be made of it away from the tables. Of what it says no more
 * is kept than the tables want, so that many can wait in a small memory.
 *
 * @param t Lamport number
 * @param later true for a line of a newer version, which is only kept
 * @param raw the line as it stands in the journal, without its end
 */
record ReadyLine(OpId op, long t, boolean later, String raw, List<RecordPart> parts) {
  ReadyLine {
    parts = List.copyOf(parts);
  }

  static ReadyLine of(JournalLine line, String raw) {
    return new ReadyLine(line.op(), line.t(), line.fromNewerVersion(), raw, RecordPart.of(line));
  }

  static Reading<ReadyLine> read(String raw) {
    return LineForm.read(raw).map(line -> of(line, raw));
  }

  static Reading<ReadyLine> read(ByteBuffer bytes) {
    byte[] copy = new byte[bytes.remaining()];
    bytes.get(copy);
    return read(copy);
  }

  /** Reads the bytes of a line; the objection says what is wrong with it. */
  static Reading<ReadyLine> read(byte[] bytes) {
    return LineForm.read(ByteBuffer.wrap(bytes))
        .map(line -> of(line, new String(bytes, StandardCharsets.UTF_8)));
  }

  /** The parts, each with its cells, read from the line once more. */
  List<RecordPart> inFull() {
    return RecordPart.inFull(LineForm.read(raw).value().orElseThrow());
  }
}
