package padside.plan;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.util.List;

/** What goes along whatever is flown, read from {@code data/packing.csv}. */
public record PackingTable(List<Thing> things) {
  /**
   * One of them.
   *
   * @param code what it is known by, the same for ever
   * @param text as shown
   */
  public record Thing(String code, String text) {}

  /** Keeps its own list. */
  public PackingTable {
    things = List.copyOf(things);
  }

  /** Reads the table; the first line names the columns. */
  public static PackingTable read(Reader csv) throws IOException {
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(csv)) {
      return new PackingTable(
          rows.stream().map(row -> new Thing(row.getField("code"), row.getField("text"))).toList());
    }
  }
}
