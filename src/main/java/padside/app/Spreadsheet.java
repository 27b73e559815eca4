package padside.app;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import padside.fact.Fault;
import padside.report.Cells;
import padside.units.Reading;

/**
 * A table as a spreadsheet program writes it: UTF-8 with or without a mark, cells parted by comma,
 * semicolon or tab, the first line its headers.
 */
record Spreadsheet(List<String> header, List<Row> rows) {
  private static final int LARGEST = 8 << 20;
  private static final String MARK = "\ufeff";

  /**
   * A line of it.
   *
   * @param number as the spreadsheet program numbers it; the headers are 1
   */
  record Row(int number, List<String> cells) {
    /** What stands in a column; blank where the line ends before it. */
    String cell(int column) {
      return column < cells.size() ? Cells.read(cells.get(column)).strip() : "";
    }
  }

  /** Whether some number in it has a comma before its decimals. */
  boolean hasDecimalComma() {
    return rows.stream()
        .flatMap(row -> row.cells.stream())
        .anyMatch(cell -> cell.matches("-?[0-9]+,[0-9]{1,2}\\D*"));
  }

  static Reading<Spreadsheet> read(Path file) throws Fault {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(LARGEST + 1);
    } catch (IOException e) {
      throw new Fault(
          "import-file", "The file " + file + " cannot be read.", "Check its name and folder.", e);
    }
    if (bytes.length > LARGEST) {
      return Reading.refused("The file is larger than 8 MB; import it in parts.");
    }
    try {
      return of(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return Reading.refused(
          "The file is not in UTF-8; save it from the spreadsheet as \"CSV UTF-8\".");
    }
  }

  private static Reading<Spreadsheet> of(String decoded) {
    String text = decoded.startsWith(MARK) ? decoded.substring(1) : decoded;
    if (text.indexOf('\0') >= 0) {
      return Reading.refused("The file is no text; save it from the spreadsheet as CSV.");
    }
    List<Row> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> records =
        CsvReader.builder()
            .fieldSeparator(separator(text))
            .allowMissingFields(true)
            .allowExtraFields(true)
            .ofCsvRecord(text)) {
      for (CsvRecord each : records) {
        rows.add(new Row(rows.size() + 1, List.copyOf(each.getFields())));
      }
    } catch (CsvParseException | IOException e) {
      return Reading.refused(
          "After row " + rows.size() + " the file is no CSV; look for a quotation mark there.");
    }
    if (rows.size() < 2) {
      return Reading.refused("The file has no rows below a line of headers; add some.");
    }
    Row first = rows.remove(0);
    rows.removeIf(row -> row.cells.stream().allMatch(String::isBlank));
    return Reading.of(
        new Spreadsheet(first.cells.stream().map(String::strip).toList(), List.copyOf(rows)));
  }

  /** Whichever the headers have most of. */
  private static char separator(String text) {
    String line = text.lines().findFirst().orElse("").replaceAll("\"[^\"]*\"", "");
    return Stream.of(',', ';', '\t')
        .max(Comparator.comparingLong(c -> line.chars().filter(each -> each == c).count()))
        .orElseThrow();
  }
}
