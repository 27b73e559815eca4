package padside;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import org.junit.jupiter.api.Test;
import padside.House.Owner;
import padside.House.Room;

/** The rules of the house bite: each is held against a made-up room that breaks it. */
class HouseTest {
  private static final JavaClasses STRANGER =
      new ClassFileImporter().importPackages("padside.stranger");

  @Test
  void an_import_the_table_forbids_is_reported() {
    assertThat(reports(House.imports(strangerMayImport("–"))))
        .isNotEmpty()
        .allSatisfy(
            line -> assertThat(line).contains("padside.stranger.Asking.rod()", "units.Length"));
  }

  @Test
  void an_import_the_table_allows_is_not() {
    assertThat(reports(House.imports(strangerMayImport("units")))).isEmpty();
    assertThat(reports(House.imports(strangerMayImport("all")))).isEmpty();
  }

  @Test
  void a_library_outside_its_room_is_reported() {
    Owner clocks = new Owner("clocks", List.of("java.time"), List.of("app"));

    assertThat(reports(House.ownedLibrary(clocks)))
        .anySatisfy(line -> assertThat(line).contains("padside.stranger.HandedIn.today"));
  }

  @Test
  void a_library_in_its_room_is_not() {
    Owner clocks = new Owner("clocks", List.of("java.time"), List.of("app", "stranger"));

    assertThat(reports(House.ownedLibrary(clocks))).isEmpty();
  }

  @Test
  void a_call_outside_its_room_is_reported() {
    assertThat(reports(calls("System.out"))).hasSize(1);
    assertThat(reports(calls("System.nanoTime"))).hasSize(1);
    assertThat(reports(calls("System.getenv"))).hasSize(1);
    assertThat(reports(calls("Clock.system*"))).hasSize(1);
  }

  @Test
  void only_a_clock_read_without_being_handed_in_is_reported() {
    assertThat(reports(calls("java.time.*.now")))
        .singleElement()
        .asString()
        .contains("padside.stranger.Asking.now()");
  }

  private static Room strangerMayImport(String cell) {
    List<String> lines =
        List.of(
            "| room | holds | may import |",
            "| --- | --- | --- |",
            "| units | quantities | – |",
            "| stranger | what breaks rules | " + cell + " |");
    return Room.of(GuideTable.in(lines, "room", "holds", "may import")).get(1);
  }

  private static ArchRule calls(String call) {
    return House.ownedCalls(new Owner("outside", List.of(call), List.of("app")));
  }

  private static List<String> reports(ArchRule rule) {
    return rule.evaluate(STRANGER).getFailureReport().getDetails();
  }
}
