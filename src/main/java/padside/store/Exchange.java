package padside.store;

import java.util.List;
import java.util.Map;
import padside.fact.Fault;

/**
 * What a log gives to other machines and takes from them: whole lines of journals, a batch at a
 * time, in any order and any number of times. Nothing here waits for another machine, so that what
 * is typed meanwhile can be kept between two calls.
 */
public interface Exchange {
  /** Lines of one batch at most. */
  int MOST_LINES = 512;

  /** Bytes of a line at most, its end left out. */
  int MOST_BYTES = LineForm.MAX_BYTES;

  /**
   * A machine that writes journals.
   *
   * @param id what it goes by: the name of its first run, or one it was given since
   * @param label what people call it, as it says
   */
  record Device(String id, String label) {}

  /**
   * What came of a batch.
   *
   * @param fresh lines the log lacked and now has, on the medium
   * @param known lines it had
   * @param later of the fresh ones those of a newer version, kept and passed on but not shown
   * @param refused in plain words, one each, lines that are none or say otherwise than the log's
   *     own line of that name; nothing of them was taken
   */
  record Taken(int fresh, int known, int later, List<String> refused) {
    public Taken {
      refused = List.copyOf(refused);
    }
  }

  /** This machine, as the next header will name it. */
  Device self() throws Fault;

  /** The machines whose lines the log has, by id; this one included once it has written. */
  Map<String, Device> devices() throws Fault;

  /** Every line the log has, those of a newer version included. */
  Holdings holdings() throws Fault;

  /**
   * The lines of a span as they stand in the journal, without their ends, in order.
   *
   * @param span no longer than {@link #MOST_LINES}
   */
  List<String> lines(String run, Holdings.Span span) throws Fault;

  /** Takes lines in; when this returns the fresh ones are on the medium and show. */
  Taken take(Arrived lines) throws Fault;

  /** As {@link #take(Arrived)}. */
  default Taken take(List<String> raws) throws Fault {
    return take(Arrived.of(raws));
  }

  /**
   * Ends an exchange: looks whether one device was gone on with on two machines (a copied card, a
   * backup restored), and then gives this machine a name of its own.
   *
   * @return what was found and done, in plain words; mostly nothing
   */
  List<String> settle() throws Fault;
}
