package padside.app;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import padside.fact.Fault;
import padside.store.WholeFile;

/** A file that something is written to for other programs to read. */
record NewFile(Path path) {
  /** There is one of that name; an answer to what was asked for, not a failure. */
  static final class AlreadyThere extends Exception {
    private static final long serialVersionUID = 1L;

    private AlreadyThere(Path path) {
      super("There is a file " + path + " already");
    }

    /**
     * Says so.
     *
     * @param more what else helps beside another name; nothing, or its words with a comma
     */
    String sentence(String more) {
      return getMessage() + "; " + more + "name another, or remove it first.";
    }
  }

  /** What is there is never overwritten; what could not be written whole does not stay. */
  void write(String text) throws AlreadyThere, Fault {
    try {
      Files.createFile(path);
    } catch (FileAlreadyExistsException e) {
      throw new AlreadyThere(path);
    } catch (IOException e) {
      throw failed(e);
    }
    try {
      Files.writeString(path, text, StandardOpenOption.WRITE);
    } catch (IOException e) {
      try {
        Files.deleteIfExists(path);
      } catch (IOException stays) {
        e.addSuppressed(stays);
      }
      throw failed(e);
    }
  }

  /** Puts the text in the place of what is there, whole or not at all. */
  void replace(String text) throws Fault {
    WholeFile file = WholeFile.forOthers(path.toAbsolutePath());
    try {
      file.write(text);
      file.force();
    } catch (IOException e) {
      throw failed(e);
    }
  }

  private Fault failed(IOException e) {
    return new Fault(
        "export-file",
        "The file " + path + " cannot be written.",
        "Check that its folder is there and has room, or name another.",
        e);
  }
}
