package padside.sync;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import padside.fact.Fault;
import padside.store.LogFaults;

/**
 * What is said when a machine cannot be reached by ssh: what ssh said is nearer to the cause than
 * that the streams ended.
 *
 * @param said by ssh, and by programs at the other end
 */
record SshFaults(SshPartner partner, String said) {
  /** POSIX, Shell Command Language 2.8.2: no such program, and one that cannot be run. */
  private static final Set<Integer> NOT_FOUND = Set.of(127, 126);

  /** EXIT STATUS of ssh(1): an error of its own. */
  private static final int SSH_FAILED = 255;

  /**
   * What ssh says, and what that means; {@code %s} is the machine.
   *
   * @param says words of OpenSSH's messages, in small letters
   * @param askedElsewhere what a shell is good for, where ssh could not ask
   */
  private record Trouble(
      String says, String code, String happened, String nextStep, String askedElsewhere) {
    Trouble(String says, String code, String happened, String nextStep) {
      this(says, code, happened, nextStep, "");
    }
  }

  private static final String BY_HAND = " ssh %s tries it by hand.";
  private static final List<Trouble> TROUBLES =
      List.of(
          new Trouble(
              "identification has changed",
              "sync-host-key-changed",
              "The key by which %s shows who it is has changed",
              "Ask whoever runs it why; only then take the old key out of ~/.ssh/known_hosts."),
          new Trouble(
              "host key verification failed",
              "sync-host-key",
              "The key by which %s shows who it is is not known here",
              "See that it is the right machine: ssh %s shows its key.",
              "padside sync %p in a shell lets ssh ask about it, once."),
          new Trouble(
              "permission denied",
              "sync-key",
              "%s does not let this machine in",
              "Put this machine's public key into ~/.ssh/authorized_keys there." + BY_HAND,
              "A password can be typed only in a shell: padside sync %p."),
          new Trouble(
              "could not resolve hostname",
              "sync-host-unknown",
              "No machine is known by the name %s",
              "Check the name and the network." + BY_HAND),
          new Trouble(
              "connection refused",
              "sync-unreachable",
              "%s takes no ssh connections",
              "See that an ssh server runs there." + BY_HAND),
          new Trouble(
              "timed out",
              "sync-unreachable",
              "%s does not answer",
              "See that it is switched on and on this network." + BY_HAND),
          new Trouble(
              "unreachable",
              "sync-unreachable",
              "There is no way to %s",
              "See that both machines are on the network." + BY_HAND),
          new Trouble(
              "no route to host",
              "sync-unreachable",
              "There is no way to %s",
              "See that both machines are on the network." + BY_HAND));

  static Fault noMachine(String place) {
    return new Fault(
        "sync-host",
        "\"" + TalkFaults.quoted(place) + "\" names no machine to reach by ssh.",
        "Write ssh:user@host, such as ssh:ann@desktop, or with a port ssh://ann@desktop:2222.");
  }

  static Fault notStarted(String program, IOException e) {
    return new Fault(
        "sync-no-ssh",
        "The program " + program + " cannot be started: " + LogFaults.reason(e) + ".",
        "Install it (Debian: apt install openssh-client), or name another in the settings with"
            + " sync.ssh.",
        e);
  }

  /** Whether ssh knows more of a fault. */
  static boolean isExplained(Fault fault) {
    return fault.code().equals(TalkFaults.NOT_PADSIDE) || fault.code().equals(TalkFaults.ENDED);
  }

  /** A fault in the words of ssh, where the connection was the trouble. */
  Fault explained(Fault fault, int status) {
    if (fault.code().equals(TalkFaults.NOT_PADSIDE)) {
      if (status == SSH_FAILED) {
        return trouble().orElseGet(() -> besides(fault));
      }
      if (NOT_FOUND.contains(status)) {
        return new Fault(
            "sync-not-there",
            "There is no command padside on " + partner.destination() + words() + ".",
            "Install Padside there by its package, or link bin/padside into a folder where ssh"
                + " finds commands, such as /usr/local/bin.",
            fault);
      }
    }
    return besides(fault);
  }

  private Optional<Fault> trouble() {
    String small = said.toLowerCase(Locale.ROOT);
    return TROUBLES.stream().filter(each -> small.contains(each.says())).findFirst().map(this::of);
  }

  private Fault of(Trouble trouble) {
    String elsewhere =
        partner.means().mayAsk() || trouble.askedElsewhere().isEmpty()
            ? ""
            : " " + trouble.askedElsewhere();
    return new Fault(
        trouble.code(),
        named(trouble.happened()) + words() + ".",
        named(trouble.nextStep() + elsewhere));
  }

  private String named(String text) {
    return text.replace("%s", partner.destination()).replace("%p", partner.place());
  }

  private Fault besides(Fault fault) {
    String words = LastWords.lastOf(said);
    return words.isEmpty()
        ? fault
        : new Fault(
            fault.code(),
            fault.sentence() + " ssh passes on: \"" + words + "\".",
            fault.nextStep(),
            fault);
  }

  private String words() {
    String words = LastWords.lastOf(said);
    return words.isEmpty() ? "" : " (\"" + words + "\")";
  }
}
