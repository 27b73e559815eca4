package padside.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Day;
import padside.flight.Field;
import padside.flight.Kind;
import padside.form.Choices;
import padside.form.Counts;
import padside.form.Dates;
import padside.form.Form;
import padside.form.FormField;
import padside.form.Texts;

/** The form of a day: where and when, and what was said about it. */
final class DayForm {
  private DayForm() {}

  /** A day of today; before it, where nobody has told, whether the clock is right. */
  static Screen create(World world) {
    return world.log().clock().knows(world.machine())
        ? today(world)
        : ClockScreen.of(ClockScreen.Then.DAY, world);
  }

  /** A day to plan for, with the same question before it. */
  static Screen ahead(World world) {
    return world.log().clock().knows(world.machine())
        ? tomorrow(world)
        : ClockScreen.of(ClockScreen.Then.DAY_AHEAD, world);
  }

  /** A day of today; the list of fields is open, the last one flown at on top. */
  static Screen today(World world) {
    return create(DayScreen.today(world), world);
  }

  /** A day to plan for, tomorrow until another date is typed. */
  static Screen tomorrow(World world) {
    return create(DayScreen.today(world).plusDays(1), world);
  }

  private static Screen create(LocalDate date, World world) {
    RecordForm.Sheet sheet = sheet(world);
    Facts given = Facts.none().with(Day.DATE, date);
    Form form = Form.of(sheet.fields(), given);
    Form open = new Form(form.fields(), form.opened(), form.entries(), 0, 0);
    return new RecordForm(sheet, open, Draft.ofNew(Kind.DAY, world), false);
  }

  static Screen open(Day day, World world) {
    return RecordForm.of(sheet(world), day.id(), day.facts(), world);
  }

  static RecordForm.Sheet sheet(World world) {
    Choices<Boolean> yesNo =
        new Choices<>(
            "answer",
            List.of(new Choices.Option<>(true, "yes", ""), new Choices.Option<>(false, "no", "")));
    return new RecordForm.Sheet(
        Kind.DAY,
        "day",
        List.of(
            FormField.choice(Day.FIELD, "Field", fields(world), fieldHint(world)),
            FormField.of(Day.DATE, "Date", new Dates(), "Like 2026-05-02."),
            FormField.choice(
                Day.PERMISSION, "Permission", yesNo, "Has the owner of the land allowed it?"),
            FormField.choice(Day.FIRE_BAN, "Fire ban", yesNo, "Is a fire ban in force here?"),
            FormField.of(
                    Day.PADS,
                    "Pads",
                    new Counts(false),
                    "How many stand in a row, up to 12; blank is one.")
                .doubtingOutside(Integer::doubleValue, 1, Day.MOST_PADS),
            FormField.of(Day.NOTE, "Note", new Texts(""), "Anything worth knowing.")),
        (facts, now) -> Optional.of(clock(now)));
  }

  private static String clock(World world) {
    return "Now "
        + DayWords.of(DayScreen.today(world))
        + ", "
        + DayWords.clock(world.now(), world)
        + ". Not right? Esc, then k sets the clock.";
  }

  private static String fieldHint(World world) {
    return world.log().fields().isEmpty()
        ? "None is described yet: leave with Esc, p adds one. Or go on without."
        : "Enter takes the marked one; type part of its name, or pick with Up, Down.";
  }

  private static Choices<RecordId> fields(World world) {
    Optional<RecordId> last = world.log().latestDay().flatMap(Day::field);
    List<Field> fields = world.log().fields();
    return new Choices<>(
        "field",
        Stream.concat(
                fields.stream().filter(field -> last.equals(Optional.of(field.id()))),
                fields.stream().filter(field -> !last.equals(Optional.of(field.id()))))
            .map(field -> new Choices.Option<>(field.id(), field.name(), ""))
            .toList());
  }
}
