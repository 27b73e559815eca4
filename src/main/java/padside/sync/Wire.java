package padside.sync;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32C;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;
import padside.fact.Fault;

/**
 * Two streams as messages: a greeting in plain text, then both directions deflated (RFC 1950),
 * flushed after each message. A message is its kind, its length, the CRC-32C of its bytes, and
 * these; no length is believed beyond {@link #MOST_BYTES}, so that what inflates without end is
 * noticed.
 */
final class Wire {
  /** Bytes of a message at most: a batch of lines and the longest line beyond it. */
  static final int MOST_BYTES = 2 << 20;

  private static final String NAME = "padside-sync ";
  private static final String VERSION = "1";
  private static final int MOST_BEFORE = 1 << 13;
  private static final int MOST_TEXT = 1 << 14;

  private final Patience streams;
  private final String other;
  private final String greeting;
  private final DataOutputStream out;
  private final InputStream plain;
  private final DataInputStream in;

  /** The kinds of messages; what follows which is {@link Talk}'s to say. */
  enum Kind {
    HELLO(0),
    BUCKETS(1),
    HOLDINGS(2),
    WRITERS(3),
    GO(4),
    STOP(5),
    LINES(6),
    KEPT(7),
    GIVEN(8),
    TOLD(9),
    FAULT(10);

    private final int code;

    Kind(int code) {
      this.code = code;
    }
  }

  /** Writes what a message holds. */
  interface Filling {
    void fill(DataOutputStream message) throws IOException;
  }

  /** Reads what a message holds. */
  interface Reader<T> {
    T read(DataInputStream message) throws IOException;
  }

  /** A message that came. */
  record Message(Kind kind, DataInputStream holds) {}

  /** Something nobody sends. */
  static final class Damage extends IOException {
    private static final long serialVersionUID = 1L;

    Damage(String what) {
      super(what);
    }
  }

  /**
   * Over two streams.
   *
   * @param other how the other end is called in sentences
   */
  Wire(Patience streams, String other, String version) {
    this.streams = streams;
    this.other = other;
    this.greeting = NAME + VERSION + " " + version;
    this.plain = streams.in();
    this.in = new DataInputStream(new InflaterInputStream(plain, new Inflater(), 1 << 12));
    this.out =
        new DataOutputStream(
            new DeflaterOutputStream(
                streams.out(), new Deflater(Deflater.BEST_COMPRESSION), 1 << 13, true));
  }

  /** Says the greeting and hears the other's; text before it, such as a banner, is passed over. */
  void greet() throws IOException, Fault {
    streams.out().write((greeting + "\n").getBytes(StandardCharsets.UTF_8));
    String first = "";
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int read = 0; read < MOST_BEFORE; read++) {
      int next = plain.read();
      if (next >= 0 && next != '\n') {
        line.write(next);
        continue;
      }
      String said = line.toString(StandardCharsets.UTF_8).strip();
      if (said.contains(NAME)) {
        check(said.substring(said.indexOf(NAME)));
        return;
      }
      first = first.isEmpty() ? said : first;
      line.reset();
      if (next < 0) {
        throw TalkFaults.notPadside(other, first);
      }
    }
    throw TalkFaults.notPadside(
        other, first.isEmpty() ? line.toString(StandardCharsets.UTF_8) : first);
  }

  private void check(String said) throws Fault {
    if (!said.startsWith(NAME + VERSION + " ")) {
      throw TalkFaults.otherVersion(other, said, greeting);
    }
  }

  void send(Kind kind) throws IOException {
    send(kind, message -> {});
  }

  void send(Kind kind, Filling filling) throws IOException {
    ByteArrayOutputStream holds = new ByteArrayOutputStream();
    filling.fill(new DataOutputStream(holds));
    byte[] bytes = holds.toByteArray();
    if (bytes.length > MOST_BYTES) {
      throw new IllegalArgumentException(kind + " of " + bytes.length + " bytes");
    }
    out.writeByte(kind.code);
    out.writeInt(bytes.length);
    out.writeInt(sum(kind, bytes));
    out.write(bytes);
    out.flush();
  }

  /** The next message; one that tells a fault is thrown. */
  Message receive() throws IOException, Fault {
    try {
      int kind = in.readUnsignedByte();
      int length = in.readInt();
      int sum = in.readInt();
      if (kind >= Kind.values().length || length < 0 || length > MOST_BYTES) {
        throw new Damage("a message of kind " + kind + " with " + length + " bytes");
      }
      byte[] bytes = in.readNBytes(length);
      if (bytes.length < length) {
        throw new EOFException("in the middle of a message");
      }
      if (sum != sum(Kind.values()[kind], bytes)) {
        throw new Damage("the checksum of a message does not fit");
      }
      return heard(Kind.values()[kind], new DataInputStream(new ByteArrayInputStream(bytes)));
    } catch (ZipException e) {
      throw new Damage("it cannot be inflated");
    } catch (EOFException e) {
      throw new EOFException("the other side is gone");
    }
  }

  private Message heard(Kind kind, DataInputStream holds) throws IOException, Fault {
    if (kind == Kind.FAULT) {
      String sentence = text(holds);
      throw TalkFaults.there(other, sentence, text(holds));
    }
    return new Message(kind, holds);
  }

  /** The next message, which must be of one kind. */
  <T> T receive(Kind kind, Reader<T> reader) throws IOException, Fault {
    Message message = receive();
    if (message.kind() != kind) {
      throw new Damage(message.kind() + " came where " + kind + " belongs");
    }
    return read(message, reader);
  }

  /** What a message holds, all of it. */
  static <T> T read(Message message, Reader<T> reader) throws IOException {
    try {
      T read = reader.read(message.holds());
      if (message.holds().read() >= 0) {
        throw new Damage("a message is longer than what it holds");
      }
      return read;
    } catch (EOFException | IllegalArgumentException e) {
      throw new Damage("a message does not hold what it should");
    }
  }

  private static int sum(Kind kind, byte[] bytes) {
    CRC32C sum = new CRC32C();
    sum.update(kind.code);
    sum.update(bytes);
    return (int) sum.getValue();
  }

  static void text(DataOutputStream message, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    int length = Math.min(bytes.length, MOST_TEXT);
    message.writeInt(length);
    message.write(bytes, 0, length);
  }

  static String text(DataInputStream message) throws IOException {
    return new String(bytes(message, MOST_TEXT), StandardCharsets.UTF_8);
  }

  static byte[] bytes(DataInputStream message, int most) throws IOException {
    byte[] bytes = new byte[count(message, most)];
    message.readFully(bytes);
    return bytes;
  }

  /** A count that no hostile value makes large. */
  static int count(DataInputStream message, int most) throws IOException {
    int count = message.readInt();
    if (count < 0 || count > most) {
      throw new Damage(count + " where " + most + " is the most");
    }
    return count;
  }

  static void texts(DataOutputStream message, List<String> texts) throws IOException {
    message.writeInt(texts.size());
    for (String text : texts) {
      text(message, text);
    }
  }

  static List<String> texts(DataInputStream message, int most) throws IOException {
    int count = count(message, most);
    List<String> texts = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      texts.add(text(message));
    }
    return texts;
  }

  String other() {
    return other;
  }

  Patience streams() {
    return streams;
  }
}
