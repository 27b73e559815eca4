package padside.flight;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import padside.fact.Facts;
import padside.fact.RecordId;

/**
 * The lines read at the pad, in order: those of {@code data/checklist.csv} as the flier's own
 * records change them, and below them in each part the flier's own.
 */
public record Checklist(List<CheckLine> lines) {
  /** Keeps its own list. */
  public Checklist {
    lines = List.copyOf(lines);
  }

  /** Reads the shipped lines; the first line names the columns. */
  public static Checklist read(Reader csv) throws IOException {
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(csv)) {
      return new Checklist(rows.stream().map(Checklist::shipped).toList());
    }
  }

  private static CheckLine shipped(NamedCsvRecord row) {
    String code = row.getField("code");
    Facts facts =
        Facts.none()
            .with(CheckLine.CODE, code)
            .with(CheckLine.TEXT, row.getField("text"))
            .with(CheckLine.PART, CheckLine.Part.find(row.getField("part")));
    return new CheckLine(new RecordId("list." + code), facts);
  }

  /** These lines with the flier's records in their places and behind them. */
  public Checklist with(List<CheckLine> own) {
    List<CheckLine> all = new ArrayList<>();
    for (CheckLine line : lines) {
      all.add(own.stream().filter(each -> each.key().equals(line.key())).findFirst().orElse(line));
    }
    own.stream()
        .filter(each -> lines.stream().noneMatch(line -> line.key().equals(each.key())))
        .forEach(all::add);
    return new Checklist(all);
  }

  /** The lines to be read for a rocket, part by part. */
  public List<CheckLine> forRocket(Optional<RecordId> rocket) {
    return lines.stream()
        .filter(line -> !line.dropped())
        .filter(line -> line.rocket().isEmpty() || line.rocket().equals(rocket))
        .sorted(Comparator.comparing(CheckLine::part))
        .toList();
  }
}
