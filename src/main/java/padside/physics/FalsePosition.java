package padside.physics;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a function is nought, by false position with the Illinois rule (Dowell and Jarratt, BIT 11
 * (1971) 168-174): the weight of an end that stays is halved.
 *
 * @param level how near to nought is near enough
 * @param width an interval no wider is narrow enough
 * @param turns how often to look at most
 */
record FalsePosition(double level, double width, int turns) {
  /** Two places, and what the function is there: one above and one below nought. */
  record Bracket(double one, double atOne, double other, double atOther) {}

  /** The place found, the bracket's other end where it is narrow enough already. */
  double root(DoubleUnaryOperator function, Bracket bracket) {
    double low = bracket.one();
    double atLow = bracket.atOne();
    double high = bracket.other();
    double atHigh = bracket.atOther();
    for (int turn = 0; turn < turns && Math.abs(high - low) > width; turn++) {
      double found = low + (high - low) * atLow / (atLow - atHigh);
      double at = function.applyAsDouble(found);
      if (Math.abs(at) < level) {
        return found;
      }
      if (at * atHigh < 0) {
        low = high;
        atLow = atHigh;
      } else {
        atLow /= 2;
      }
      high = found;
      atHigh = at;
    }
    return high;
  }
}
