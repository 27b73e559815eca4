package padside.units;

import java.util.List;
import java.util.Optional;

/**
 * How one kind of quantity is written: any of its units is read, one of them is shown, and a number
 * without a unit means the shown unit unless a unit is required.
 */
public final class UnitNotation<T> implements Notation<T> {
  /**
   * In SI; past it no text means anything at a launch, and digits would no longer be told apart.
   */
  private static final double LARGEST = 1e9;

  private final Dimension<T> dimension;
  private final Unit<T> shown;
  private final Digits digits;
  private final List<String> examples;
  private final boolean unitRequired;

  private UnitNotation(
      Dimension<T> dimension,
      Unit<T> shown,
      Digits digits,
      List<String> examples,
      boolean unitRequired) {
    this.dimension = dimension;
    this.shown = shown;
    this.digits = digits;
    this.examples = examples;
    this.unitRequired = unitRequired;
  }

  /** Two examples at least, the first in the unit shown. */
  static <T> UnitNotation<T> of(
      Dimension<T> dimension, String shown, Digits digits, String... examples) {
    return new UnitNotation<>(dimension, dimension.unit(shown), digits, List.of(examples), false);
  }

  /** The same, refusing a bare number with the list of units: for the command line. */
  public UnitNotation<T> withUnitRequired() {
    return new UnitNotation<>(dimension, shown, digits, examples, !symbol().isEmpty());
  }

  @Override
  public Reading<T> read(String typed) {
    Optional<String> unfit = Typed.unfit(typed);
    if (unfit.isPresent()) {
      return refused(typed, unfit.get());
    }
    String text = Typed.normal(typed);
    boolean negative = text.startsWith("-");
    Reading<List<Typed.Term>> terms =
        Typed.terms(negative || text.startsWith("+") ? text.substring(1) : text);
    if (terms.objection().isPresent()) {
      return refused(typed, terms.objection().get());
    }
    return read(typed, negative ? -1 : 1, terms.value().orElseThrow());
  }

  private Reading<T> read(String typed, int sign, List<Typed.Term> terms) {
    Optional<Unit<T>> before = Optional.empty();
    double inSi = 0;
    for (Typed.Term term : terms) {
      if (term.unit().isEmpty() && (unitRequired || terms.size() > 1)) {
        return refused(typed, terms.size() > 1 ? "is more than one number" : lacksUnit());
      }
      Optional<Unit<T>> unit =
          term.unit().isEmpty() ? Optional.of(shown) : dimension.find(term.unit());
      if (unit.isEmpty()) {
        return refused(typed, unknownUnit());
      }
      if (before.isPresent() && !dimension.mayFollow(before.get(), unit.get())) {
        return refused(typed, "is more than one " + dimension.name());
      }
      inSi += dimension.inSi().applyAsDouble(unit.get().of().apply(sign * term.number()));
      before = unit;
    }
    return checked(typed, inSi);
  }

  private Reading<T> checked(String typed, double inSi) {
    if (!(Math.abs(inSi) <= LARGEST)) {
      return refused(typed, "is larger than any " + dimension.name() + " at a launch");
    }
    if (inSi < 0 && dimension.belowZero().isPresent()) {
      return refused(typed, "is refused because " + dimension.belowZero().get());
    }
    return Reading.of(dimension.ofSi().apply(inSi + 0.0));
  }

  @Override
  public String show(T value) {
    return withSymbol(showBare(value));
  }

  /** The number alone, for a column whose heading has the {@link #symbol}. */
  public String showBare(T value) {
    return digits.show(shown.in().applyAsDouble(value));
  }

  /** As {@link #show} but rounded towards zero: for a limit, which must never read larger. */
  public String showDown(T value) {
    return withSymbol(digits.showDown(shown.in().applyAsDouble(value)));
  }

  /** The unit shown, which is also what a bare number means: {@code mph}. */
  public String symbol() {
    return shown.symbol();
  }

  @Override
  public String example() {
    return examples.get(0);
  }

  private String withSymbol(String number) {
    return symbol().isEmpty() || symbol().equals("°") ? number + symbol() : number + " " + symbol();
  }

  private Reading<T> refused(String typed, String why) {
    return Reading.refused(Typed.echo(typed) + " " + why + "; type it like " + likes() + ".");
  }

  private String unknownUnit() {
    return symbol().isEmpty()
        ? "is more than a plain number"
        : "has no unit of " + dimension.name() + " I know";
  }

  private String lacksUnit() {
    return "has no unit, which is one of " + dimension.unitList();
  }

  private String likes() {
    int last = examples.size() - 1;
    return String.join(", ", examples.subList(0, last)) + " or " + examples.get(last);
  }
}
