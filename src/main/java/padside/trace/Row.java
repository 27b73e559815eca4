package padside.trace;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How one line falls into cells and a cell is read as a number.
 *
 * @param separator between cells; a blank stands for any run of blanks
 */
record Row(char separator) {
  /** Tried in this order: a comma may belong to a number, a semicolon cannot. */
  static final List<Row> KNOWN =
      List.of(new Row(';'), new Row('\t'), new Row('|'), new Row(','), new Row(' '));

  private static final int LONGEST_NUMBER = 40;

  /** How the separator is called in a sentence. */
  String told() {
    return switch (separator) {
      case ';' -> "semicolon";
      case '\t' -> "tab";
      case '|' -> "bar";
      case ',' -> "comma";
      default -> "blanks";
    };
  }

  /** The cells of a line; an empty list where its quotation marks do not pair. */
  List<String> cells(String line) {
    if (line.indexOf('"') >= 0 && separator != ' ') {
      return quoted(line);
    }
    String rest = separator == ' ' ? line.strip() : line;
    List<String> cells = new ArrayList<>();
    int from = 0;
    for (int at = 0; at < rest.length(); at++) {
      if (isBetween(rest.charAt(at))) {
        cells.add(rest.substring(from, at).strip());
        while (separator == ' ' && at + 1 < rest.length() && isBetween(rest.charAt(at + 1))) {
          at++;
        }
        from = at + 1;
      }
    }
    cells.add(rest.substring(from).strip());
    return cells;
  }

  private boolean isBetween(char each) {
    return each == separator || (separator == ' ' && each == '\t');
  }

  private List<String> quoted(String line) {
    try (CsvReader<CsvRecord> records =
        CsvReader.builder()
            .fieldSeparator(separator)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .ofCsvRecord(line)) {
      for (CsvRecord each : records) {
        return each.getFields().stream().map(String::strip).toList();
      }
      return List.of();
    } catch (CsvParseException | IOException e) {
      return List.of();
    }
  }

  /**
   * The number in a cell, with a point or a comma before its decimals; hours, minutes and seconds
   * with colons between are seconds. Empty for what is no finite number.
   */
  static OptionalDouble number(String cell) {
    if (cell.isEmpty() || cell.length() > LONGEST_NUMBER) {
      return OptionalDouble.empty();
    }
    if (cell.indexOf(':') > 0) {
      return clock(cell);
    }
    for (int i = 0; i < cell.length(); i++) {
      if ("0123456789+-.,eE".indexOf(cell.charAt(i)) < 0) {
        return OptionalDouble.empty();
      }
    }
    try {
      double value = Double.parseDouble(cell.replace(',', '.'));
      return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  private static OptionalDouble clock(String cell) {
    double seconds = 0;
    for (String part : cell.split(":", -1)) {
      OptionalDouble number = number(part);
      if (number.isEmpty() || part.startsWith("-")) {
        return OptionalDouble.empty();
      }
      seconds = seconds * 60 + number.getAsDouble();
    }
    return OptionalDouble.of(seconds);
  }

  /** Whether a line holds a sample: two numbers at least. */
  static boolean isSample(List<String> cells) {
    return cells.stream().filter(cell -> number(cell).isPresent()).limit(2).count() == 2;
  }
}
