package padside.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How far a number is shown: to so many significant digits, but never past so many decimals and
 * never rounding away what stands before the point. Trailing zeros go.
 */
record Digits(int significant, int mostDecimals) {
  String show(double value) {
    return show(BigDecimal.valueOf(value), RoundingMode.HALF_UP);
  }

  /** Rounded towards zero, but never below a figure that only a conversion's last bit missed. */
  String showDown(double value) {
    return show(BigDecimal.valueOf(value + Math.signum(value) * 1e-9), RoundingMode.DOWN);
  }

  private String show(BigDecimal value, RoundingMode rounding) {
    int exponent = value.precision() - value.scale() - 1;
    int decimals = Math.max(0, Math.min(mostDecimals, significant - 1 - exponent));
    BigDecimal rounded = value.setScale(decimals, rounding);
    return rounded.stripTrailingZeros().toPlainString();
  }
}
