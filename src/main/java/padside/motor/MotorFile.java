package padside.motor;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Pattern;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.units.Force;
import padside.units.Impulse;
import padside.units.Length;
import padside.units.Mass;
import padside.units.TimeSpan;

/** Reads motor files row by row; a broken row is named and left out, the others stay. */
final class MotorFile {
  private static final List<String> NEEDED =
      List.of("designation", "total_impulse_ns", "burn_time_s", "total_mass_g");

  private static final Pattern SECONDS = Pattern.compile("[0-9]{1,2}");

  /** A cell that could not be read. */
  private static final class BadCell extends Exception {
    private static final long serialVersionUID = 1L;

    BadCell(String sentence) {
      super(sentence);
    }
  }

  private final String source;
  private final List<MotorType> types = new ArrayList<>();
  private final List<String> objections = new ArrayList<>();

  private MotorFile(String source) {
    this.source = source;
  }

  static MotorTable.Contents read(Reader csv, String source) throws IOException {
    MotorFile file = new MotorFile(source);
    try (CsvReader<NamedCsvRecord> rows =
        CsvReader.builder().allowMissingFields(true).ofNamedCsvRecord(csv)) {
      rows.forEach(file::row);
    } catch (CsvParseException e) {
      file.objections.add(source + " is not a readable CSV file; rows up to the break were taken.");
    }
    return new MotorTable.Contents(List.copyOf(file.types), List.copyOf(file.objections));
  }

  private void row(NamedCsvRecord row) {
    try {
      for (String column : NEEDED) {
        if (text(row, column).isEmpty()) {
          throw new BadCell("column " + column + " is missing or empty; fill it in");
        }
      }
      String designation = text(row, "designation").orElseThrow();
      types.add(new MotorType(new RecordId("table." + designation), facts(row)));
    } catch (BadCell e) {
      objections.add(
          source + ", line " + row.getStartingLineNumber() + ": " + e.getMessage() + ".");
    }
  }

  private static Facts facts(NamedCsvRecord row) throws BadCell {
    return new Facts.Gathering()
        .with(MotorType.DESIGNATION, text(row, "designation"))
        .with(MotorType.IMPULSE_CLASS, text(row, "class"))
        .with(MotorType.PROPELLANT, text(row, "kind"))
        .with(MotorType.DIAMETER, quantity(row, "diameter_mm", Length::ofMillimetres))
        .with(MotorType.LENGTH, quantity(row, "length_mm", Length::ofMillimetres))
        .with(MotorType.DELAYS, delays(row))
        .with(MotorType.TOTAL_IMPULSE, quantity(row, "total_impulse_ns", Impulse::new))
        .with(MotorType.AVERAGE_THRUST, quantity(row, "average_thrust_n", Force::new))
        .with(MotorType.PEAK_THRUST, quantity(row, "peak_thrust_n", Force::new))
        .with(MotorType.TIME_TO_PEAK, quantity(row, "time_to_peak_s", TimeSpan::new))
        .with(MotorType.TIME_TO_SUSTAIN, quantity(row, "time_to_sustain_s", TimeSpan::new))
        .with(MotorType.BURN_TIME, quantity(row, "burn_time_s", TimeSpan::new))
        .with(MotorType.TOTAL_MASS, quantity(row, "total_mass_g", Mass::ofGrams))
        .with(MotorType.PROPELLANT_MASS, quantity(row, "propellant_mass_g", Mass::ofGrams))
        .with(MotorType.MAX_LIFTOFF_MASS, massLimits(row))
        .with(MotorType.PROVENANCE, text(row, "provenance"))
        .facts();
  }

  /** The delays on sale; none for a motor that is no longer sold. */
  private static List<String> delays(NamedCsvRecord row) throws BadCell {
    Optional<String> cell = text(row, "delays_s");
    if (cell.isEmpty()) {
      return List.of();
    }
    List<String> delays = List.of(cell.get().split(";", -1));
    for (String delay : delays) {
      if (!delay.equals(MotorType.PLUGGED) && !SECONDS.matcher(delay).matches()) {
        throw new BadCell(
            "column delays_s has \"" + delay + "\"; write seconds or P, divided by ; like 3;5;P");
      }
    }
    return delays;
  }

  private static Optional<List<MotorType.MassLimit>> massLimits(NamedCsvRecord row) throws BadCell {
    Optional<String> cell = text(row, "max_liftoff_mass_g");
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    List<MotorType.MassLimit> limits = new ArrayList<>();
    for (String pair : cell.get().split(";", -1)) {
      int colon = pair.indexOf(':');
      String delay = colon < 0 ? MotorType.EVERY_DELAY : pair.substring(0, colon);
      limits.add(
          new MotorType.MassLimit(
              delay, Mass.ofGrams(positive("max_liftoff_mass_g", pair.substring(colon + 1)))));
    }
    return Optional.of(limits);
  }

  private static <T> Optional<T> quantity(NamedCsvRecord row, String column, DoubleFunction<T> of)
      throws BadCell {
    Optional<String> cell = text(row, column);
    return cell.isEmpty() ? Optional.empty() : Optional.of(of.apply(positive(column, cell.get())));
  }

  private static double positive(String column, String cell) throws BadCell {
    try {
      double value = Double.parseDouble(cell);
      if (value > 0 && Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below, as for any other wrong number
    }
    throw new BadCell("column " + column + " has \"" + cell + "\"; write a number above 0");
  }

  private static Optional<String> text(NamedCsvRecord row, String column) {
    return row.findField(column).map(String::strip).filter(text -> !text.isEmpty());
  }
}
