package padside.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A small file system of its own, mounted on a folder; takes the rights of root. */
public final class SmallMedium implements AutoCloseable {
  private static final int MEGABYTES = 4;

  private final Path folder;

  private SmallMedium(Path folder) {
    this.folder = folder;
  }

  /** Whether file systems may be mounted here. */
  public static boolean canBeMounted() {
    try (SmallMedium tried = inMemory(Files.createTempDirectory("medium"))) {
      return Files.isDirectory(tried.folder);
    } catch (IOException e) {
      return false;
    }
  }

  /** Four megabytes of memory. */
  public static SmallMedium inMemory(Path folder) throws IOException {
    run("mount", "-t", "tmpfs", "-o", "size=" + MEGABYTES + "m", "none", folder.toString());
    return new SmallMedium(folder);
  }

  /** An ext4 file system in a file. */
  public static SmallMedium ext4(Path image, Path folder) throws IOException {
    Files.write(image, new byte[(2 * MEGABYTES) << 20]);
    run("mkfs.ext4", "-q", "-F", image.toString());
    return mounted(image, folder);
  }

  /** Whether the file system of most sticks can be made and mounted here. */
  public static boolean canBeMountedAsFat() {
    try {
      Path folder = Files.createTempDirectory("medium");
      try (SmallMedium tried =
          fat(folder.resolve("image"), Files.createDirectory(folder.resolve("on")))) {
        return Files.isDirectory(tried.folder);
      }
    } catch (IOException e) {
      return false;
    }
  }

  /** A FAT file system in a file. */
  public static SmallMedium fat(Path image, Path folder) throws IOException {
    Files.write(image, new byte[(2 * MEGABYTES) << 20]);
    run("mkfs.vfat", image.toString());
    return mounted(image, folder);
  }

  /** From now on it is write-protected. */
  public void readOnly() throws IOException {
    run("mount", "-o", "remount,ro", folder.toString());
  }

  /** One made before, as after the power came back. */
  public static SmallMedium mounted(Path image, Path folder) throws IOException {
    run("mount", "-o", "loop", image.toString(), folder.toString());
    return new SmallMedium(folder);
  }

  /** From now on nothing can be written, as after an error of the medium. */
  public void abort() throws IOException {
    run("mount", "-o", "remount,abort", folder.toString());
  }

  /** Takes up all room that is left; delete the file to free it. */
  public Path fill() throws IOException {
    Path filler = folder.resolve("filler");
    fill(filler, 1 << 16);
    fill(filler, 1);
    return filler;
  }

  private static void fill(Path file, int block) {
    byte[] bytes = new byte[block];
    bytes[0] = 1;
    try (OutputStream out =
        Files.newOutputStream(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
      while (true) {
        out.write(bytes);
      }
    } catch (IOException full) {
      return; // that is what was wanted
    }
  }

  private static void run(String... command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      if (process.waitFor() != 0) {
        throw new IOException(String.join(" ", command) + ": " + said.strip());
      }
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public void close() throws IOException {
    run("umount", folder.toString());
  }
}
