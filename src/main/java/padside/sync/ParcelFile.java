package padside.sync;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;
import padside.units.Reading;

/**
 * A parcel that lies somewhere, looked at.
 *
 * @param head what is in it: as it promises where it is whole, else what reads soundly
 * @param start where its lines begin
 * @param remark what is wrong with it, for a sentence; mostly absent
 * @param isNewer whether only a newer version can read it
 */
record ParcelFile(Path file, Parcel head, long start, Optional<String> remark, boolean isNewer) {
  static final String SUFFIX = ".parcel";

  private static final Parcel NOTHING = new Parcel(Parcel.UNKNOWN, Map.of(), Map.of(), 0);

  /** Gets the lines of a parcel. */
  interface Taker {
    void line(byte[] line) throws IOException, Fault;
  }

  /** Its name in the folder, its ending left off. */
  String name() {
    String name = file.getFileName().toString();
    return name.endsWith(SUFFIX) ? name.substring(0, name.length() - SUFFIX.length()) : name;
  }

  /** Looks at a file; of one that came to harm it finds out which lines are sound. */
  static ParcelFile look(Path file) throws Fault {
    try (FileChannel channel = open(file);
        InputStream bytes = Channels.newInputStream(channel)) {
      LineInput input = new LineInput(bytes);
      Optional<byte[]> line = input.next(ParcelForm.MOST_BYTES);
      Reading<Map<?, ?>> json =
          line.isEmpty() || input.torn()
              ? Reading.refused("its head is cut off")
              : ParcelForm.json(ByteBuffer.wrap(line.get()));
      long version = json.value().map(ParcelForm::version).orElse(0L);
      if (version > ParcelForm.VERSION) {
        return new ParcelFile(file, NOTHING, input.read(), Optional.of(newer(version)), true);
      }
      Reading<Parcel> head =
          version == 0
              ? Reading.refused("its head is damaged")
              : ParcelForm.read(json.value().orElseThrow());
      long size = channel.size();
      if (head.value().filter(parcel -> input.read() + parcel.bytes() == size).isPresent()) {
        return new ParcelFile(file, head.value().get(), input.read(), Optional.empty(), false);
      }
      String why = head.objection().orElse("it is cut short, or longer than it was");
      return sound(file, head, head.value().isPresent() ? input.read() : 0).because(why);
    } catch (IOException e) {
      throw SyncFaults.unreadable(file, e);
    }
  }

  private static String newer(long version) {
    return "it was written by a newer Padside (form "
        + version
        + "); update Padside on this machine to take what is in it";
  }

  private ParcelFile because(String why) {
    return new ParcelFile(file, head, start, Optional.of(why), false);
  }

  /** No link is followed: a stick from elsewhere cannot name a file of this machine. */
  private static FileChannel open(Path file) throws IOException {
    return FileChannel.open(file, Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS));
  }

  private static ParcelFile sound(Path file, Reading<Parcel> promised, long start) throws Fault {
    Sound sound = new Sound();
    ParcelFile found = new ParcelFile(file, NOTHING, start, Optional.empty(), false);
    found.read(sound::line);
    Exchange.Device by = promised.value().map(Parcel::by).orElse(Parcel.UNKNOWN);
    Map<String, Holdings> unsound = promised.value().map(Parcel::unsound).orElse(Map.of());
    return new ParcelFile(
        file,
        new Parcel(by, sound.byDevice(promised.value()), unsound, 0),
        start,
        Optional.empty(),
        false);
  }

  /** Reads its lines, sound or not. */
  void read(Taker taker) throws Fault {
    try (Lines lines = lines()) {
      Optional<byte[]> line = lines.next();
      while (line.isPresent()) {
        taker.line(line.get());
        line = lines.next();
      }
    } catch (IOException e) {
      throw SyncFaults.unreadable(file, e);
    }
  }

  /** Its lines, sound or not, one by one. */
  Lines lines() throws Fault {
    try {
      FileChannel channel = open(file);
      return new Lines(
          file, new LineInput(Channels.newInputStream(channel.position(start))), channel);
    } catch (IOException e) {
      throw SyncFaults.unreadable(file, e);
    }
  }

  /** The lines of a file that is open. */
  record Lines(Path file, LineInput input, FileChannel channel) implements AutoCloseable {
    Optional<byte[]> next() throws IOException {
      return input.next(Exchange.MOST_BYTES);
    }

    @Override
    public void close() throws Fault {
      try {
        channel.close();
      } catch (IOException e) {
        throw SyncFaults.unreadable(file, e);
      }
    }
  }

  /** Whether a folder's entry is a file of its own that may be a parcel. */
  static boolean isPlain(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** What reads soundly of a parcel that came to harm. */
  private static final class Sound {
    private final HoldingsFound found = new HoldingsFound();
    private final Map<String, Exchange.Device> devices = new HashMap<>();

    void line(byte[] line) {
      Optional<Map<?, ?>> json = ParcelForm.json(ByteBuffer.wrap(line)).value();
      Optional<JournalName> name = json.flatMap(JournalName::of);
      if (name.isPresent()) {
        found.add(name.get());
        JournalName.device(json.get())
            .filter(device -> name.get().n() == 0)
            .ifPresent(device -> devices.put(name.get().run(), device));
      }
    }

    Map<Exchange.Device, Holdings> byDevice(Optional<Parcel> promised) {
      promised.ifPresent(
          parcel ->
              parcel
                  .lines()
                  .forEach(
                      (device, holdings) ->
                          holdings.runs().keySet().forEach(r -> devices.putIfAbsent(r, device))));
      return Writers.by(found.all(), devices);
    }
  }
}
