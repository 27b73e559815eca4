package padside;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The rules of the house, made out of the tables of the contributors' guide. */
final class House {
  private House() {}

  /** A room and the rooms it may import. */
  record Room(String name, List<String> mayImport) {
    Room {
      mayImport = List.copyOf(mayImport);
    }

    static List<Room> of(GuideTable table) {
      List<String> all = table.rows().stream().map(row -> row.get(0)).toList();
      return table.rows().stream()
          .map(row -> new Room(row.get(0), listOr(all, row.get(2))))
          .toList();
    }

    String inPackage() {
      return "padside." + name;
    }

    private static List<String> listOr(List<String> all, String cell) {
      return cell.equals("all") ? all : GuideTable.list(cell);
    }
  }

  /** Packages or calls and the only rooms that may use them. */
  record Owner(String what, List<String> uses, List<String> rooms) {
    Owner {
      uses = List.copyOf(uses);
      rooms = List.copyOf(rooms);
    }

    static List<Owner> of(GuideTable table) {
      return table.rows().stream()
          .map(
              row ->
                  new Owner(row.get(0), GuideTable.list(row.get(1)), GuideTable.list(row.get(2))))
          .toList();
    }

    private String[] packages() {
      return rooms.stream().map(room -> "padside." + room).toArray(String[]::new);
    }
  }

  /** The room imports no other room than its row allows. */
  static ArchRule imports(Room room) {
    List<String> allowed = new ArrayList<>(List.of(room.inPackage()));
    room.mayImport().forEach(other -> allowed.add("padside." + other));
    return noClasses()
        .that()
        .resideInAPackage(room.inPackage())
        .should()
        .dependOnClassesThat(
            resideInAPackage("padside..")
                .and(DescribedPredicate.not(resideInAnyPackage(allowed.toArray(String[]::new)))))
        .because("room " + room.name() + " may import " + room.mayImport())
        .allowEmptyShould(true);
  }

  /** The library is imported by no other room than its owners. */
  static ArchRule ownedLibrary(Owner owner) {
    return noClasses()
        .that()
        .resideOutsideOfPackages(owner.packages())
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(owner.uses().stream().map(p -> p + "..").toArray(String[]::new))
        .because(owner.what() + " belongs to " + owner.rooms())
        .allowEmptyShould(true);
  }

  /** The outside world is asked by no other room than its owners. */
  static ArchRule ownedCalls(Owner owner) {
    return noClasses()
        .that()
        .resideOutsideOfPackages(owner.packages())
        .should()
        .accessTargetWhere(reaches(owner))
        .because(owner.what() + " belongs to " + owner.rooms() + "; hand the value in")
        .allowEmptyShould(true);
  }

  private static DescribedPredicate<JavaAccess<?>> reaches(Owner owner) {
    List<Pattern> calls = owner.uses().stream().map(House::call).toList();
    return DescribedPredicate.describe(
        "reaches the " + owner.what(),
        access -> {
          String target = targetOf(access);
          return !takesClock(access) && calls.stream().anyMatch(c -> c.matcher(target).matches());
        });
  }

  /** A call as the guide writes it, package optional, {@code *} standing for any letters. */
  private static Pattern call(String written) {
    return Pattern.compile("(.*\\.)?" + Pattern.quote(written).replace("*", "\\E\\w*\\Q"));
  }

  private static String targetOf(JavaAccess<?> access) {
    return access.getTargetOwner().getFullName() + "." + access.getTarget().getName();
  }

  /** The same call is harmless when a clock is handed in. */
  private static boolean takesClock(JavaAccess<?> access) {
    return access.getTarget() instanceof CodeUnitCallTarget called
        && called.getRawParameterTypes().stream()
            .anyMatch(type -> type.isEquivalentTo(Clock.class));
  }
}
