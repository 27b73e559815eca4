package padside.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import padside.flight.Kind;
import padside.store.JournalLine.CellChange;

/**
 * What one line says of one record, readied for the tables away from them.
 *
 * @param run in the record's name, empty where that names no operation
 * @param part which of several records one operation made
 * @param cells what is written; none where {@code doc} has it all
 * @param doc the cells as the record shows them where it is made here whole: nothing else was ever
 *     said of it
 */
record RecordPart(
    String kind,
    String record,
    String run,
    int part,
    List<CellChange> cells,
    Optional<String> doc) {
  private static final Pattern MADE_BY_OPERATION =
      Pattern.compile("([0-9a-f]{20})\\.[0-9]{1,15}(?:\\.([0-9]{1,9}))?");

  RecordPart {
    cells = List.copyOf(cells);
  }

  /** The parts of a line, in its order. */
  static List<RecordPart> of(JournalLine line) {
    return inFull(line).stream()
        .map(
            each -> {
              Optional<String> doc = each.docOf(line);
              return doc.isEmpty()
                  ? each
                  : new RecordPart(each.kind, each.record, each.run, each.part, List.of(), doc);
            })
        .toList();
  }

  /** The parts of a line, in its order, each by its cells. */
  static List<RecordPart> inFull(JournalLine line) {
    List<RecordPart> parts = new ArrayList<>();
    List<CellChange> changes = line.changes();
    for (int from = 0, to = 0; from < changes.size(); from = to) {
      while (to < changes.size() && isOfSame(changes.get(from), changes.get(to))) {
        to++;
      }
      parts.add(of(changes.subList(from, to)));
    }
    return parts;
  }

  private static boolean isOfSame(CellChange one, CellChange other) {
    return one.record().equals(other.record()) && one.kind().equals(other.kind());
  }

  private static RecordPart of(List<CellChange> changes) {
    CellChange first = changes.get(0);
    Matcher made = MADE_BY_OPERATION.matcher(first.record());
    boolean named = made.matches();
    return new RecordPart(
        first.kind(),
        first.record(),
        named ? made.group(1) : "",
        named && made.group(2) != null ? Integer.parseInt(made.group(2)) : 1,
        changes.stream().filter(change -> change.field().isPresent()).toList(),
        Optional.empty());
  }

  private Optional<String> docOf(JournalLine line) {
    return !run.isEmpty() && isMadeBy(line) && isPlain(cells)
        ? Optional.of(doc(cells))
        : Optional.empty();
  }

  private boolean isMadeBy(JournalLine line) {
    String op = line.op().toString();
    return record.startsWith(op)
        && (record.length() == op.length() || record.charAt(op.length()) == '.');
  }

  /** True where {@link #doc} is to the letter what SQLite would make of the cells, all heads. */
  private static boolean isPlain(List<CellChange> cells) {
    Set<String> fields = new HashSet<>();
    return !cells.isEmpty()
        && cells.stream()
            .allMatch(
                each ->
                    each.field().filter(RecordPart::isPlain).filter(fields::add).isPresent()
                        && each.replaces().isEmpty()
                        && !each.cell().typed().map(RecordPart::hasControls).orElse(false))
        && !fields.contains(Kind.REMOVED.name());
  }

  private static boolean isPlain(String name) {
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if ((c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '_') {
        return false;
      }
    }
    return true;
  }

  private static boolean hasControls(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < ' ') {
        return true;
      }
    }
    return false;
  }

  private static String doc(List<CellChange> cells) {
    StringBuilder doc = new StringBuilder("{");
    cells.stream()
        .sorted(Comparator.comparing(cell -> cell.field().orElseThrow()))
        .forEach(
            cell ->
                doc.append(doc.length() == 1 ? "\"" : ",\"")
                    .append(cell.field().orElseThrow())
                    .append("\":{\"v\":")
                    .append(cell.cell().value().map(Json::write).orElse("null"))
                    .append(",\"y\":")
                    .append(cell.cell().typed().map(Json::write).orElse("null"))
                    .append('}'));
    return doc.append('}').toString();
  }
}
