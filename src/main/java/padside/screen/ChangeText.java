package padside.screen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import padside.fact.Facts;
import padside.fact.RecordId;
import padside.flight.Kind;
import padside.flight.Operation;
import padside.form.FormField;

/**
 * What an operation changed, field by field, with the labels and units of the forms.
 *
 * @param before the facts of the records before it, as far as their history was read
 */
record ChangeText(Operation operation, Map<RecordId, Facts> before, World world) {
  private static final int WIDEST_LABEL = 24;

  /** A field that changed; {@code now} where it has changed again since. */
  private record Change(String label, String from, String to, String now) {
    String told(boolean made) {
      String since = now.equals(to) ? "" : " (now " + orBlank(now) + ")";
      return (made ? orBlank(to) : orBlank(from) + " → " + orBlank(to)) + since;
    }
  }

  /** Its lines, the record it is looked at from first, the others under their names. */
  List<Line> lines(RecordId subject, int width) {
    Set<RecordId> records = new LinkedHashSet<>(List.of(subject));
    operation.changes().forEach(cell -> records.add(cell.record()));
    List<Line> lines = new ArrayList<>();
    for (RecordId record : records) {
      List<Operation.Changed> cells =
          operation.changes().stream().filter(cell -> cell.record().equals(record)).toList();
      if (!cells.isEmpty()) {
        lines.addAll(lines(cells, record.equals(subject), width));
      }
    }
    return lines;
  }

  /** The labels of fields, for telling which were left alone. */
  List<String> labels(List<Operation.Changed> cells) {
    List<String> labels = new ArrayList<>();
    Set<RecordId> records = new LinkedHashSet<>();
    cells.forEach(cell -> records.add(cell.record()));
    for (RecordId record : records) {
      List<Operation.Changed> own =
          cells.stream().filter(cell -> cell.record().equals(record)).toList();
      changes(own).forEach(change -> labels.add(change.label()));
    }
    return labels;
  }

  private List<Line> lines(List<Operation.Changed> cells, boolean subject, int width) {
    Kind kind = cells.get(0).kind();
    boolean made = operation.made(cells.get(0).record());
    List<Line> lines = new ArrayList<>();
    if (!subject) {
      String name = KindFields.name(kind, facts(cells, Operation.Changed::now), world);
      String noun = KindFields.noun(kind, world);
      lines.add(Line.strong((made ? "new " : "") + noun + ": " + name));
    }
    List<Change> changes = changes(cells);
    int longest = changes.stream().mapToInt(change -> change.label().length()).max().orElse(0);
    int head = Math.min(WIDEST_LABEL, longest) + 2;
    for (Change change : changes) {
      String label = change.label() + " ".repeat(Math.max(1, head - change.label().length()));
      Paragraph.hanging(label, change.told(made), width)
          .forEach(text -> lines.add(Line.plain(text)));
    }
    return lines;
  }

  /** In the order of the forms; then what no form has a field for. */
  private List<Change> changes(List<Operation.Changed> cells) {
    Kind kind = cells.get(0).kind();
    Facts from = facts(cells, Operation.Changed::before);
    Facts to = facts(cells, Operation.Changed::after);
    Facts now = facts(cells, Operation.Changed::now);
    Facts touched = Facts.none();
    for (Operation.Changed cell : cells) {
      touched = cell.isRemoval() ? touched : touched.with(cell.field(), cell.after());
    }
    List<Change> changes = new ArrayList<>();
    for (FormField<?> field : KindFields.of(kind, to, world)) {
      Facts part = field.place().part(touched);
      if (!part.isEmpty()) {
        changes.add(
            new Change(field.label(), text(field, from), text(field, to), text(field, now)));
      }
      for (String name : part.cells().keySet()) {
        touched = touched.without(name);
      }
    }
    for (Operation.Changed cell : cells) {
      if (cell.isRemoval()
          ? !operation.made(cell.record())
          : touched.cells().containsKey(cell.field())) {
        changes.add(bare(kind, cell));
      }
    }
    changes.removeIf(change -> change.from().equals(change.to()));
    return changes;
  }

  /** What stands in a field of a form, as a history tells it. */
  static String text(FormField<?> field, Facts facts) {
    String text = field.textIn(facts);
    boolean value = field.place().get(facts).isPresent();
    return text.isEmpty() && value ? "one no longer listed" : field.understood(text).orElse(text);
  }

  private Change bare(Kind kind, Operation.Changed cell) {
    CellText text = new CellText(kind.column(cell.field()), world.log());
    return new Change(
        bareLabel(kind, cell.field()),
        text.of(cell.before()),
        text.of(cell.after()),
        text.of(cell.now()));
  }

  /** What a field is called that no form asks for. */
  static String bareLabel(Kind kind, String field) {
    String meaning = kind.column(field).map(column -> column.meaning()).orElse(field);
    return Paragraph.capital(meaning.split("[,;]", 2)[0]);
  }

  /** The whole record with one side of what changed put in. */
  private Facts facts(
      List<Operation.Changed> cells,
      java.util.function.Function<Operation.Changed, Facts.Cell> side) {
    Facts facts = before.getOrDefault(cells.get(0).record(), Facts.none());
    for (Operation.Changed cell : cells) {
      facts = facts.with(cell.field(), side.apply(cell));
    }
    return facts;
  }

  static String orBlank(String text) {
    return text.isBlank() ? CellText.BLANK : text;
  }
}
