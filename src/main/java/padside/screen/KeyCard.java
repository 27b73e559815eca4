package padside.screen;

import java.util.List;
import padside.page.Keys;

/** What the keys of the main screens do, from their own tables, to be put on a page. */
public final class KeyCard {
  private static final List<String> OF_FORMS =
      FormKeys.TABLE.stream().map(Binding::meaning).toList();

  private KeyCard() {}

  /** Screen by screen, as a morning goes; what every form has stands once, at the end. */
  public static Keys ofMainScreens() {
    return new Keys(
        List.of(
            screen("Day", List.of(DayKeys.values()).stream().map(DayKeys::binding).toList()),
            screen("Card", CardScreen.TABLE),
            screen("Pad", List.of(PadKeys.values()).stream().map(PadKeys::binding).toList()),
            screen("Count", CountScreen.table()),
            screen("Marks", MarkScreen.TABLE),
            screen("Misfire", MisfireScreen.TABLE),
            screen("Debrief", DebriefScreen.table(true)),
            group("Any form", FormKeys.TABLE)));
  }

  private static Keys.Group screen(String name, List<Binding> table) {
    return group(
        name, table.stream().filter(binding -> !OF_FORMS.contains(binding.meaning())).toList());
  }

  private static Keys.Group group(String name, List<Binding> table) {
    return new Keys.Group(
        name, table.stream().map(each -> new Keys.Key(each.shownKey(), each.meaning())).toList());
  }
}
