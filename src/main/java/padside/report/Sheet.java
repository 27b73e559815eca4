package padside.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategies;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.flight.Flight;
import padside.flight.FlightLog;
import padside.flight.FlightLog.Stored;
import padside.flight.Kind;
import padside.page.Table;

/**
 * One kind of record as a table: a line for each, every column of the kind, what it refers to by
 * name. Lists stand in their cell as JSON; what could not be read stands as it was typed.
 */
public record Sheet(List<String> header, List<List<String>> rows) {
  /** Stands first; a record of this log is known by it, another log has its own. */
  public static final String ID = "id";

  /** The date of the day something belongs to. */
  public static final String DATE = "date";

  /** The field of that day. */
  public static final String FIELD = "field";

  /** Keeps its own lists. */
  public Sheet {
    header = List.copyOf(header);
    rows = List.copyOf(rows);
  }

  /** Every record of a kind that is not removed. */
  public static Sheet of(Kind kind, FlightLog log) throws Fault {
    Names names = Names.of(log);
    List<String> header = new ArrayList<>(List.of(ID));
    kind.columns()
        .forEach(column -> header.addAll(isDay(column) ? List.of(DATE, FIELD) : name(column)));
    List<List<String>> rows = new ArrayList<>();
    for (Stored record : log.list(kind)) {
      List<String> row = new ArrayList<>(List.of(record.id().text()));
      for (Column<?> column : kind.columns()) {
        row.addAll(
            isDay(column)
                ? names.day(record.facts().get(Flight.DAY))
                : List.of(text(column, record.facts(), names)));
      }
      rows.add(List.copyOf(row));
    }
    return new Sheet(header, rows);
  }

  private static List<String> name(Column<?> column) {
    return List.of(column.name());
  }

  private static boolean isDay(Column<?> column) {
    return column.name().equals(Flight.DAY.name());
  }

  private static String text(Column<?> column, Facts facts, Names names) {
    Facts.Cell cell = facts.cells().getOrDefault(column.name(), Facts.Cell.emptied());
    Optional<Object> value = cell.value();
    if (column.storage() == Column.Storage.REFERENCE && value.isPresent()) {
      return names.of(value.get().toString());
    }
    return value.map(Sheet::text).or(cell::typed).orElse("");
  }

  private static String text(Object value) {
    return value instanceof List<?> || value instanceof Map<?, ?>
        ? JsonText.line(value)
        : value.toString();
  }

  /** A table of a page. */
  public static Sheet of(Table table) {
    return new Sheet(
        table.columns().stream().map(column -> column.heading()).toList(), table.rows());
  }

  /** Tables one below the other, each with its caption above and an empty line behind it. */
  public static String csv(List<Table> tables) {
    return tables.stream()
        .map(
            table ->
                new Sheet(List.of(Cells.written(table.caption())), List.of()).csv()
                    + of(table).csv())
        .collect(Collectors.joining("\r\n"));
  }

  /** As RFC 4180 has it, every cell in quotes, lines ended by CR LF. */
  public String csv() {
    StringWriter text = new StringWriter();
    try (CsvWriter csv =
        CsvWriter.builder()
            .quoteStrategy(QuoteStrategies.ALWAYS)
            .lineDelimiter(LineDelimiter.CRLF)
            .build(text)) {
      csv.writeRecord(header);
      rows.forEach(row -> csv.writeRecord(row.stream().map(Cells::written).toList()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
