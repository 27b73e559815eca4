package padside.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * What this machine goes by in the journals, in {@code device.json} beside a log. A database built
 * anew holds the headers of other machines too and cannot tell it.
 */
final class DeviceFile {
  static final String NAME = "device.json";

  private final WholeFile file;

  DeviceFile(Path folder) {
    this.file = new WholeFile(folder, NAME);
  }

  /** Absent where nothing sound is there. */
  Optional<String> read() {
    return file.read().flatMap(DeviceFile::device);
  }

  private static Optional<String> device(String text) {
    try {
      return Json.readMap(text).get("dev") instanceof String dev && Holdings.isRun(dev)
          ? Optional.of(dev)
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Once this returns it lasts. */
  void write(String device) throws IOException {
    if (!read().equals(Optional.of(device))) {
      file.write(Json.write(Map.of("dev", device)));
      file.force();
    }
  }
}
