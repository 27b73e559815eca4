package padside.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import padside.fact.Facts;

/**
 * A form being filled: its fields, what stands in them, the field the cursor is in and the option
 * picked from its list. Never empty.
 *
 * <p>A field that nobody typed into keeps its facts to the last bit, whatever units they are shown
 * in; only a touched one is read anew.
 *
 * @param opened the facts the form was opened over
 * @param at index of the field the cursor is in
 * @param picked index among {@link #suggestions()}, {@link #NOTHING_PICKED} until one is picked
 */
public record Form(
    List<FormField<?>> fields, Facts opened, List<Entry> entries, int at, int picked) {
  /** Stands for no option picked by hand. */
  public static final int NOTHING_PICKED = -1;

  /** The longest text a field takes; a note of a few lines fits. */
  public static final int LONGEST_TEXT = 500;

  /** Keeps own lists; refuses an empty form. */
  public Form {
    fields = List.copyOf(fields);
    entries = List.copyOf(entries);
    if (fields.isEmpty() || fields.size() != entries.size() || at >= fields.size()) {
      throw new IllegalArgumentException("a form has fields, an entry each, and a cursor in one");
    }
  }

  /** A form over a record's facts, the cursor in the first field. */
  public static Form of(List<? extends FormField<?>> fields, Facts facts) {
    List<Entry> entries =
        fields.stream().map(field -> Entry.of(field.textIn(facts), field.startsAnew())).toList();
    return new Form(List.copyOf(fields), facts, entries, 0, NOTHING_PICKED);
  }

  /** Types one character or a whole text at the cursor. */
  public Form type(String text) {
    if (field().completes() && picked != NOTHING_PICKED && listOpen()) {
      return accepted().type(text);
    }
    Entry entry = entry();
    boolean full = !entry.fresh() && entry.typed().length() + text.length() > LONGEST_TEXT;
    return full ? this : edit(e -> e.insert(text));
  }

  public Form backspace() {
    return edit(Entry::backspace);
  }

  public Form delete() {
    return edit(Entry::delete);
  }

  public Form left() {
    return edit(Entry::left);
  }

  public Form right() {
    return edit(Entry::right);
  }

  public Form home() {
    return edit(entry -> entry.cursorTo(0));
  }

  public Form end() {
    return edit(entry -> entry.cursorTo(entry.typed().length()));
  }

  /** Empties the field. */
  public Form clear() {
    return edit(entry -> entry.replaced(""));
  }

  /** Accepts the field and goes on to the next; stays in the last. */
  public Form next() {
    return to(Math.min(at + 1, fields.size() - 1));
  }

  /** Accepts the field and goes back; stays in the first. */
  public Form previous() {
    return to(Math.max(at - 1, 0));
  }

  /** Accepts the field and goes to another. */
  public Form to(int field) {
    Form accepted = accepted();
    return new Form(
        fields,
        opened,
        replace(
            accepted.entries,
            field,
            accepted.entries.get(field).entered(fields.get(field).startsAnew())),
        field,
        NOTHING_PICKED);
  }

  /** Goes to the field of that name; stays where there is none. */
  public Form to(String name) {
    return indexOf(name).map(this::to).orElse(this);
  }

  /** The cursor put into the field of that name as it stands, nothing accepted or entered. */
  public Form at(String name) {
    return new Form(fields, opened, entries, indexOf(name).orElse(at), picked);
  }

  /**
   * The cursor put back into the field of that name, nothing accepted: behind what was being typed
   * there, or as if it was just entered.
   */
  public Form resumed(String name, boolean typing) {
    Form there = at(name);
    Entry entry = there.entry().entered(there.field().startsAnew() && !typing);
    int list = name.equals(field().name()) && !typing ? picked : NOTHING_PICKED;
    return new Form(fields, opened, replace(entries, there.at, entry), there.at, list);
  }

  /** Puts a text into a field as if it had been typed there. */
  public Form set(String name, String text) {
    return indexOf(name)
        .map(i -> replace(entries, i, entries.get(i).replaced(text)))
        .map(changed -> new Form(fields, opened, changed, at, picked))
        .orElse(this);
  }

  /** The same with another text in a field for the eyes alone; the cursor stays behind it. */
  public Form showing(String name, String text) {
    return indexOf(name)
        .map(i -> replace(entries, i, entries.get(i).showing(text)))
        .map(changed -> new Form(fields, opened, changed, at, picked))
        .orElse(this);
  }

  /**
   * The form as it is when the field is left: in a list field the option picked stands for what was
   * typed.
   */
  public Form accepted() {
    return pickedText()
        .filter(text -> listOpen())
        .map(text -> edit(entry -> entry.replaced(text)))
        .orElse(this);
  }

  /** The options the typed text leaves; empty for fields without a list. */
  public List<? extends Choices.Option<?>> suggestions() {
    return field().suggestions(entry().fresh() ? "" : entry().typed());
  }

  /** True while the list of the field is in use: something was typed or picked in it. */
  public boolean listOpen() {
    return !suggestions().isEmpty()
        && (picked != NOTHING_PICKED || (!entry().fresh() && !entry().typed().isBlank()));
  }

  /** The option that stands when the field is left now. */
  public int pickedOption() {
    return Math.max(0, picked);
  }

  /** Moves the pick down the list: a closed list opens on what stands in the field, or its top. */
  public Form pickNext() {
    return pick(listOpen() ? pickedOption() + 1 : standing());
  }

  /** Moves the pick up the list; a closed one opens as with {@link #pickNext}. */
  public Form pickPrevious() {
    return pick(listOpen() ? pickedOption() - 1 : standing());
  }

  /** The facts of every field: as opened where untouched, else as read from what was typed. */
  public Facts facts() {
    Facts facts = Facts.none();
    for (int i = 0; i < fields.size(); i++) {
      Entry entry = entries.get(i);
      FormField<?> field = fields.get(i);
      facts = facts.with(entry.touched() ? field.facts(entry.typed()) : field.place().part(opened));
    }
    return facts;
  }

  /**
   * Facts of this form as they are while it is typed: what is picked from a list counts only once
   * the field is left, so the text typed to find it stands for itself until it says all of it.
   */
  public Facts asTyped(Facts facts) {
    boolean finding =
        field().choices().isPresent()
            && entry().touched()
            && !accepted().entry().typed().equals(entry().typed());
    return finding ? facts.with(field().name(), Facts.Cell.unread(entry().typed())) : facts;
  }

  /** The facts of the touched fields alone. */
  public Facts touchedFacts() {
    Facts facts = Facts.none();
    for (int i = 0; i < fields.size(); i++) {
      Entry entry = entries.get(i);
      facts = entry.touched() ? facts.with(fields.get(i).facts(entry.typed())) : facts;
    }
    return facts;
  }

  /** True once the flier has changed any field. */
  public boolean touched() {
    return entries.stream().anyMatch(Entry::touched);
  }

  /** True once the flier has changed the field of that name. */
  public boolean touched(String name) {
    return entry(name).map(Entry::touched).orElse(false);
  }

  public FormField<?> field() {
    return fields.get(at);
  }

  public Entry entry() {
    return entries.get(at);
  }

  /** What stands in the field of that name, where there is one. */
  public Optional<Entry> entry(String name) {
    return indexOf(name).map(entries::get);
  }

  /** The text of the field of that name. */
  public String text(String name) {
    return entry(name).map(Entry::typed).orElse("");
  }

  /** Why the text of a field cannot be read. */
  public Optional<String> objection(int field) {
    return fields.get(field).objection(entries.get(field).typed());
  }

  /** How a number typed without a unit was understood: {@code 42 oz} for 42. */
  public Optional<String> understood(int field) {
    return fields.get(field).understood(entries.get(field).typed());
  }

  /** Why the value of a field is unlikely. */
  public Optional<String> doubt(int field) {
    return fields.get(field).doubt(entries.get(field).typed(), facts());
  }

  /** The first field with a text that cannot be read. */
  public Optional<Integer> firstObjection() {
    return java.util.stream.IntStream.range(0, fields.size())
        .filter(i -> objection(i).isPresent())
        .boxed()
        .findFirst();
  }

  /**
   * The form with other fields. Those that were there keep what stands in them, a new one has what
   * the facts say; the cursor stays in its field.
   */
  public Form with(List<? extends FormField<?>> others, Facts facts) {
    Form fresh = of(others, facts);
    List<Entry> kept = new ArrayList<>();
    for (int i = 0; i < others.size(); i++) {
      kept.add(entry(others.get(i).name()).orElse(fresh.entries.get(i)));
    }
    return new Form(List.copyOf(others), opened, kept, 0, picked).at(field().name());
  }

  private Optional<Integer> indexOf(String name) {
    return java.util.stream.IntStream.range(0, fields.size())
        .filter(i -> fields.get(i).name().equals(name))
        .boxed()
        .findFirst();
  }

  private Optional<String> pickedText() {
    List<? extends Choices.Option<?>> options = suggestions();
    return pickedOption() < options.size()
        ? Optional.of(options.get(pickedOption()).text())
        : Optional.empty();
  }

  private Form pick(int index) {
    int last = suggestions().size() - 1;
    return last < 0
        ? this
        : new Form(fields, opened, entries, at, Math.max(0, Math.min(last, index)));
  }

  /** Which option has the text that stands in the field; the first when none has. */
  private int standing() {
    List<String> texts = suggestions().stream().<String>map(Choices.Option::text).toList();
    return Math.max(0, texts.indexOf(entry().typed()));
  }

  private Form edit(UnaryOperator<Entry> change) {
    return new Form(
        fields, opened, replace(entries, at, change.apply(entry())), at, NOTHING_PICKED);
  }

  private static List<Entry> replace(List<Entry> entries, int index, Entry entry) {
    List<Entry> changed = new ArrayList<>(entries);
    changed.set(index, entry);
    return changed;
  }
}
