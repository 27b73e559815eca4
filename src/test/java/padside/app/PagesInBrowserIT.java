package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import padside.page.HtmlPage;
import padside.report.DemoPages;
import padside.report.PageKind;

/** Chromium opens and prints the pages: nothing to complain of, nothing asked of a network. */
class PagesInBrowserIT {
  private static final int MOST_SECONDS = 60;

  /** Resource Timing (W3C) lists everything a page has asked for. */
  private static final String COUNTING =
      "<script>onload = () => document.documentElement.setAttribute('data-asked',"
          + " performance.getEntriesByType('resource').length)</script>";

  @TempDir Path folder;

  @BeforeEach
  void hasBrowser() {
    boolean isThere =
        Stream.of(System.getenv("PATH").split(":", -1))
            .anyMatch(place -> Files.isExecutable(Path.of(place, "chromium")));
    assumeTrue(isThere, "chromium is not installed: the package chromium has it");
  }

  @ParameterizedTest
  @EnumSource(PageKind.class)
  void a_page_opens_and_prints_without_a_word_and_without_a_network(PageKind kind)
      throws Exception {
    Path page = folder.resolve("page.html");
    Files.writeString(page, HtmlPage.of(DemoPages.any(kind)) + COUNTING);
    Path print = folder.resolve("page.pdf");

    String said = browser("--enable-logging=stderr", "--dump-dom", page.toUri().toString());
    browser("--print-to-pdf=" + print, page.toUri().toString());

    assertThat(said).doesNotContain("CONSOLE").contains("data-asked=\"0\"");
    assertThat(Files.size(print)).isGreaterThan(2000);
    assertThat(new String(Files.readAllBytes(print), 0, 5, StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
  }

  /** Sizes of paper by name as CSS Paged Media 3 has them. */
  @ParameterizedTest
  @ValueSource(strings = {"A4", "letter"})
  void the_keys_are_on_one_sheet(String paper) throws Exception {
    Path page = folder.resolve("keys.html");
    Files.writeString(
        page,
        HtmlPage.of(DemoPages.any(PageKind.KEYS))
            .replace("@page { margin", "@page { size: " + paper + "; margin"));
    Path print = folder.resolve("keys.pdf");
    browser("--print-to-pdf=" + print, "--no-pdf-header-footer", page.toUri().toString());

    assertThat(Files.readString(print, StandardCharsets.ISO_8859_1).split("/Type /Page\\b"))
        .hasSize(2);
  }

  private String browser(String... options) throws IOException, InterruptedException {
    List<String> line =
        new ArrayList<>(
            List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-background-networking",
                "--disable-component-update",
                "--no-first-run",
                "--user-data-dir=" + folder.resolve("profile")));
    line.addAll(List.of(options));
    Path said = folder.resolve("said");
    Process process =
        new ProcessBuilder(line).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    boolean ended = process.waitFor(MOST_SECONDS, TimeUnit.SECONDS);
    process.destroyForcibly();
    assertThat(ended).as("chromium within %d s", MOST_SECONDS).isTrue();
    return Files.readString(said);
  }
}
