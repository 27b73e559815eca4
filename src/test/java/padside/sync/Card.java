package padside.sync;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.flight.Action;
import padside.flight.Kind;
import padside.flight.Rocket;
import padside.store.Exchange;
import padside.store.FolderCopy;
import padside.store.Holdings;
import padside.store.LogFolder;
import padside.store.PretendMachine;

/** A machine with its log, that may be switched off and on, lose its database and be copied. */
final class Card implements AutoCloseable {
  private static final long WALL = 1_795_601_335_000L;
  private static final long DECADE = 315_576_000_000L;

  final Path folder;
  final String label;
  private final Random random;
  private final long wall;
  private Optional<LogFolder> open = Optional.empty();

  /** A machine whose clock may be decades off. */
  Card(Path folder, String label, Random random) {
    this.folder = folder;
    this.label = label;
    this.random = random;
    this.wall = WALL + (random.nextInt(9) - 4) * DECADE;
  }

  LogFolder log() throws Fault {
    if (open.isEmpty()) {
      long seed = random.nextLong();
      open =
          Optional.of(
              LogFolder.open(folder, new PretendMachine(seed, label, "boot-" + seed, wall)));
    }
    return open.get();
  }

  Exchange exchange() throws Fault {
    return log().exchange();
  }

  RecordId add(String name) throws Fault {
    return log()
        .save(Action.create("add", Kind.ROCKET, Facts.none().with(Rocket.NAME, name)))
        .get(0);
  }

  void rename(RecordId rocket, String name) throws Fault {
    log().save(Action.change("rename", Kind.ROCKET, rocket, Facts.none().with(Rocket.NAME, name)));
  }

  /** The names its rockets show. */
  List<String> names() throws Fault {
    return log().list(Kind.ROCKET).stream()
        .map(stored -> stored.facts().get(Rocket.NAME).orElseThrow())
        .sorted()
        .toList();
  }

  Told with(Path stick) throws Fault {
    return new FolderPartner(stick).exchange(exchange(), new Willing());
  }

  /** Every line it has, by name. */
  Set<String> lines() throws Fault {
    Set<String> names = new HashSet<>();
    for (var run : exchange().holdings().runs().entrySet()) {
      for (Holdings.Span span : run.getValue()) {
        for (long n = span.first(); n <= span.last(); n++) {
          names.add(run.getKey() + "." + n);
        }
      }
    }
    return names;
  }

  void deleteDatabase() throws Fault, IOException {
    close();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.getFileName().toString().contains("sqlite")).toList()) {
        Files.delete(file);
      }
    }
  }

  /** Another card with the same on it. */
  Card copied(Path to, String other) throws Fault, IOException {
    close();
    FolderCopy.of(folder, Files.createDirectories(to));
    return new Card(to, other, random);
  }

  @Override
  public void close() throws Fault {
    if (open.isPresent()) {
      open.get().close();
      open = Optional.empty();
    }
  }
}
