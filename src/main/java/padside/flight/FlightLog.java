package padside.flight;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import padside.clock.Anchor;
import padside.clock.Moment;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;

/** The log as the rest of the program sees it. One thread uses it at a time. */
public interface FlightLog extends AutoCloseable {
  /** A record as it stands now. */
  record Stored(RecordId id, Facts facts) {}

  /** Which flights are wanted: newest first, those that match every given part. */
  record FlightQuery(
      Optional<RecordId> rocket, Optional<RecordId> day, Optional<String> words, int limit) {
    /** The newest flights of all. */
    public static FlightQuery newest(int limit) {
      return new FlightQuery(Optional.empty(), Optional.empty(), Optional.empty(), limit);
    }
  }

  /**
   * Keeps one action. When this returns it is on the medium.
   *
   * @return the ids of the records changed, in the order of the changes
   */
  List<RecordId> save(Action action) throws Fault;

  /** Every record of a kind that is not removed, in the order they were created. */
  List<Stored> list(Kind kind) throws Fault;

  Optional<Stored> find(Kind kind, RecordId id) throws Fault;

  /** Flights that are not removed, drafts and planned ones included, newest first. */
  List<Stored> flights(FlightQuery query) throws Fault;

  /** A rocket's flown flights whose altitude was measured, the newest first. */
  List<Stored> measuredFlights(RecordId rocket, int most) throws Fault;

  /**
   * Hands over every flight that is not removed with some of its values, one after the other and
   * oldest first: for what is made of all of them, however many there are. What was typed stays
   * out.
   */
  default void each(List<Column<?>> wanted, Consumer<Stored> reader) throws Fault {
    List<Stored> newestFirst = flights(FlightQuery.newest(Integer.MAX_VALUE));
    for (int i = newestFirst.size() - 1; i >= 0; i--) {
      Stored flight = newestFirst.get(i);
      Facts some = Facts.none();
      for (Column<?> column : wanted) {
        Optional<Object> value =
            Optional.ofNullable(flight.facts().cells().get(column.name()))
                .flatMap(Facts.Cell::value);
        some = value.isPresent() ? some.with(column.name(), Facts.Cell.of(value.get())) : some;
      }
      reader.accept(new Stored(flight.id(), some));
    }
  }

  /** The newest flight of each rocket; drafts, planned and removed ones left out. */
  List<Stored> lastFlightOfEachRocket() throws Fault;

  /**
   * How many motors of each lot were fired: of a flown flight all motors of the stage the lot is
   * named for, as {@link Flight#fired} tells. Removed flights are left out.
   */
  Map<RecordId, Integer> firedByLot() throws Fault;

  /** Records of a kind that are marked as removed, the newest first. */
  List<Stored> removed(Kind kind) throws Fault;

  /** Everything that was done to a record, oldest first; with each all it did to other records. */
  List<Operation> history(Kind kind, RecordId id) throws Fault;

  /**
   * What machines that had not heard of each other said differently and nobody has chosen from, of
   * the newest records first; of so many records at most.
   */
  List<Conflict> conflicts(int most) throws Fault;

  /**
   * Several cells for one field, or a removal beside changes it had not seen. Saving the field
   * again ends it: the new cell takes the place of all of them.
   *
   * @param facts of the record as it shows
   * @param field {@link Kind#REMOVED} where a removal is in it
   * @param heads those that stand, the one that shows last; of a removal the marks first, then the
   *     cells they had not seen
   */
  record Conflict(Kind kind, RecordId record, Facts facts, String field, List<Head> heads) {
    /** Keeps its own list. */
    public Conflict {
      heads = List.copyOf(heads);
    }

    /** Whether it is about the record's being there. */
    public boolean isRemoval() {
      return field.equals(Kind.REMOVED.name());
    }
  }

  /**
   * A cell nobody has replaced.
   *
   * @param done what put it there, told without what else that changed
   * @param device of the machine it was done on, which two of the same label do not share
   */
  record Head(String field, Facts.Cell cell, Operation done, String device) {
    /** Whether it marks the record as removed. */
    public boolean removes() {
      return field.equals(Kind.REMOVED.name()) && cell.value().equals(Optional.of(true));
    }
  }

  /**
   * How often each parachute, streamer and altimeter has flown, by day. Removed flights are left
   * out.
   */
  List<Use> uses() throws Fault;

  /**
   * Flown flights of one day with the same device or altimeter.
   *
   * @param gear the device or the altimeter
   * @param day absent where a flight names none
   */
  record Use(RecordId gear, Optional<RecordId> day, int flights) {}

  /**
   * The times that a start of a machine put into records that are not removed, and that still show
   * there as they were or as an anchor corrected them.
   */
  List<Stamp> stamps(String boot) throws Fault;

  /** When the newest operation was done, by the clocks of the machine it was done on. */
  Optional<Moment> newest() throws Fault;

  /** Every time told for a clock, in the order they were kept. */
  default List<Anchor> anchors() throws Fault {
    return anchors(list(Kind.CLOCK));
  }

  private static List<Anchor> anchors(List<Stored> records) {
    return records.stream().flatMap(each -> Anchor.in(each.facts()).stream()).toList();
  }

  /**
   * What keeps the tie of a start of the machine to the true time, and corrects with it all that
   * was stamped since that start. A clock the operating system set is kept only where that corrects
   * something.
   */
  default Action clockAction(Anchor anchor) throws Fault {
    List<Anchor> before = new ArrayList<>(anchors(removed(Kind.CLOCK)));
    before.addAll(anchors());
    return new Correction(anchor, before).action(stamps(anchor.boot()));
  }

  /**
   * A field with a time or date.
   *
   * @param shown what shows there
   * @param first what the operation that put it there, before any correction, wrote into the record
   * @param written when that was, by that machine's clocks
   * @param zone that machine's
   */
  record Stamp(
      Kind kind,
      RecordId record,
      String field,
      Facts.Cell shown,
      Facts first,
      Moment written,
      ZoneId zone) {
    /** Whether the machine's clock may be what fills a field. */
    public static boolean isIn(Kind kind, String field) {
      return Correction.isOf(kind, field);
    }
  }

  @Override
  void close() throws Fault;
}
