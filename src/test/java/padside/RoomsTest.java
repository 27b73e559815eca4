package padside;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import padside.House.Owner;
import padside.House.Room;

/** Holds the program to the tables of rooms, libraries and outside calls in DEVELOPERS.md. */
class RoomsTest {
  private static final List<Room> ROOMS = Room.of(GuideTable.headed("room", "holds", "may import"));
  private static final List<Owner> LIBRARIES =
      Owner.of(GuideTable.headed("library", "packages", "only in", "why this one"));
  private static final List<Owner> OUTSIDE =
      Owner.of(GuideTable.headed("what", "calls", "only in"));
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("padside");

  @TestFactory
  Stream<DynamicTest> a_room_imports_only_what_its_row_says() {
    return ROOMS.stream().map(room -> test(room.name(), House.imports(room)));
  }

  @TestFactory
  Stream<DynamicTest> a_library_is_imported_only_by_its_owners() {
    return LIBRARIES.stream().map(owner -> test(owner.what(), House.ownedLibrary(owner)));
  }

  @TestFactory
  Stream<DynamicTest> the_outside_world_is_asked_only_in_its_rooms() {
    return OUTSIDE.stream().map(owner -> test(owner.what(), House.ownedCalls(owner)));
  }

  @Test
  void every_class_lives_in_a_listed_room() {
    classes()
        .should()
        .resideInAnyPackage(ROOMS.stream().map(Room::inPackage).toArray(String[]::new))
        .because("a room is one package of the table in DEVELOPERS.md, section 2")
        .check(PROGRAM);
  }

  @Test
  void rooms_are_named_only_where_they_are_listed() {
    List<String> rooms = ROOMS.stream().map(Room::name).toList();

    assertThat(rooms).doesNotHaveDuplicates();
    assertThat(ROOMS)
        .allSatisfy(room -> assertThat(room.mayImport()).as(room.name()).isSubsetOf(rooms));
    assertThat(Stream.concat(LIBRARIES.stream(), OUTSIDE.stream()))
        .allSatisfy(
            owner ->
                assertThat(owner.rooms().stream().filter(room -> !room.equals("tests")))
                    .as(owner.what())
                    .isSubsetOf(rooms));
  }

  @Test
  void rooms_do_not_import_each_other_in_a_circle() {
    slices().matching("padside.(*)..").should().beFreeOfCycles().check(PROGRAM);
  }

  @Test
  void every_library_has_an_owner() {
    String[] known =
        Stream.concat(
                Stream.of("padside..", "java.."),
                LIBRARIES.stream().flatMap(owner -> owner.uses().stream()).map(p -> p + ".."))
            .toArray(String[]::new);

    noClasses()
        .should()
        .dependOnClassesThat(DescribedPredicate.not(resideInAnyPackage(known)))
        .because("a library needs a row in DEVELOPERS.md, section 3")
        .check(PROGRAM);
  }

  @Test
  void every_room_says_what_it_promises() throws IOException {
    try (Stream<Path> below = Files.walk(Path.of("src/main/java/padside"))) {
      assertThat(below.filter(Files::isDirectory).filter(RoomsTest::holdsClasses))
          .isNotEmpty()
          .allSatisfy(room -> assertThat(room.resolve("package-info.java")).exists());
    }
  }

  @Test
  void nothing_is_named_for_having_no_home() throws IOException {
    try (Stream<Path> below = Files.walk(Path.of("src"))) {
      assertThat(below.filter(Files::isDirectory).map(path -> path.getFileName().toString()))
          .doesNotContain("util", "utils", "common", "helper", "helpers", "manager", "managers");
    }
    noClasses()
        .should()
        .haveSimpleNameEndingWith("Impl")
        .orShould()
        .haveNameMatching(".*(Utils?|Helpers?|Managers?)")
        .because("such names say nothing about what is inside")
        .check(PROGRAM);
  }

  private static boolean holdsClasses(Path folder) {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.anyMatch(file -> file.toString().endsWith(".java"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static DynamicTest test(String name, ArchRule rule) {
    return DynamicTest.dynamicTest(name, () -> rule.check(PROGRAM));
  }
}
