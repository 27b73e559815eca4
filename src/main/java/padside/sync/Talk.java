package padside.sync;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;

/**
 * One exchange over two streams, the same at both ends. The near side started it and answers for
 * it; the far side serves.
 *
 * <p>After the greetings only one side speaks at a time and the other listens until it is done, so
 * that both can have any amount to send and neither ever waits for room in a pipe the other does
 * not read:
 *
 * <pre>
 * near                                   far
 * HELLO who I am, a digest of all        HELLO the same
 * BUCKETS digests of 256 parts           HOLDINGS of the parts that differ
 * HOLDINGS of the same parts             WRITERS of the lines the near side lacks
 * GO (or STOP: declined, only looked)
 * LINES, once for each batch             KEPT, once they are on the medium
 * GIVEN                                  LINES, once for each batch
 * KEPT                                   GIVEN
 * TOLD what there is to say              TOLD the same
 * </pre>
 *
 * <p>Equal digests go straight to TOLD. FAULT may stand in place of any message. Every batch lasts
 * once it is answered: an exchange broken off anywhere is finished by another one.
 */
public final class Talk {
  /** How long the near side waits for anything to move: a slow far one may have to be built. */
  public static final Duration PATIENCE = Duration.ofMinutes(3);

  /** The same of the far side: somebody may be asked at the near one. */
  public static final Duration FAR_PATIENCE = Duration.ofMinutes(10);

  private static final int MOST_WRITERS = 2000;
  private static final int MOST_LABEL = 100;
  private static final int MOST_TOLD = 30;

  private final Wire wire;

  /** A log, opened once it is known that somebody wants it. */
  public interface Opening {
    /**
     * Opens it.
     *
     * @param notices takes what its owner ought to know of it
     */
    Exchange open(Consumer<String> notices) throws Fault;
  }

  private enum Part {
    NEAR,
    FAR
  }

  private interface Course {
    Told run() throws IOException, Fault;
  }

  private record Hello(Part part, Exchange.Device device, long digest) {}

  /** What both sides hold of what differs. */
  private record Difference(Holdings mine, Holdings theirs) {
    Holdings give() {
      return mine.without(theirs);
    }

    Holdings take() {
      return theirs.without(mine);
    }
  }

  /**
   * Over two streams, which stay open.
   *
   * @param other how the other end is called in sentences
   * @param version of this program
   */
  public Talk(Streams streams, String other, String version) {
    this.wire = new Wire(new Patience(streams), other, version);
  }

  /** Two streams and how long nothing may move in them. */
  public record Streams(InputStream in, OutputStream out, Duration patience) {}

  /** Has the exchange this side started. */
  public Told near(Exchange log, Terms terms) throws Fault {
    wire.streams().whileGoing(terms::goOn);
    return said(() -> nearly(log, terms));
  }

  /** Serves one exchange; faults are told to the other side too. */
  public Told far(Opening opening) throws Fault {
    return said(() -> serve(opening));
  }

  private Told said(Course course) throws Fault {
    try {
      greet();
      return told(course);
    } catch (Patience.CalledOff e) {
      throw e.why();
    } catch (Patience.Silence e) {
      throw TalkFaults.silent(wire.other(), e.getMessage());
    } catch (IOException e) {
      throw TalkFaults.ended(wire.other(), e);
    } finally {
      wire.streams().end();
    }
  }

  /** A stream that ends before the greeting had nobody at its other end. */
  private void greet() throws IOException, Fault {
    try {
      wire.greet();
    } catch (Patience.CalledOff | Patience.Silence e) {
      throw e;
    } catch (IOException e) {
      throw TalkFaults.notPadside(wire.other(), "");
    }
  }

  private Told told(Course course) throws IOException, Fault {
    try {
      return course.run();
    } catch (Wire.Damage e) {
      Fault fault = TalkFaults.damaged(wire.other(), e.getMessage());
      tell(TalkFaults.damaged("the other side of this exchange", e.getMessage()));
      throw fault;
    } catch (Fault fault) {
      if (!fault.code().equals(TalkFaults.THERE)) {
        tell(fault);
      }
      throw fault;
    }
  }

  /** The other side learns why, where it still listens. */
  private void tell(Fault fault) {
    try {
      wire.send(
          Wire.Kind.FAULT,
          message -> {
            Wire.text(message, fault.sentence());
            Wire.text(message, fault.nextStep());
          });
    } catch (IOException e) {
      return; // it is gone, and this side has its sentence
    }
  }

  private Told nearly(Exchange log, Terms terms) throws IOException, Fault {
    Buckets mine = new Buckets(log.holdings());
    hello(Part.NEAR, log, mine);
    Hello far = hello(Part.FAR);
    Ending ending = new Ending(far.device(), log, terms, new Remarks());
    if (far.digest() == mine.digest()) {
      return ending.near(0, 0);
    }
    wire.send(Wire.Kind.BUCKETS, mine::write);
    BitSet differing = wire.receive(Wire.Kind.BUCKETS, Buckets::some);
    Difference difference = new Difference(mine.in(differing), Buckets.receive(wire));
    Buckets.send(wire, difference.mine());
    List<Stranger> writers = wire.receive(Wire.Kind.WRITERS, Talk::writers);
    if (terms.onlyLook()) {
      wire.send(Wire.Kind.STOP);
      return ending.told(difference.give().count(), difference.take().count(), List.of());
    }
    Set<String> agreed = agreed(log, terms, writers);
    wire.send(Wire.Kind.GO);
    long out = ending.batches.give(difference.give(), ending.remarks);
    long in = ending.batches.only(agreed).take(difference.take().count(), ending.remarks);
    return ending.near(out, in);
  }

  /** The machines whose lines may come. */
  private Set<String> agreed(Exchange log, Terms terms, List<Stranger> writers)
      throws IOException, Fault {
    Set<String> agreed = new HashSet<>(log.devices().keySet());
    List<Stranger> strangers =
        writers.stream()
            .filter(each -> each.lines() > 0 && !agreed.contains(each.device().id()))
            .toList();
    if (!strangers.isEmpty() && !mayTake(terms, strangers)) {
      throw SyncFaults.declined();
    }
    strangers.forEach(each -> agreed.add(each.device().id()));
    return agreed;
  }

  private boolean mayTake(Terms terms, List<Stranger> strangers) throws IOException, Fault {
    boolean may = false;
    try {
      may = terms.mayTake(strangers);
    } finally {
      if (!may) {
        wire.send(Wire.Kind.STOP);
      }
    }
    return may;
  }

  private Told serve(Opening opening) throws IOException, Fault {
    Hello near = hello(Part.NEAR);
    Remarks remarks = new Remarks();
    Exchange log = opening.open(remarks::add);
    Buckets mine = new Buckets(log.holdings());
    hello(Part.FAR, log, mine);
    Ending ending = new Ending(near.device(), log, new Unasked(), remarks);
    if (near.digest() == mine.digest()) {
      return ending.far(0, 0);
    }
    BitSet differing = wire.receive(Wire.Kind.BUCKETS, mine::differing);
    Holdings ours = mine.in(differing);
    wire.send(Wire.Kind.BUCKETS, message -> Buckets.write(message, differing));
    Buckets.send(wire, ours);
    Difference difference = new Difference(ours, Buckets.receive(wire));
    Map<Exchange.Device, Holdings> writers = Writers.of(log, difference.give());
    wire.send(Wire.Kind.WRITERS, message -> writers(message, writers));
    if (wire.receive().kind() != Wire.Kind.GO) {
      return ending.told(0, 0, List.of());
    }
    long in = ending.batches.take(difference.take().count(), ending.remarks);
    long out = ending.batches.give(difference.give(), ending.remarks);
    return ending.far(out, in);
  }

  private void hello(Part part, Exchange log, Buckets mine) throws IOException, Fault {
    Exchange.Device self = log.self();
    wire.send(
        Wire.Kind.HELLO,
        message -> {
          message.writeBoolean(part == Part.NEAR);
          device(message, self);
          message.writeLong(mine.digest());
        });
  }

  private Hello hello(Part wanted) throws IOException, Fault {
    Hello hello =
        wire.receive(
            Wire.Kind.HELLO,
            message ->
                new Hello(
                    message.readBoolean() ? Part.NEAR : Part.FAR,
                    device(message),
                    message.readLong()));
    if (hello.part() != wanted) {
      throw TalkFaults.echo(wire.other());
    }
    return hello;
  }

  private static void device(DataOutputStream message, Exchange.Device device) throws IOException {
    String label = device.label();
    Wire.text(message, device.id());
    Wire.text(message, label.substring(0, Math.min(label.length(), MOST_LABEL)));
  }

  private static Exchange.Device device(DataInputStream message) throws IOException {
    String id = Wire.text(message);
    if (!id.isEmpty() && !Holdings.isRun(id)) {
      throw new Wire.Damage("no name of a machine");
    }
    return new Exchange.Device(id, Wire.text(message));
  }

  private static void writers(DataOutputStream message, Map<Exchange.Device, Holdings> writers)
      throws IOException {
    List<Map.Entry<Exchange.Device, Holdings>> all =
        writers.entrySet().stream().limit(MOST_WRITERS).toList();
    message.writeInt(all.size());
    for (Map.Entry<Exchange.Device, Holdings> each : all) {
      device(message, each.getKey());
      message.writeLong(each.getValue().count());
    }
  }

  private static List<Stranger> writers(DataInputStream message) throws IOException {
    int count = Wire.count(message, MOST_WRITERS);
    List<Stranger> writers = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      writers.add(new Stranger(device(message), message.readLong()));
    }
    return writers;
  }

  /** The far side is not asked: whoever has the key to it may give it lines. */
  private static final class Unasked implements Terms {
    @Override
    public boolean onlyLook() {
      return false;
    }

    @Override
    public boolean mayTake(List<Stranger> strangers) {
      return true;
    }

    @Override
    public void moved(Stage stage, long done, long of) {}
  }

  /** What there is to say when all has moved. */
  private final class Ending {
    private final Exchange.Device other;
    private final Exchange log;
    private final Remarks remarks;
    private final Batches batches;

    Ending(Exchange.Device other, Exchange log, Terms terms, Remarks remarks) {
      this.other = other;
      this.log = log;
      this.remarks = remarks;
      this.batches = new Batches(wire, log, terms);
    }

    Told near(long out, long in) throws IOException, Fault {
      log.settle().forEach(remarks::add);
      say();
      return told(out, in, hear());
    }

    Told far(long out, long in) throws IOException, Fault {
      List<String> there = hear();
      log.settle().forEach(remarks::add);
      say();
      return told(out, in, there);
    }

    private void say() throws IOException {
      wire.send(Wire.Kind.TOLD, message -> Wire.texts(message, remarks.all()));
    }

    private List<String> hear() throws IOException, Fault {
      return wire.receive(Wire.Kind.TOLD, message -> Wire.texts(message, MOST_TOLD));
    }

    Told told(long out, long in, List<String> there) {
      Patience streams = wire.streams();
      return new Told(
          other,
          out,
          in,
          batches.later(),
          remarks.all(),
          there,
          streams.bytesOut(),
          streams.bytesIn());
    }
  }
}
