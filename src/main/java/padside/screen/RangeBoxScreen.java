package padside.screen;

import java.util.List;
import java.util.Optional;

/** The box that motors, parachutes and altimeters live in: three lists, one at a time. */
final class RangeBoxScreen {
  private static final Binding NEXT =
      Binding.of("<tab><right>", "group", "motors, recovery, altimeters in turn");
  private static final Binding BEFORE = Binding.of("<s-tab><left>", "", "the group before");
  private static final Binding TYPES =
      Binding.of("t", "types", "the motor table and the types you have entered");

  /** For the bindings of every group. */
  static final List<Binding> BINDINGS = List.of(NEXT, BEFORE, LessonsScreen.OPEN, TYPES);

  private RangeBoxScreen() {}

  /** What the box is divided into. */
  enum Group {
    MOTORS("Motors"),
    RECOVERY("Recovery"),
    ALTIMETERS("Altimeters");

    private final String words;

    Group(String words) {
      this.words = words;
    }

    private Shelf shelf() {
      return switch (this) {
        case MOTORS -> LotShelf.counted();
        case RECOVERY -> new DeviceShelf();
        case ALTIMETERS -> new AltimeterShelf();
      };
    }

    private Group turned(int steps) {
      List<Group> all = List.of(values());
      return all.get(Math.floorMod(all.indexOf(this) + steps, all.size()));
    }
  }

  static RecordList open(World world) {
    return RecordList.of(Group.MOTORS.shelf(), world);
  }

  static String title() {
    return "Range box";
  }

  /** The groups, the one shown in brackets. */
  static String banner(Group here) {
    StringBuilder banner = new StringBuilder();
    for (Group group : Group.values()) {
      banner.append(group == here ? "[" + group.words + "]" : " " + group.words + " ").append(" ");
    }
    return banner.toString().stripTrailing();
  }

  /** The keys all groups have in common. */
  static Optional<Step> press(Key key, Group here, RecordList list, World world) {
    if (NEXT.has(key)) {
      return Optional.of(Step.stay(list.showing(here.turned(1).shelf())));
    }
    if (BEFORE.has(key)) {
      return Optional.of(Step.stay(list.showing(here.turned(-1).shelf())));
    }
    if (LessonsScreen.OPEN.has(key)) {
      return Optional.of(list.opening(LessonsScreen.open(), world));
    }
    return TYPES.has(key)
        ? Optional.of(list.opening(MotorTypesScreen.open(world), world))
        : Optional.empty();
  }
}
