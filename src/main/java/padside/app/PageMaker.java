package padside.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import padside.fact.Fault;
import padside.flight.FlightLog;
import padside.page.HtmlPage;
import padside.page.Page;
import padside.report.PageKind;
import padside.report.Pages;
import padside.screen.Effect;
import padside.screen.Event;

/**
 * Makes pages for the screens and writes them.
 *
 * @param folder where they go; made when the first one does
 */
record PageMaker(Path folder) {
  private static final int MOST = 1000;
  private static final int LONGEST = 60;

  Event made(Effect.MakePage wanted, FlightLog log) throws Fault {
    return new Event.PageMade(
        wanted.ticket(),
        Pages.of(wanted.kind(), wanted.which(), ReportSource.of(log, wanted.settings())));
  }

  /** Under a name that nothing there has yet. */
  Event written(Effect.WritePage wanted) {
    try {
      Files.createDirectories(folder);
      return new Event.Noticed("Written to " + write(wanted.kind(), wanted.page()) + ".");
    } catch (IOException e) {
      return new Event.Noticed(
          "The folder "
              + folder
              + " cannot be made; make it, or write the page with padside report.");
    } catch (Fault fault) {
      return new Event.Noticed(fault.sentence() + " " + fault.nextStep());
    }
  }

  /** What of the title may stand in a file's name anywhere, behind the kind. */
  private static String name(String title) {
    int of = title.indexOf('·');
    String plain =
        of < 0 ? "" : title.substring(of).replaceAll("[^A-Za-z0-9]+", "-").replaceAll("-$", "");
    return plain.substring(0, Math.min(LONGEST, plain.length()));
  }

  private Path write(PageKind kind, Page page) throws Fault {
    String name = kind.code() + name(page.title());
    for (int i = 1; i < MOST; i++) {
      Path file = folder.resolve(name + "-" + i + ".html");
      try {
        new NewFile(file).write(HtmlPage.of(page));
        return file;
      } catch (NewFile.AlreadyThere taken) {
        // the next number may be free
      }
    }
    throw new Fault(
        "export-file",
        "The folder " + folder + " holds a thousand such pages.",
        "Clear it out, or write the page with padside report.");
  }
}
