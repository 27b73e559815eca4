package padside.form;

import java.util.List;
import java.util.Locale;
import padside.motor.MotorType;
import padside.units.Notation;
import padside.units.Reading;

/** The delays a motor is sold with: whole seconds or P for plugged, {@code 0;3;5;P}. */
public record Delays() implements Notation<List<String>> {
  @Override
  public Reading<List<String>> read(String typed) {
    List<String> delays = List.of(typed.strip().toUpperCase(Locale.ROOT).split("\\s*[;,\\s]\\s*"));
    for (String delay : delays) {
      if (!delay.equals(MotorType.PLUGGED) && !delay.matches("[0-9]{1,2}")) {
        return Reading.refused(
            "Delay "
                + Reading.echo(delay)
                + " is neither whole seconds nor P for plugged; type them like "
                + example()
                + ".");
      }
    }
    return Reading.of(delays);
  }

  @Override
  public String show(List<String> delays) {
    return String.join(";", delays);
  }

  @Override
  public String example() {
    return "3;5;7";
  }
}
