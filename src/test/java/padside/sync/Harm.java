package padside.sync;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/** What happens to files on a stick. */
final class Harm {
  private Harm() {}

  static List<Path> parcels(Path stick) throws IOException {
    Path place = stick.resolve(FolderPartner.FOLDER);
    if (!Files.exists(place)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(place)) {
      return files.filter(file -> file.toString().endsWith(ParcelFile.SUFFIX)).sorted().toList();
    }
  }

  /** Harms one of the parcels, if there are any. */
  static Optional<Path> somewhere(Path stick, Random random) throws IOException {
    List<Path> parcels = parcels(stick);
    if (parcels.isEmpty()) {
      return Optional.empty();
    }
    Path parcel = parcels.get(random.nextInt(parcels.size()));
    byte[] bytes = Files.readAllBytes(parcel);
    switch (random.nextInt(4)) {
      case 0 -> Files.delete(parcel);
      case 1 -> cut(parcel, random.nextInt(bytes.length));
      case 2 -> {
        Path left = parcel.resolveSibling("00000000000000000000.unfinished");
        Files.write(left, Arrays.copyOf(bytes, random.nextInt(bytes.length)));
      }
      default -> flip(parcel, random.nextInt(bytes.length), random.nextInt(8));
    }
    return Optional.of(parcel);
  }

  static void cut(Path file, int length) throws IOException {
    Files.write(file, Arrays.copyOf(Files.readAllBytes(file), length));
  }

  static void flip(Path file, int at, int bit) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[at] ^= (byte) (1 << bit);
    Files.write(file, bytes);
  }
}
