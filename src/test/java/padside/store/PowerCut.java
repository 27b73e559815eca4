package padside.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;

/**
 * What a medium may hold after the power fails. Of what was written to a file after it was last
 * forced any sector may be there, old or missing; of the names made, changed or removed in a folder
 * after that was forced any number of the first may be there (a journalling file system keeps them
 * in order), or none.
 */
final class PowerCut {
  private static final int SECTOR = 512;

  /** When a new file's name lasts. */
  enum Names {
    /** Once its folder is forced: all that POSIX promises. */
    WITH_THEIR_FOLDER,
    /** Once the file itself is forced, too, as on ext4. */
    WITH_THEIR_FILE
  }

  /** A file, whatever its name at present. */
  private static final class Content {
    private final boolean folder;
    private byte[] lasting = new byte[0];
    private final List<WriteRecord.Event> since = new ArrayList<>();

    Content(boolean folder) {
      this.folder = folder;
    }
  }

  /** A name given to a file, or taken away from what had it. */
  private record Naming(Path name, Content content, boolean given) {}

  private final Path folder;
  private final Names model;
  private final Map<Path, Content> named = new HashMap<>();
  private final Map<Path, Content> lasting = new LinkedHashMap<>();
  private final List<Naming> namings = new ArrayList<>();

  PowerCut(Path folder, Names model) {
    this.folder = folder;
    this.model = model;
    Content top = new Content(true);
    named.put(folder, top);
    lasting.put(folder, top);
  }

  /** Takes in the next thing that was done. */
  void take(WriteRecord.Event event) {
    if (event instanceof WriteRecord.Made made) {
      if (!named.containsKey(made.file())) {
        name(made.file(), new Content(made.folder()));
      }
    } else if (event instanceof WriteRecord.Wrote wrote) {
      named.get(wrote.file()).since.add(event);
    } else if (event instanceof WriteRecord.Truncated truncated) {
      named.get(truncated.file()).since.add(event);
    } else if (event instanceof WriteRecord.Forced forced) {
      force(forced.file());
    } else if (event instanceof WriteRecord.Renamed renamed) {
      Content content = named.get(renamed.from());
      unname(renamed.from());
      name(renamed.to(), content);
    } else if (event instanceof WriteRecord.Removed removed) {
      unname(removed.file());
    }
  }

  private void name(Path name, Content content) {
    named.put(name, content);
    namings.add(new Naming(name, content, true));
  }

  private void unname(Path name) {
    namings.add(new Naming(name, named.remove(name), false));
  }

  private void force(Path file) {
    Content content = named.get(file);
    if (content == null) {
      return; // removed while it was open
    }
    if (content.folder) {
      settle(naming -> naming.name().getParent().equals(file));
      return;
    }
    content.since.forEach(event -> content.lasting = applied(content.lasting, event));
    content.since.clear();
    if (model == Names.WITH_THEIR_FILE) {
      for (Path name = file; !name.equals(folder); name = name.getParent()) {
        Content each = named.get(name);
        settle(naming -> naming.content() == each);
      }
    }
  }

  private void settle(Predicate<Naming> settled) {
    for (Naming naming : List.copyOf(namings)) {
      if (settled.test(naming)) {
        put(lasting, naming);
        namings.remove(naming);
      }
    }
  }

  private static void put(Map<Path, Content> names, Naming naming) {
    if (!naming.given()) {
      names.remove(naming.name());
    } else {
      names.put(naming.name(), naming.content());
    }
  }

  /** Lays down in a folder what may be left if the power fails now. */
  void leave(Path place, Random random) throws IOException {
    Map<Path, Content> left = new LinkedHashMap<>(lasting);
    int some = random.nextInt(3) == 0 ? 0 : random.nextInt(namings.size() + 1);
    namings.subList(0, some).forEach(naming -> put(left, naming));
    for (Map.Entry<Path, Content> each : left.entrySet()) {
      if (each.getValue().folder) {
        Files.createDirectories(place.resolve(folder.relativize(each.getKey())));
      }
    }
    for (Map.Entry<Path, Content> each : left.entrySet()) {
      Path file = place.resolve(folder.relativize(each.getKey()));
      if (!each.getValue().folder && Files.isDirectory(file.getParent())) {
        Files.write(file, torn(each.getValue(), random));
      }
    }
  }

  private static byte[] torn(Content content, Random random) {
    int how = random.nextInt(4);
    byte[] bytes = content.lasting;
    int last = how == 0 ? 0 : random.nextInt(content.since.size() + 1);
    for (int i = 0; i < content.since.size(); i++) {
      WriteRecord.Event event = content.since.get(i);
      boolean there = how == 1 || (how == 2 && i < last);
      if (there) {
        bytes = applied(bytes, event);
      } else if (how == 3) {
        bytes = sectors(bytes, event, random);
      }
    }
    return bytes;
  }

  private static byte[] applied(byte[] bytes, WriteRecord.Event event) {
    if (event instanceof WriteRecord.Truncated truncated) {
      return Arrays.copyOf(bytes, (int) truncated.size());
    }
    WriteRecord.Wrote wrote = (WriteRecord.Wrote) event;
    int end = (int) wrote.at() + wrote.bytes().length;
    byte[] longer = end > bytes.length ? Arrays.copyOf(bytes, end) : bytes.clone();
    System.arraycopy(wrote.bytes(), 0, longer, (int) wrote.at(), wrote.bytes().length);
    return longer;
  }

  /** Each sector of a write for itself, old or new; the size may have grown all the same. */
  private static byte[] sectors(byte[] bytes, WriteRecord.Event event, Random random) {
    if (event instanceof WriteRecord.Truncated) {
      return random.nextBoolean() ? applied(bytes, event) : bytes;
    }
    WriteRecord.Wrote wrote = (WriteRecord.Wrote) event;
    byte[] now = bytes;
    int from = 0;
    while (from < wrote.bytes().length) {
      long at = wrote.at() + from;
      int length = (int) Math.min(SECTOR - at % SECTOR, wrote.bytes().length - from);
      byte[] part = Arrays.copyOfRange(wrote.bytes(), from, from + length);
      int luck = random.nextInt(5);
      if (luck < 2) {
        now = applied(now, new WriteRecord.Wrote(wrote.file(), at, part));
      } else if (luck == 2 && now.length < at + length) {
        now = Arrays.copyOf(now, (int) at + length);
      }
      from += length;
    }
    return now;
  }
}
