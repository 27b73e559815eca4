package padside.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import padside.flight.Checklist;
import padside.flight.OutcomeTable;
import padside.motor.MotorTable;
import padside.plan.PackingTable;

/** The data that comes inside the jar. */
final class Shipped {
  private Shipped() {}

  /** Read once, by whoever asks first; others wait for it. */
  private static final class Motors {
    private static final MotorTable TABLE =
        read("motors.csv", csv -> new MotorTable(MotorTable.read(csv, "motors.csv").types()));
  }

  static MotorTable motors() {
    return Motors.TABLE;
  }

  static OutcomeTable outcomes() {
    return read("outcomes.csv", OutcomeTable::read);
  }

  static Checklist checklist() {
    return read("checklist.csv", Checklist::read);
  }

  static PackingTable packing() {
    return read("packing.csv", PackingTable::read);
  }

  /** Reads one file of the folder {@code data}. */
  private static <T> T read(String name, Reading<T> reading) {
    InputStream bytes = Shipped.class.getResourceAsStream("/data/" + name);
    if (bytes == null) {
      throw new IllegalStateException("not in the jar: data/" + name);
    }
    try (Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8)) {
      return reading.of(text);
    } catch (IOException e) {
      throw new UncheckedIOException("unreadable in the jar: data/" + name, e);
    }
  }

  /** Makes something of a text. */
  private interface Reading<T> {
    T of(Reader text) throws IOException;
  }
}
