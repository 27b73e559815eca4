package padside.flight;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import padside.clock.Anchor;
import padside.clock.Moment;
import padside.fact.Column;
import padside.fact.Facts;
import padside.fact.Fault;
import padside.fact.RecordId;
import padside.units.TimeSpan;

/** The log as the rest of the program sees it. One thread uses it at a time. */
public interface FlightLog extends Searched, AutoCloseable {
  /** A record as it stands now. */
  record Stored(RecordId id, Facts facts) {}

  /** Which flights are wanted: newest first, those that match every given part. */
  record FlightQuery(Optional<RecordId> rocket, Optional<RecordId> day, int limit) {
    /** The newest flights of all. */
    public static FlightQuery newest(int limit) {
      return new FlightQuery(Optional.empty(), Optional.empty(), limit);
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
   * Hands over flights that are not removed with some of their values, one after the other and
   * oldest first: for what is made of all of them, however many there are.
   */
  default void each(Sought sought, Consumer<Passing> reader) throws Fault {
    Optional<RecordId> after = Optional.empty();
    do {
      Stretch stretch = pass(sought, after, Sought.AT_ONCE);
      stretch.flights.forEach(reader);
      after = stretch.end;
    } while (after.isPresent());
  }

  /**
   * So many of such flights.
   *
   * @param after the flight the stretch before ended with; absent for the first
   */
  Stretch pass(Sought sought, Optional<RecordId> after, int most) throws Fault;

  /**
   * What of flights is wanted.
   *
   * @param alike columns in which many flights say the same
   * @param own further columns
   * @param rocket whose flights; absent for all
   */
  record Sought(List<Column<?>> alike, List<Column<?>> own, Optional<RecordId> rocket) {
    private static final int AT_ONCE = 1000;

    /** Keeps its own lists. */
    public Sought {
      alike = List.copyOf(alike);
      own = List.copyOf(own);
    }

    /** Of every rocket. */
    public static Sought of(List<Column<?>> alike, List<Column<?>> own) {
      return new Sought(alike, own, Optional.empty());
    }
  }

  /**
   * A flight passing by, without what was typed.
   *
   * @param alike the very same object for many of those that say the same there, so that what is
   *     made of it can be kept by it
   */
  record Passing(RecordId id, Facts alike, Facts own) {
    /** All of it. */
    public Flight flight() {
      return new Flight(id, alike.with(own));
    }
  }

  /**
   * Some flights.
   *
   * @param end where the next stretch goes on; absent behind the last flight
   */
  record Stretch(List<Passing> flights, Optional<RecordId> end) {
    /** Keeps its own list. */
    public Stretch {
      flights = List.copyOf(flights);
    }
  }

  /** The newest flight of each rocket; drafts, planned and removed ones left out. */
  List<Stored> lastFlightOfEachRocket() throws Fault;

  /**
   * How many motors of each lot were fired: of a flown flight all motors of the stage the lot is
   * named for, as {@link Flight#fired} tells. Removed flights are left out.
   */
  Map<RecordId, Integer> firedByLot() throws Fault;

  /**
   * Some flown flights that are not removed, with what {@link Past} is made of and no more. All of
   * them come page by page, in no order that means anything.
   *
   * @param after where the page before ended; 0 for the first
   */
  Page flown(long after, int most) throws Fault;

  /**
   * Some flown flights.
   *
   * @param end where the next page goes on; absent behind the last one
   */
  record Page(List<Flight> flights, OptionalLong end) {
    /** Keeps its own list. */
    public Page {
      flights = List.copyOf(flights);
    }
  }

  /**
   * What flown flights say of motors and delays, those alike told together.
   *
   * @param burns how many flights
   * @param whole whether it is of all flights of a log, not of the newest alone
   */
  record Past(Map<Burnt, Integer> burns, Map<Ejected, Told> ejections, boolean whole) {
    private static final int PAGE = 1000;

    /** Keeps its own maps. */
    public Past {
      burns = Map.copyOf(burns);
      ejections = Map.copyOf(ejections);
    }

    /** Of those of some flights that were flown. */
    public static Past of(List<Flight> some, boolean whole) {
      return new PastTally().with(some).past(whole);
    }

    /** What puts together flights one after the other. */
    public static Gathering gathering() {
      return new PastTally();
    }

    /** Of all flights of a log: some seconds where there are a hundred thousand. */
    public static Past ofAll(FlightLog log) throws Fault {
      PastTally tally = new PastTally();
      for (OptionalLong after = OptionalLong.of(0); after.isPresent(); ) {
        Page page = log.flown(after.getAsLong(), PAGE);
        tally.with(page.flights);
        after = page.end;
      }
      return tally.past(true);
    }

    /** Of these and others. */
    public Past and(Past more) {
      return new PastTally().with(this).with(more).past(whole && more.whole);
    }
  }

  /** What flights say of motors and delays on its way to being told together. */
  interface Gathering {
    /** Takes flown flights that say the same of all but their delays. */
    void take(Facts alike, Told told);

    /** Of all that were taken, which are all there are; it begins anew then. */
    Past past();
  }

  /**
   * In what flights are alike for their motors.
   *
   * @param motor as the card has it
   * @param burn a word of the outcome table; absent before the debrief
   */
  record Burnt(
      Optional<String> motor,
      Optional<RecordId> lot,
      Optional<RecordId> boosterLot,
      Optional<String> burn) {}

  /**
   * In what flights are alike for their delays.
   *
   * @param motor as the card has it
   * @param lot the topmost stage is from
   * @param ejection a word of the outcome table; absent before the debrief
   */
  record Ejected(
      Optional<RecordId> rocket,
      Optional<String> motor,
      Optional<RecordId> lot,
      Optional<String> ejection) {}

  /**
   * What flights that are alike tell of delays.
   *
   * @param delays measured, in seconds
   * @param off measured less the best one as it was predicted, in seconds
   */
  record Told(int flights, Moments delays, Moments off) {
    /** Of no flights. */
    public static final Told NOTHING = new Told(0, Moments.NONE, Moments.NONE);

    /** Of one flight. */
    public static Told of(Facts flight) {
      Optional<TimeSpan> delay = flight.get(Flight.MEASURED_DELAY);
      Optional<TimeSpan> best = flight.get(Flight.PREDICTED_BEST_DELAY);
      return new Told(
          1,
          moments(delay.map(TimeSpan::seconds)),
          moments(delay.flatMap(d -> best.map(b -> d.seconds() - b.seconds()))));
    }

    private static Moments moments(Optional<Double> value) {
      return value.map(Moments::of).orElse(Moments.NONE);
    }

    /** Both together. */
    public Told and(Told more) {
      return new Told(flights + more.flights, delays.and(more.delays), off.and(more.off));
    }
  }

  /**
   * What is kept of some values.
   *
   * @param squares sum of the squared distances from the mean
   */
  record Moments(int count, double mean, double squares) {
    /** Of no values. */
    public static final Moments NONE = new Moments(0, 0, 0);

    /** Of one value. */
    public static Moments of(double value) {
      return new Moments(1, value, 0);
    }

    /**
     * Both together: Chan, Golub and LeVeque 1979, Updating formulae and a pairwise algorithm for
     * computing sample variances, equation 2.1.
     */
    public Moments and(Moments more) {
      int all = count + more.count;
      if (count == 0 || more.count == 0) {
        return count == 0 ? more : this;
      }
      double apart = more.mean - mean;
      return new Moments(
          all,
          mean + apart * more.count / all,
          squares + more.squares + apart * apart * count * more.count / all);
    }
  }

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
