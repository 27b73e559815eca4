package padside.app;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Shows a program another time of day by libfaketime, and lets it jump while the program runs. The
 * uptime stays true. See libfaketime's README, sections 4 and 4d.
 */
final class WrongClock {
  private static final Path LIBRARIES = Path.of("/usr/lib");

  private final Path library;
  private final Path offset;

  /** The clock is right at first; skips the test where the library is missing. */
  WrongClock(Path folder) throws IOException {
    Optional<Path> found = find();
    assumeTrue(
        found.isPresent(),
        "libfaketime was not found below /usr/lib; apt-get install faketime runs this test.");
    library = found.get();
    offset = folder.resolve("offset");
    jump("+0");
  }

  private static Optional<Path> find() throws IOException {
    try (Stream<Path> machines = Files.list(LIBRARIES)) {
      List<Path> folders = machines.toList();
      return folders.stream()
          .map(each -> each.resolve("faketime/libfaketimeMT.so.1"))
          .filter(Files::isReadable)
          .findFirst();
    }
  }

  /** From now on the clock is off by so much of the true time, such as {@code -50y}. */
  void jump(String by) throws IOException {
    Path next = offset.resolveSibling("next");
    Files.writeString(next, by + "\n");
    Files.move(next, offset, StandardCopyOption.ATOMIC_MOVE);
  }

  /** The variables that show a program this clock. */
  String variables() {
    return "LD_PRELOAD='"
        + library
        + "' FAKETIME_TIMESTAMP_FILE='"
        + offset
        + "' FAKETIME_NO_CACHE=1 DONT_FAKE_MONOTONIC=1 NO_FAKE_STAT=1"
        // Else every timed wait of the JVM ends at once and begins again, on glibc 2.36.
        + " FAKETIME_FORCE_MONOTONIC_FIX=0";
  }
}
