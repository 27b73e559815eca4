package padside.form;

import java.time.DateTimeException;
import java.time.LocalDate;
import padside.units.Notation;
import padside.units.Reading;

/** A calendar date known to the day, as ISO 8601-1:2019, 5.2.2.1 writes it: {@code 2026-05-02}. */
public record Dates() implements Notation<LocalDate> {
  @Override
  public Reading<LocalDate> read(String typed) {
    try {
      return Reading.of(LocalDate.parse(typed.strip()));
    } catch (DateTimeException e) {
      return Reading.refused(
          Reading.echo(typed) + " is not a date; type it like " + example() + ".");
    }
  }

  @Override
  public String show(LocalDate date) {
    return date.toString();
  }

  @Override
  public String example() {
    return "2026-05-02";
  }
}
