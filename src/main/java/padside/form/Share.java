package padside.form;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.units.Notation;
import padside.units.Reading;

/**
 * A share of the whole, from 0 to 1, typed in percent or as a fraction: {@code 55%}, {@code 55},
 * {@code 0.55}. A bare 1 is refused: it could be either.
 */
public record Share() implements Notation<Double> {
  private static final Pattern NUMBER = Pattern.compile("([0-9]{1,3}(?:[.,][0-9]{1,9})?)\\s*(%?)");

  @Override
  public Reading<Double> read(String typed) {
    Matcher matcher = NUMBER.matcher(typed.strip());
    if (!matcher.matches()) {
      return refused(typed, "is not a share");
    }
    double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
    boolean percent = !matcher.group(2).isEmpty();
    if (!percent && number == 1) {
      return refused(typed, "could be one percent or all of it");
    }
    double share = percent || number > 1 ? number / 100 : number;
    return share <= 1 ? Reading.of(share) : refused(typed, "is more than 100%");
  }

  @Override
  public String show(Double share) {
    BigDecimal percent = BigDecimal.valueOf(share).movePointRight(2);
    return percent.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString() + "%";
  }

  @Override
  public String example() {
    return "55%";
  }

  private static Reading<Double> refused(String typed, String why) {
    return Reading.refused(Reading.echo(typed) + " " + why + "; type it like 55% or 0.55.");
  }
}
