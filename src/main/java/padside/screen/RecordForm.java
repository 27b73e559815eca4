package padside.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Kind;
import padside.form.Entry;
import padside.form.Form;
import padside.form.FormField;

/**
 * A form over one record of any kind. Every field left is kept at once; there is nothing to confirm
 * and nothing to lose.
 *
 * @param leaving the flier has left, the last save is under way
 */
record RecordForm(Sheet sheet, Form form, Draft draft, boolean leaving) implements Screen {
  private static final int TOP = 2;

  private static final Binding DONE =
      Binding.of("<f2><esc>", "done", "leave the form, as Esc does; all that was typed is kept");
  private static final Binding NEXT =
      Binding.of("<tab><enter>", "next", "accept the field and go on; Enter in the last is done");

  /**
   * What is filled in.
   *
   * @param noun as titles and the history call it: {@code rocket}
   * @param told what follows from all that is typed, in one line above the fields
   */
  record Sheet(
      Kind kind,
      String noun,
      List<FormField<?>> fields,
      BiFunction<Facts, World, Optional<String>> told) {
    Sheet {
      fields = List.copyOf(fields);
    }

    /** A sheet that tells nothing besides. */
    Sheet(Kind kind, String noun, List<FormField<?>> fields) {
      this(kind, noun, fields, (facts, world) -> Optional.empty());
    }
  }

  /**
   * A form for a new record, which is created by the first thing typed.
   *
   * @param given facts it has from the start; shown where the form has a field for them
   */
  static RecordForm ofNew(Sheet sheet, Facts given, World world) {
    return new RecordForm(
        sheet, Form.of(sheet.fields(), given), Draft.ofNew(sheet.kind(), world), false);
  }

  static RecordForm of(Sheet sheet, RecordId id, Facts facts, World world) {
    return new RecordForm(
        sheet, Form.of(sheet.fields(), facts), Draft.of(sheet.kind(), id, facts, world), false);
  }

  /** The form with the cursor in the field of that name. */
  RecordForm at(String field) {
    return new RecordForm(sheet, form.to(field), draft, leaving);
  }

  @Override
  public Step on(Event event, World world) {
    if (event instanceof Event.Pressed pressed) {
      return pressed(pressed.key(), world);
    }
    if (event instanceof Event.Leaving || event instanceof Event.Paused) {
      return typing();
    }
    Draft heard = draft.on(event);
    if (heard.equals(draft)) {
      return Step.stay(this);
    }
    boolean failed = event instanceof Event.NotSaved;
    RecordForm now = new RecordForm(sheet, form, heard, leaving && !failed);
    return failed ? Step.stay(now) : now.goneOn();
  }

  /** After a save: what was typed meanwhile follows, and a form already left goes for good. */
  private Step goneOn() {
    return leaving ? left(form) : typing();
  }

  /** What stands in the form sent to be kept; no field is left by that. */
  private Step typing() {
    Draft.Kept kept = keptTyping();
    return Step.stay(new RecordForm(sheet, form, kept.draft(), leaving)).and(kept.effects());
  }

  private Step pressed(Key key, World world) {
    boolean last = form.at() == form.fields().size() - 1;
    if (DONE.has(key) || (key.equals(Key.ENTER) && last)) {
      return left(form.accepted());
    }
    if (ByWire.TAKE.has(key) && hasWind()) {
      return byWire(world);
    }
    Optional<Form> next = FormKeys.press(form, key);
    if (next.isEmpty()) {
      return Step.stay(this);
    }
    boolean accepts = FormKeys.NEXT.has(key) || next.get().at() != form.at();
    return accepts
        ? keeping(next.get())
        : Step.stay(new RecordForm(sheet, next.get(), draft, leaving));
  }

  private boolean hasWind() {
    return sheet.kind() == Kind.WEATHER;
  }

  private Step byWire(World world) {
    return ByWire.text(form.opened(), world)
        .map(text -> keeping(form.set(CardFields.WIND, text).to(form.at())))
        .orElseGet(
            () -> Step.stay(this).and(new Effect.Tell(ByWire.refusal(form.opened(), world))));
  }

  /** The form as it is now, what is new in it sent to be kept. */
  Step keeping(Form now) {
    Draft.Kept kept = kept(now);
    return Step.stay(new RecordForm(sheet, now, kept.draft(), leaving)).and(kept.effects());
  }

  private Step left(Form now) {
    Draft.Kept kept = kept(now);
    boolean nothingUnderWay = kept.effects().isEmpty() && kept.draft().allKept();
    return nothingUnderWay
        ? Step.close()
        : Step.stay(new RecordForm(sheet, now, kept.draft(), true)).and(kept.effects());
  }

  private Draft.Kept kept(Form now) {
    if (!now.touched()) {
      return new Draft.Kept(draft, List.of());
    }
    return draft.keep(label(), toKeep(now));
  }

  private Draft.Kept keptTyping() {
    return form.touched()
        ? draft.keepTyping(label(), form.asTyped(toKeep(form)))
        : new Draft.Kept(draft, List.of());
  }

  private String label() {
    return (draft.record().isEmpty() ? "add " : "change ") + sheet.noun();
  }

  /** What a new record starts with, or what is kept of an old one, and over it what was touched. */
  private Facts toKeep(Form now) {
    return (draft.record().isEmpty() ? now.opened() : draft.sent()).with(now.touchedFacts());
  }

  @Override
  public void draw(Canvas canvas, World world) {
    int below =
        sheet
            .told()
            .apply(form.facts(), world)
            .map(text -> Paragraph.draw(canvas, 1, text, Style.STRONG))
            .orElse(TOP);
    drawFrom(Math.max(TOP, below), canvas, world);
  }

  /** Draws from a row down, for screens that tell something above. */
  void drawFrom(int top, Canvas canvas, World world) {
    Size size = canvas.size();
    FormPane.draw(
        canvas, form, new FormPane.Area(1, top, size.columns() - 3, size.rows() - 3 - top));
    canvas.put(2, size.rows() - 2, contested(world), Style.OBJECTION);
    String state = state(world);
    canvas.put(size.columns() - state.length() - 2, size.rows() - 2, state, Style.PLAIN);
  }

  /** Which of its fields machines say differently. */
  private String contested(World world) {
    List<Dispute> open = draft.record().map(id -> Disputes.of(id, world)).orElse(List.of());
    return open.isEmpty()
        ? ""
        : "In conflict, r on the day: "
            + String.join(", ", open.stream().map(Dispute::about).toList());
  }

  private String state(World world) {
    if (!form.touched()) {
      return "";
    }
    boolean all = draft.allKept(form.asTyped(toKeep(form)));
    return all
        ? world.keptWords("all kept")
        : draft.allKept() ? "kept when you go on" : "keeping …";
  }

  @Override
  public Optional<Bookmark> bookmark() {
    Bookmark mark = Bookmark.of(sheet.kind().code()).about(draft.record()).in(form);
    Entry first = form.entries().get(0);
    boolean given = draft.record().isEmpty() && !first.touched();
    return Optional.of(given ? mark.withText(first.typed()) : mark);
  }

  @Override
  public RecordForm at(Bookmark mark) {
    Form there = (draft.record().isEmpty() ? mark.nothingTyped() : mark).resumed(form);
    return new RecordForm(sheet, there, draft, leaving);
  }

  @Override
  public String title(World world) {
    String name = form.understood(0).orElse(form.entries().get(0).typed());
    String noun = Paragraph.capital(sheet.noun());
    return name.isBlank() ? noun : noun + ": " + name;
  }

  @Override
  public String purpose() {
    return "What the log knows of this "
        + sheet.noun()
        + ". Every field is kept as it is left; what you do not know may stay empty.";
  }

  @Override
  public List<Mark> marks() {
    return Mark.OF_FORMS;
  }

  @Override
  public List<Binding> bindings() {
    List<Binding> table = new ArrayList<>(List.of(NEXT));
    table.addAll(FormKeys.TABLE.subList(1, FormKeys.TABLE.size()));
    if (hasWind()) {
      table.add(ByWire.TAKE);
    }
    table.add(DONE);
    return List.copyOf(table);
  }

  @Override
  public boolean takesText() {
    return true;
  }
}
