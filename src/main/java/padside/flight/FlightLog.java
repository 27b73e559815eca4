package padside.flight;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  @Override
  void close() throws Fault;
}
