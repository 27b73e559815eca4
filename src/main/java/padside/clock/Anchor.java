package padside.clock;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padside.fact.Column;
import padside.fact.Facts;
import padside.units.TimeSpan;

/**
 * What ties one start of a machine to the true time: at that uptime it was so late.
 *
 * @param boot that start, as its operating system names it
 * @param up time since it
 * @param at the true time then
 */
public record Anchor(String boot, TimeSpan up, Instant at, How how) {
  public static final Column<String> BOOT =
      Column.text("boot", "the start of the machine, as its operating system names it");
  public static final Column<TimeSpan> UP =
      Column.quantity(
          "up_s", "seconds since the machine was started", TimeSpan::new, TimeSpan::seconds);
  public static final Column<Instant> AT =
      Column.instant("at", "the true time then, ISO 8601 in UTC");
  public static final Column<How> HOW =
      Column.word("how", "how it is known: confirmed, set or synchronised", How::find, How::code);

  /** The fields of the record it is kept as. */
  public static final List<Column<?>> COLUMNS = List.of(BOOT, UP, AT, HOW);

  /** How the true time is known. */
  public enum How {
    /** The flier said that the time shown was right. */
    CONFIRMED("confirm the clock"),
    /** The flier typed it. */
    SET("set the clock"),
    /** The operating system had it from elsewhere. */
    SYNCHRONISED("the machine's clock was set");

    private final String label;

    How(String label) {
      this.label = label;
    }

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** What was done, for the history. */
    public String label() {
      return label;
    }

    static Optional<How> find(String code) {
      return List.of(values()).stream().filter(how -> how.code().equals(code)).findFirst();
    }
  }

  /** It was so late at that moment. */
  public static Anchor of(Moment moment, Instant at, How how) {
    return new Anchor(moment.boot(), moment.up(), at, how);
  }

  /** As kept in a record; absent when that lacks a part. */
  public static Optional<Anchor> in(Facts facts) {
    return facts
        .get(BOOT)
        .flatMap(
            boot ->
                facts
                    .get(UP)
                    .flatMap(up -> facts.get(AT).map(at -> new Anchor(boot, up, at, how(facts)))));
  }

  private static How how(Facts facts) {
    return facts.get(HOW).orElse(How.SET);
  }

  public Facts facts() {
    return Facts.none().with(BOOT, boot).with(UP, up).with(AT, at).with(HOW, how);
  }

  /** Whether the flier said so. */
  public boolean byFlier() {
    return how != How.SYNCHRONISED;
  }

  /** The true time at another uptime of the same start. */
  public Instant timeAt(TimeSpan other) {
    return at.plus(LogClock.duration(other.seconds() - up.seconds()));
  }
}
