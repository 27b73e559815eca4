package padside.screen;

import java.util.List;
import java.util.Optional;

/**
 * How it stands with other machines.
 *
 * @param partners what was synchronised with, the last first
 * @param running the exchange under way
 */
public record Sync(List<Partner> partners, Optional<Running> running) {
  /** What a machine is called that does not say. */
  static final String NAMELESS = "a machine without a name";

  /** Keeps its own list. */
  public Sync {
    partners = List.copyOf(partners);
  }

  /** With nobody yet. */
  public static Sync none() {
    return new Sync(List.of(), Optional.empty());
  }

  /**
   * A place to synchronise with.
   *
   * @param place a folder, or {@code ssh:user@host}
   * @param when the last time, by the log's time, as a text
   * @param out lines that went there then
   * @param in lines that came from there then
   * @param ended how that ended, a sentence
   */
  public record Partner(String place, String when, long out, long in, String ended) {}

  /**
   * An exchange under way.
   *
   * @param doing what is done now, in a word or two; empty before it is known
   * @param done lines done of that
   * @param of lines to do; 0 while nobody knows
   * @param stopping whether it was told to stop
   * @param strangers machines whose lines it waits to be allowed to take; mostly none
   */
  public record Running(
      String place, String doing, long done, long of, boolean stopping, List<Stranger> strangers) {
    /** Keeps its own list. */
    public Running {
      strangers = List.copyOf(strangers);
    }

    boolean asks() {
      return !strangers.isEmpty();
    }
  }

  /**
   * A machine this log knows nothing of.
   *
   * @param label what it calls itself
   * @param lines of it that would come
   */
  public record Stranger(String label, String id, long lines) {
    /** Whose lines and how many: {@code club laptop (0123456789abcdef0123), 340 lines}. */
    public String words() {
      return (label.isBlank() ? NAMELESS : label)
          + (id.isEmpty() ? "" : " (" + id + ")")
          + ", "
          + counted(lines);
    }
  }

  /** So many lines in words. */
  public static String counted(long lines) {
    return lines == 1 ? "1 line" : lines + " lines";
  }

  /** Whether an exchange waits for an answer. */
  boolean asks() {
    return running.filter(Running::asks).isPresent();
  }
}
