package padside.report;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import padside.fact.Column;
import padside.fact.Facts;
import padside.page.Plot;
import padside.units.Length;
import padside.units.Notations;
import padside.units.UnitNotation;
import padside.units.UnitSystem;

/**
 * A quantity as a column of numbers and as an axis, the unit told once at the head.
 *
 * @param unit how much of SI one of the unit is
 */
record Measure<T>(UnitNotation<T> notation, ToDoubleFunction<T> inSi, double unit) {
  static Measure<Length> altitude(UnitSystem units) {
    return of(Notations.altitude(units), Length::metres);
  }

  static Measure<Length> distance(UnitSystem units) {
    return of(Notations.distance(units), Length::metres);
  }

  private static <T> Measure<T> of(UnitNotation<T> notation, ToDoubleFunction<T> inSi) {
    double one = inSi.applyAsDouble(notation.read("1").value().orElseThrow());
    return new Measure<>(notation, inSi, one);
  }

  /** The number alone; blank where nothing is known. */
  String cell(Optional<T> value) {
    return value.map(notation::showBare).orElse("");
  }

  String cell(Facts facts, Column<T> column) {
    return cell(facts.get(column));
  }

  /** {@code Altitude ft}. */
  String heading(String label) {
    return label + " " + notation.symbol();
  }

  Plot.Axis axis(String label) {
    return new Plot.Axis(label, notation.symbol());
  }

  /** In the unit of the axis. */
  double number(T value) {
    return inSi.applyAsDouble(value) / unit;
  }
}
