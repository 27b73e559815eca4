package padside.app;

import java.util.HashMap;
import java.util.Map;
import padside.fact.RecordId;
import padside.flight.Kind;

/** The records of the season by the names its script has for them. */
final class DemoNames {
  private record Name(Kind kind, String text) {}

  private final Map<Name, RecordId> records = new HashMap<>();
  private final Map<RecordId, DemoStep> steps = new HashMap<>();

  void put(Kind kind, DemoStep step, RecordId record) {
    records.put(new Name(kind, step.subject()), record);
    steps.put(record, step);
  }

  RecordId get(Kind kind, String name) {
    RecordId record = records.get(new Name(kind, name));
    if (record == null) {
      throw new IllegalStateException("The script has no " + kind.code() + " " + name);
    }
    return record;
  }

  /** The step that added a record, with what the flier does not know of it. */
  DemoStep step(RecordId record) {
    return steps.get(record);
  }
}
