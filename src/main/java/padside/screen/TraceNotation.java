package padside.screen;

import java.util.Locale;
import java.util.Optional;
import padside.trace.KeptTrace;
import padside.units.Notation;
import padside.units.Notations;
import padside.units.Reading;
import padside.units.UnitSystem;

/** A kept trace in words: nobody reads or types its digits. */
record TraceNotation(UnitSystem units) implements Notation<String> {
  @Override
  public Reading<String> read(String typed) {
    return KeptTrace.read(typed).isPresent()
        ? Reading.of(typed)
        : Reading.refused(Reading.echo(typed) + " is no trace; padside trace FILE makes one.");
  }

  /** {@code trace of 140 points, 412 ft}. */
  @Override
  public String show(String value) {
    Optional<KeptTrace> trace = KeptTrace.read(value);
    return trace
        .map(
            kept ->
                String.format(
                    Locale.ROOT,
                    "trace of %,d points, %s",
                    kept.points().size(),
                    Notations.altitude(units).show(kept.highest())))
        .orElse("a trace of another version");
  }

  @Override
  public String example() {
    return "";
  }
}
