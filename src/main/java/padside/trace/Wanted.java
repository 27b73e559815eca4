package padside.trace;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.units.Reading;
import padside.units.UnitSystem;

/**
 * What the flier says of a table's columns, and which units a bare height is taken for.
 *
 * @param picks by what they hold; what is not in it is found by name
 */
public record Wanted(Map<Quantity, Pick> picks, UnitSystem units) {
  private static final Pattern NUMBERED = Pattern.compile("([0-9]{1,3})\\s*([a-zA-Z\"]*)");

  /**
   * One column.
   *
   * @param place from 1, or 0 where the header names it
   * @param unit perhaps empty
   */
  record Pick(int place, String header, String unit) {}

  /** Keeps its own map. */
  public Wanted {
    picks = Map.copyOf(picks);
  }

  /** Nothing said. */
  public static Wanted nothing(UnitSystem units) {
    return new Wanted(Map.of(), units);
  }

  /** Reads {@code time=1s,height=3ft}: number of the column and unit, or its header. */
  public static Reading<Wanted> of(String typed, UnitSystem units) {
    Map<Quantity, Pick> picks = new EnumMap<>(Quantity.class);
    for (String part : typed.split(",", -1)) {
      int sign = part.indexOf('=');
      Optional<Quantity> quantity = quantity(sign < 0 ? part : part.substring(0, sign));
      if (sign < 0 || quantity.isEmpty() || part.substring(sign + 1).isBlank()) {
        return Reading.refused(
            Reading.echo(part.strip())
                + " names no column; write it like time=1s,height=3ft or pressure=2hPa.");
      }
      Pick pick = pick(part.substring(sign + 1).strip());
      if (!pick.unit.isEmpty() && quantity.get().inSi(pick.unit).isEmpty()) {
        return Reading.refused(
            Reading.echo(pick.unit) + " is no unit of " + quantity.get().word() + ".");
      }
      picks.put(quantity.get(), pick);
    }
    return Reading.of(new Wanted(picks, units));
  }

  private static Optional<Quantity> quantity(String word) {
    String folded = word.strip().toLowerCase(Locale.ROOT);
    for (Quantity each : Quantity.values()) {
      if (each.word().equals(folded) || (each == Quantity.HEIGHT && folded.equals("altitude"))) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  private static Pick pick(String text) {
    Matcher numbered = NUMBERED.matcher(text);
    return numbered.matches()
        ? new Pick(Integer.parseInt(numbered.group(1)), "", numbered.group(2))
        : new Pick(0, text, "");
  }
}
