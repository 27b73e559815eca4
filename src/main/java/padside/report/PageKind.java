package padside.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The pages there are. */
public enum PageKind {
  DAY("Day sheet", "a date, such as 2026-10-17; else the last day flown"),
  ROCKET("Rocket history", "the name of a rocket"),
  SEASON("Season", "a year, dates such as 2026-03-01..2026-10-31, or all; else the last year"),
  MOTORS("Motors and restock", "a year, dates or all; else all"),
  FAILURE("Failed motor", "a date; else the last failure"),
  CARDS("Blank cards", ""),
  KEYS("Keys and answers", "");

  private final String words;
  private final String which;

  PageKind(String words, String which) {
    this.words = words;
    this.which = which;
  }

  /** What it is called. */
  public String words() {
    return words;
  }

  /** What may be asked for with it. */
  public String which() {
    return which;
  }

  /** Its name in commands and files. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<PageKind> find(String code) {
    return List.of(values()).stream().filter(kind -> kind.code().equals(code)).findFirst();
  }
}
