package padside.store;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import padside.clock.Anchor;
import padside.clock.LogClock;
import padside.clock.Moment;
import padside.fact.RecordId;
import padside.flight.Operation;

/** Operations without what they changed: what was done, when by the log's time, and where. */
final class BareOperations {
  private final RunHeaders headers;
  private final LogClock clock;

  BareOperations(Database database, List<Anchor> anchors) {
    this.headers = new RunHeaders(database);
    this.clock = new LogClock(anchors, Optional.empty());
  }

  Operation of(JournalLine line) throws SQLException {
    Moment moment = headers.moment(line);
    return new Operation(
        new RecordId(line.op().toString()),
        line.label(),
        clock.told(moment).wall(),
        clock.knows(moment),
        headers.label(line.op().run()),
        List.of());
  }

  /** Which machine it was done on; where no header tells, the run itself. */
  String device(JournalLine line) throws SQLException {
    String device = headers.device(line.op().run());
    return device.isEmpty() ? line.op().run() : device;
  }
}
