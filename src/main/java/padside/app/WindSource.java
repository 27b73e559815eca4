package padside.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import padside.units.PrintableText;
import padside.units.TimeSpan;

/**
 * Where a wind meter's lines come from while screens run.
 *
 * @param place a serial device, a file, a named pipe; absent for a made-up meter
 * @param minutes averaged over
 */
record WindSource(Optional<Path> place, int minutes) {
  /** The place that stands for a made-up meter. */
  private static final String SIMULATED = "simulated";

  static final int MOST_MINUTES = 60;

  /** The one of a place as the settings have it. */
  static WindSource of(String place, int minutes) {
    boolean made = place.equalsIgnoreCase(SIMULATED);
    return new WindSource(made ? Optional.empty() : Optional.of(Folders.typed(place)), minutes);
  }

  /** A made-up meter. */
  static WindSource simulated(int minutes) {
    return new WindSource(Optional.empty(), minutes);
  }

  TimeSpan span() {
    return TimeSpan.ofMinutes(minutes);
  }

  /** Its name as sentences have it. */
  String name() {
    return place.map(path -> PrintableText.of(path.toString())).orElse("the made-up meter");
  }

  /** Opens it; of a named pipe nobody writes to this waits for somebody who does. */
  InputStream open() throws IOException {
    if (place.isEmpty()) {
      return new MadeInput();
    }
    Path path = place.get();
    InputStream in = Files.isRegularFile(path) ? new GrowingFile(path) : Files.newInputStream(path);
    return new PacedInput(in);
  }

  /** Why it cannot be read, the end of a sentence. */
  String trouble(IOException e) {
    if (e instanceof NoSuchFileException) {
      return name() + " is not there";
    }
    if (e instanceof AccessDeniedException) {
      return name() + " is not yours to read";
    }
    boolean folder = place.filter(Files::isDirectory).isPresent();
    return name() + (folder ? " is a folder" : " cannot be read");
  }
}
