package padside.sync;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import padside.fact.Fault;
import padside.store.Holdings;
import padside.store.Holdings.Span;

/**
 * Holdings sorted into 256 buckets by the first two hex digits of the run, with a digest of each:
 * two logs that differ in a few runs need not tell each other of all.
 */
final class Buckets {
  static final int COUNT = 256;

  /** Spans in one message at most. */
  private static final int SPANS = 1 << 15;

  /** More spans than any log has; beyond it somebody plays. */
  private static final int MOST_SPANS = 1 << 20;

  private static final int RUN_BYTES = 20;

  /** Beyond it a count of lines is none. */
  private static final long MOST_LINES = 1L << 40;

  private final Holdings all;
  private final long[] digests = new long[COUNT];

  Buckets(Holdings all) {
    this.all = all;
    StringBuilder[] texts = new StringBuilder[COUNT];
    all.runs().forEach((run, spans) -> texts[of(run)] = with(texts[of(run)], run, spans));
    for (int bucket = 0; bucket < COUNT; bucket++) {
      digests[bucket] = texts[bucket] == null ? 0 : digest(texts[bucket]);
    }
  }

  private static StringBuilder with(StringBuilder before, String run, List<Span> spans) {
    StringBuilder text = before == null ? new StringBuilder() : before;
    text.append(run);
    spans.forEach(span -> text.append(' ').append(span.first()).append('-').append(span.last()));
    return text.append('\n');
  }

  private static long digest(CharSequence text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return ByteBuffer.wrap(sha.digest(text.toString().getBytes(StandardCharsets.UTF_8)))
          .getLong();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }

  private static int of(String run) {
    return Integer.parseInt(run.substring(0, 2), 16);
  }

  /** One digest of everything. */
  long digest() {
    return digest(Arrays.toString(digests));
  }

  void write(DataOutputStream message) throws IOException {
    for (long digest : digests) {
      message.writeLong(digest);
    }
  }

  /** The buckets whose digest, as another has it, is not this one's. */
  BitSet differing(DataInputStream message) throws IOException {
    BitSet differing = new BitSet(COUNT);
    for (int bucket = 0; bucket < COUNT; bucket++) {
      differing.set(bucket, message.readLong() != digests[bucket]);
    }
    return differing;
  }

  static void write(DataOutputStream message, BitSet some) throws IOException {
    for (int bucket = 0; bucket < COUNT; bucket++) {
      message.writeBoolean(some.get(bucket));
    }
  }

  static BitSet some(DataInputStream message) throws IOException {
    BitSet some = new BitSet(COUNT);
    for (int bucket = 0; bucket < COUNT; bucket++) {
      some.set(bucket, message.readBoolean());
    }
    return some;
  }

  /** What lies in some of the buckets. */
  Holdings in(BitSet some) {
    Map<String, List<Span>> runs = new HashMap<>(all.runs());
    runs.keySet().removeIf(run -> !some.get(of(run)));
    return new Holdings(runs);
  }

  /** Tells holdings, in as many messages as it takes. */
  static void send(Wire wire, Holdings holdings) throws IOException {
    List<Map.Entry<String, Span>> spans = new ArrayList<>();
    holdings.runs().forEach((run, of) -> of.forEach(span -> spans.add(Map.entry(run, span))));
    for (int at = 0; at == 0 || at < spans.size(); at += SPANS) {
      List<Map.Entry<String, Span>> some = spans.subList(at, Math.min(at + SPANS, spans.size()));
      boolean more = at + SPANS < spans.size();
      wire.send(Wire.Kind.HOLDINGS, message -> write(message, some, more));
    }
  }

  private static void write(
      DataOutputStream message, List<Map.Entry<String, Span>> spans, boolean more)
      throws IOException {
    message.writeBoolean(more);
    message.writeInt(spans.size());
    for (Map.Entry<String, Span> each : spans) {
      message.writeBytes(each.getKey());
      message.writeLong(each.getValue().first());
      message.writeLong(each.getValue().last());
    }
  }

  /** Hears the holdings of the other. */
  static Holdings receive(Wire wire) throws IOException, Fault {
    Map<String, List<Span>> runs = new HashMap<>();
    int heard = 0;
    boolean more = true;
    while (more) {
      more = wire.receive(Wire.Kind.HOLDINGS, message -> read(message, runs));
      heard += SPANS;
      if (more && heard >= MOST_SPANS) {
        throw new Wire.Damage("it names more runs than any log has");
      }
    }
    return new Holdings(runs);
  }

  private static boolean read(DataInputStream message, Map<String, List<Span>> runs)
      throws IOException {
    boolean more = message.readBoolean();
    int count = Wire.count(message, SPANS);
    for (int at = 0; at < count; at++) {
      byte[] name = new byte[RUN_BYTES];
      message.readFully(name);
      String run = new String(name, StandardCharsets.ISO_8859_1);
      Span span = new Span(message.readLong(), message.readLong());
      if (!Holdings.isRun(run) || span.last() > MOST_LINES) {
        throw new Wire.Damage("a run or a line nobody has");
      }
      runs.computeIfAbsent(run, each -> new ArrayList<>()).add(span);
    }
    return more;
  }
}
