package padside.sync;

import java.io.IOException;
import padside.fact.Fault;
import padside.store.LogFaults;
import padside.units.PrintableText;

/** What is said when an exchange over streams fails. */
final class TalkFaults {
  /** What the other side said, so that it need not be told. */
  static final String THERE = "sync-there";

  static final String NOT_PADSIDE = "sync-not-padside";
  static final String ENDED = "sync-ended";
  private static final String AGAIN =
      "What moved before is kept on both sides; synchronise again to move the rest.";
  private static final int MOST_QUOTED = 160;

  private TalkFaults() {}

  /** No exchange: the other end says something else. */
  static Fault notPadside(String other, String said) {
    return new Fault(
        NOT_PADSIDE,
        said.isEmpty()
            ? "Padside does not answer at " + other + ": the connection ended without a word."
            : "What answers at " + other + " is not Padside: it says \"" + quoted(said) + "\".",
        "Look whether padside runs there when you log in, and whether it is the right machine;"
            + " nothing was exchanged.");
  }

  static Fault otherVersion(String other, String theirs, String ours) {
    return new Fault(
        "sync-version",
        "The exchange cannot be had with "
            + other
            + ": it speaks \""
            + quoted(theirs)
            + "\", this machine \""
            + ours
            + "\".",
        "Bring the older of the two to the newer version of Padside; nothing was exchanged.");
  }

  static Fault echo(String other) {
    return new Fault(
        "sync-echo",
        "What answers at " + other + " only takes the same part as this machine.",
        "One side starts padside sync with the place, the other padside sync --stdio.");
  }

  /** What came cannot be what was sent, or is nothing Padside sends. */
  static Fault damaged(String other, String what) {
    return new Fault(
        "sync-damaged",
        "What came from "
            + (other.isEmpty() ? "the other machine" : other)
            + " is damaged: "
            + what
            + ".",
        AGAIN);
  }

  static Fault silent(String other, String how) {
    return new Fault(
        "sync-silent", "The connection to " + other + " was given up: " + how + ".", AGAIN);
  }

  static Fault ended(String other, IOException e) {
    return new Fault(
        ENDED,
        "The connection to " + other + " broke off: " + quoted(LogFaults.reason(e)) + ".",
        AGAIN,
        e);
  }

  /** What the other side says stopped it. */
  static Fault there(String other, String sentence, String nextStep) {
    return new Fault(THERE, "At " + other + ": " + quoted(sentence, 1000), quoted(nextStep, 1000));
  }

  static String quoted(String text) {
    return quoted(text, MOST_QUOTED);
  }

  private static String quoted(String text, int most) {
    String shown = PrintableText.of(text.strip());
    return shown.length() <= most ? shown : shown.substring(0, most) + "...";
  }
}
