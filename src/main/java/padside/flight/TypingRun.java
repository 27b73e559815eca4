package padside.flight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padside.fact.RecordId;

/**
 * What was kept while one text was typed, pause by pause, up to what it became.
 *
 * @param all told as one operation
 * @param last what was kept last of it
 */
record TypingRun(Operation all, Operation last) {
  /** One cell of one record. */
  private record Where(RecordId record, String field) {
    static Where of(Operation.Changed cell) {
      return new Where(cell.record(), cell.field());
    }
  }

  static List<Operation> joined(List<Operation> history) {
    List<TypingRun> runs = new ArrayList<>();
    for (Operation done : history) {
      int end = runs.size() - 1;
      if (end >= 0 && runs.get(end).goesOnWith(done)) {
        runs.set(end, runs.get(end).with(done));
      } else {
        runs.add(new TypingRun(done, done));
      }
    }
    return runs.stream().map(TypingRun::told).toList();
  }

  /** Whether the text was still being typed and this is what came next of it. */
  private boolean goesOnWith(Operation next) {
    return last.isTyping()
        && next.machine().equals(last.machine())
        && next.changes().stream().allMatch(cell -> isOf(cell.record()))
        && next.changes().stream().anyMatch(this::follows);
  }

  private boolean isOf(RecordId record) {
    return last.changes().stream().anyMatch(cell -> cell.record().equals(record));
  }

  private boolean follows(Operation.Changed cell) {
    return cell.over().filter(last.id()::equals).isPresent()
        && last.changes().stream()
            .filter(typed -> Where.of(typed).equals(Where.of(cell)))
            .anyMatch(typed -> typed.after().typed().isPresent());
  }

  /** One that made the record stays the one that made it. */
  private TypingRun with(Operation next) {
    boolean made = all.changes().stream().anyMatch(cell -> all.made(cell.record()));
    Operation named = made ? all : next;
    return new TypingRun(
        new Operation(
            named.id(), named.label(), next.when(), next.timed(), next.machine(), changes(next)),
        next);
  }

  private List<Operation.Changed> changes(Operation next) {
    Map<Where, Operation.Changed> cells = new LinkedHashMap<>();
    all.changes().forEach(cell -> cells.put(Where.of(cell), cell));
    next.changes().forEach(cell -> cells.merge(Where.of(cell), cell, TypingRun::over));
    return List.copyOf(cells.values());
  }

  /** Of a cell written twice, what it was before both and what it is after them. */
  private static Operation.Changed over(Operation.Changed first, Operation.Changed second) {
    boolean beside = !second.without().equals(second.before());
    return new Operation.Changed(
        first.kind(),
        first.record(),
        first.field(),
        first.before(),
        first.over(),
        second.after(),
        second.now(),
        second.stands(),
        beside ? second.without() : first.before());
  }

  private Operation told() {
    return new Operation(
        all.id(), all.plainLabel(), all.when(), all.timed(), all.machine(), all.changes());
  }
}
