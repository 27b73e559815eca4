package padside.store;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** What decay does to files: bits that turn over, an end that is missing, a sector of nothing. */
final class Damage {
  private static final int SECTOR = 512;
  private static final int ONE_IN_FOUR = 4;

  private final Random random;
  private final List<String> done = new ArrayList<>();

  private Damage(Random random) {
    this.random = random;
  }

  /** Damages one file of a log, in one of four cases two of them; says what was done. */
  static List<String> to(Path log, Random random) throws IOException {
    Damage damage = new Damage(random);
    List<Path> files = damage.filesOf(log);
    Collections.shuffle(files, random);
    int hit = random.nextInt(ONE_IN_FOUR) == 0 ? 2 : 1;
    for (Path file : files.subList(0, Math.min(hit, files.size()))) {
      damage.damage(file);
    }
    return damage.done;
  }

  /** The database, what SQLite keeps beside it, and one of the journals. */
  private List<Path> filesOf(Path log) throws IOException {
    List<Path> files = new ArrayList<>();
    for (String name : List.of("padside.sqlite", "padside.sqlite-wal")) {
      if (Files.exists(log.resolve(name))) {
        files.add(log.resolve(name));
      }
    }
    List<Path> journals = JournalFiles.in(log.resolve("journal"));
    files.add(journals.get(random.nextInt(journals.size())));
    return files;
  }

  private void damage(Path file) throws IOException {
    long size = Files.size(file);
    if (size == 0) {
      return;
    }
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      long at = (long) (random.nextDouble() * size);
      switch (random.nextInt(8)) {
        case 0 -> {
          bytes.setLength(at);
          done.add(file.getFileName() + " cut off at " + at + " of " + size);
        }
        case 1 -> {
          bytes.seek(at - at % SECTOR);
          bytes.write(new byte[(int) Math.min(SECTOR, size - (at - at % SECTOR))]);
          done.add(file.getFileName() + " sector of nothing at " + at);
        }
        default -> {
          bytes.seek(at);
          int before = bytes.read();
          bytes.seek(at);
          bytes.write(before ^ 1 << random.nextInt(8));
          done.add(file.getFileName() + " bit turned at " + at);
        }
      }
    }
  }
}
