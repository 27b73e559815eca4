package padside.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padside.screen.Effect;
import padside.screen.Event;
import padside.screen.Ticket;
import padside.trace.TraceAir;
import padside.units.TimeSpan;
import padside.units.UnitSystem;

/** Altimeters' files listed and read beside the screens. */
class TraceKeeperTest {
  private static final TimeSpan PATIENCE = new TimeSpan(20);
  private static final TraceAir AIR = new TraceAir(Optional.empty(), Optional.empty());

  @TempDir Path card;
  @TempDir Path log;

  private final Inbox inbox = new Inbox();
  private TraceKeeper traces;
  private int asked;

  @BeforeEach
  void open() {
    traces = new TraceKeeper(log, inbox);
  }

  @AfterEach
  void close() {
    traces.close();
  }

  private Event answer() {
    List<Inbox.Item> items = inbox.take(PATIENCE);
    assertThat(items).singleElement().isInstanceOf(Inbox.Answered.class);
    return ((Inbox.Answered) items.get(0)).event();
  }

  private List<String> listed(String folder) {
    Ticket ticket = new Ticket(3, ++asked);
    traces.does(new Effect.ListTraces(ticket, folder));
    Event.TracesListed list = (Event.TracesListed) answer();
    assertThat(list.ticket()).isEqualTo(ticket);
    return list.paths();
  }

  private Event read(Path file, int part) {
    traces.does(
        new Effect.ReadTrace(
            new Ticket(3, ++asked), file.toString(), part, AIR, UnitSystem.METRIC));
    return answer();
  }

  private Path file(String name, int minute) throws Exception {
    Path file = Files.writeString(card.resolve(name), "time_s,altitude_m\n0,0\n");
    Files.setLastModifiedTime(file, FileTime.fromMillis(60_000L * minute));
    return file;
  }

  @Test
  void the_newest_files_come_first_then_the_folders_and_nothing_else() throws Exception {
    Path old = file("a.csv", 1);
    Path fresh = file("b.TXT", 2);
    file("c.jpg", 3);
    file(".hidden.csv", 4);
    file("esc\u001b[2J.csv", 5);
    Path inside = Files.createDirectory(card.resolve("more"));

    assertThat(listed(card.toString()))
        .containsExactly(fresh.toString(), old.toString(), inside + "/");
  }

  @Test
  void a_folder_that_is_not_there_lists_nothing() {
    assertThat(listed(card.resolve("gone").toString())).isEmpty();
    assertThat(listed("no\0path")).isEmpty();
  }

  @Test
  void a_file_is_read_and_its_folder_remembered() throws Exception {
    Path file = AltimeterFile.write(card.resolve("two.csv"), 2);

    Event.TraceRead read = (Event.TraceRead) read(file, 0);

    assertThat(read.path()).isEqualTo(file.toString());
    assertThat(List.of(read.part(), read.of())).containsExactly(2, 2);
    assertThat(read.finding().apogee().value().orElseThrow().metres())
        .isCloseTo(AltimeterFile.APOGEE_M, within(0.5));
    assertThat(((Event.TraceRead) read(file, 1)).part()).isEqualTo(1);
    traces.close();
    traces = new TraceKeeper(log, inbox);
    assertThat(listed("")).containsExactly(file.toString());
  }

  @Test
  void what_cannot_be_read_is_told_and_not_remembered() throws Exception {
    Path prose = Files.writeString(card.resolve("prose.csv"), "It flew well.\n");

    for (Event event : List.of(read(prose, 0), read(card.resolve("gone.csv"), 0))) {
      assertThat(event).isInstanceOf(Event.NotRead.class);
      assertThat(((Event.NotRead) event).fault().sentence()).isNotBlank().endsWith(".");
    }
    assertThat(log.resolve(TraceKeeper.NAME)).doesNotExist();
  }
}
