package padside.sync;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import padside.fact.Fault;
import padside.store.Exchange;
import padside.store.Holdings;

/**
 * A folder that several machines see, at once or one after the other: a stick, a share, a folder
 * something keeps alike. In its folder {@code padside-sync} everyone puts parcels nobody ever
 * changes.
 *
 * @param folder the one named, or its {@code padside-sync}
 */
public record FolderPartner(Path folder) {
  /** Where the parcels are. */
  static final String FOLDER = "padside-sync";

  private static final Pattern NAME = Pattern.compile("[0-9a-f]{20}\\.parcel");
  private static final String UNFINISHED = ".unfinished";
  private static final int NAME_BYTES = 10;
  private static final SecureRandom LUCK = new SecureRandom();

  /** What is found there and here before anything moves. */
  private record Before(Parcels parcels, Holdings mine, Holdings lacking) {}

  private Path place() {
    return folder.endsWith(FOLDER) ? folder : folder.resolve(FOLDER);
  }

  /** Takes what the log lacks and puts there what the folder lacks. */
  public Told exchange(Exchange log, Terms terms) throws Fault {
    Remarks remarks = new Remarks();
    Parcels parcels = Parcels.of(parcels(remarks));
    Holdings mine = log.holdings();
    Before before = new Before(parcels, mine, parcels.all().without(mine));
    if (terms.onlyLook()) {
      long out = mine.without(parcels.all()).count();
      return told(out, before.lacking.count(), 0, remarks);
    }
    List<Stranger> strangers = parcels.strangers(log, before.lacking);
    if (!strangers.isEmpty() && !terms.mayTake(strangers)) {
      throw SyncFaults.declined();
    }
    Taking taking = new Taking(log, mine, terms, before.lacking.count(), remarks);
    Map<String, Holdings> unsound = take(before, taking, log, remarks);
    long out = give(parcels.with(unsound), unsound, log, new Giving(terms, taking.fresh()));
    log.settle().forEach(remarks::add);
    return told(out, taking.fresh(), taking.later(), remarks);
  }

  private record Giving(Terms terms, long came) {}

  private Told told(long out, long in, long later, Remarks remarks) {
    return Told.byFiles(new Exchange.Device("", folder.toString()), out, in, later, remarks);
  }

  /** The parcels this version can read; of those that came to harm what is sound. */
  private List<ParcelFile> parcels(Remarks remarks) throws Fault {
    if (!Files.isDirectory(folder)) {
      throw SyncFaults.noFolder(folder);
    }
    if (!Files.exists(place(), LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    if (!Files.isDirectory(place(), LinkOption.NOFOLLOW_LINKS)) {
      throw SyncFaults.noLink(place());
    }
    List<ParcelFile> parcels = new ArrayList<>();
    for (Path file : files()) {
      ParcelFile parcel = ParcelFile.look(file);
      parcel
          .remark()
          .ifPresent(why -> remarks.add("Parcel " + parcel.name() + " there: " + why + "."));
      if (!parcel.isNewer()) {
        parcels.add(parcel);
      }
    }
    return parcels;
  }

  private List<Path> files() throws Fault {
    try (Stream<Path> files = Files.list(place())) {
      return files
          .filter(file -> NAME.matcher(file.getFileName().toString()).matches())
          .filter(ParcelFile::isPlain)
          .sorted()
          .toList();
    } catch (IOException e) {
      throw SyncFaults.unreadable(place(), e);
    }
  }

  /** What came of taking: lines that parcels promise and do not hold soundly. */
  private static Map<String, Holdings> take(
      Before before, Taking taking, Exchange log, Remarks remarks) throws Fault {
    List<ParcelFile> read = new ArrayList<>();
    Holdings lacking = before.lacking;
    for (ParcelFile parcel : before.parcels.files()) {
      if (!before.parcels.in(parcel).within(lacking).isEmpty()) {
        taking.from(parcel);
        read.add(parcel);
        lacking = before.lacking.without(taking.known());
      }
    }
    lacking = before.lacking.without(log.holdings());
    Map<String, Holdings> unsound = new LinkedHashMap<>();
    for (ParcelFile parcel : read) {
      Holdings missing = before.parcels.in(parcel).within(lacking);
      if (!missing.isEmpty()) {
        unsound.put(parcel.name(), missing);
        remarks.add(
            "Parcel "
                + parcel.name()
                + " there: "
                + missing.count()
                + " of its lines are damaged; a machine that has them gives them again with its"
                + " next exchange.");
      }
    }
    return unsound;
  }

  private long give(Parcels parcels, Map<String, Holdings> unsound, Exchange log, Giving giving)
      throws Fault {
    Holdings lacking = log.holdings().without(parcels.all());
    if (lacking.isEmpty() && unsound.isEmpty()) {
      return 0;
    }
    ParcelWriter writer = ParcelWriter.of(log, lacking, unsound, giving.terms);
    try {
      Files.createDirectories(place());
      writer.write(place().resolve(freshName()), log.self().id() + UNFINISHED);
    } catch (IOException e) {
      throw SyncFaults.notWritten(place(), e, giving.came);
    }
    return lacking.count();
  }

  private static String freshName() {
    byte[] name = new byte[NAME_BYTES];
    LUCK.nextBytes(name);
    return HexFormat.of().formatHex(name) + ParcelFile.SUFFIX;
  }
}
