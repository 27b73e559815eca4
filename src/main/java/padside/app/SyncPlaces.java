package padside.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import padside.fact.Fault;
import padside.screen.Sync;
import padside.store.Exchange;
import padside.store.LogFaults;
import padside.sync.Bundle;
import padside.sync.FolderPartner;
import padside.sync.Partners;
import padside.sync.SshPartner;
import padside.sync.Talk;
import padside.sync.Terms;
import padside.sync.Told;

/** The places a log is synchronised with: how each is reached, and what is noted of it. */
final class SyncPlaces implements SyncKeeper.Places {
  private final Partners partners;
  private final SshPartner.Means ssh;
  private final Now now;

  /** The log's time, as it is shown. */
  interface Now {
    String text() throws Fault;
  }

  /** Those of the log in a folder. */
  SyncPlaces(Path log, SshPartner.Means ssh, Now now) {
    this.partners = new Partners(log);
    this.ssh = ssh;
    this.now = now;
  }

  /**
   * How machines are reached by ssh.
   *
   * @param mayAsk whether ssh may ask on the terminal
   */
  static SshPartner.Means ssh(SettingsFile settings, boolean mayAsk) {
    // Who is asked for a password may take as long as who is asked about strangers.
    return new SshPartner.Means(
        settings.ssh(), mayAsk, mayAsk ? Talk.FAR_PATIENCE : Talk.PATIENCE, Version.text());
  }

  /** The last one first. */
  @Override
  public List<Partners.Partner> list() {
    return partners.list();
  }

  @Override
  public void drop(String place) throws Fault {
    try {
      partners.drop(place);
    } catch (IOException e) {
      throw notNoted(e);
    }
  }

  /** A place as it is noted: a folder by its whole path, a machine as typed. */
  static String named(String typed) {
    return SshPartner.isMeant(typed)
        ? typed
        : Folders.typed(typed).toAbsolutePath().normalize().toString();
  }

  /** Exchanges all that either lacks; notes how that ended, unless it was only looked. */
  @Override
  public Told exchange(String typed, Exchange log, Terms terms) throws Fault {
    String place = named(typed);
    boolean far = SshPartner.isMeant(place);
    if (!far && Files.isRegularFile(Path.of(place))) {
      return new Bundle(Path.of(place)).take(log, terms);
    }
    try {
      Told told =
          far
              ? new SshPartner(place, ssh).exchange(log, terms)
              : new FolderPartner(Path.of(place)).exchange(log, terms);
      if (!terms.onlyLook()) {
        note(place, told.out(), told.in(), sentence(place, told));
      }
      return told;
    } catch (Fault fault) {
      if (partners.list().stream().anyMatch(each -> each.place().equals(place))) {
        note(place, 0, 0, fault.sentence());
      }
      throw fault;
    }
  }

  private void note(String place, long out, long in, String ended) throws Fault {
    try {
      partners.note(new Partners.Partner(place, now.text(), out, in, ended));
    } catch (IOException e) {
      throw notNoted(e);
    }
  }

  private static Fault notNoted(IOException e) {
    return new Fault(
        "sync-not-noted",
        "The list of places to synchronise with could not be written: " + LogFaults.reason(e) + ".",
        "Free some space; the exchange itself was kept.",
        e);
  }

  /** How an exchange ended. */
  static String sentence(String place, Told told) {
    String newer =
        told.later() == 0
            ? ""
            : " Kept but not shown: "
                + Sync.counted(told.later())
                + " of a newer version; update Padside to see them.";
    return "Synchronised with "
        + place
        + ": "
        + Sync.counted(told.out())
        + " went there, "
        + Sync.counted(told.in())
        + " came."
        + newer;
  }
}
