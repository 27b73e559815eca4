package padside.sync;

import java.util.List;
import padside.fact.Fault;

/** What an exchange asks of whoever started it, and tells while it goes on. */
public interface Terms {
  /** What an exchange is at. */
  enum Stage {
    /** Lines of this machine go to the other. */
    GIVING,
    /** Lines of the other come here. */
    TAKING
  }

  /** Whether only to look what would move. */
  boolean onlyLook();

  /** Whether lines of machines new to the log may come; asked once, before anything moves. */
  boolean mayTake(List<Stranger> strangers) throws Fault;

  /**
   * Tells how far it is.
   *
   * @throws Fault to stop there; what has moved stays
   */
  void moved(Stage stage, long done, long of) throws Fault;

  /**
   * Asked every moment while the other machine is waited for.
   *
   * @throws Fault to stop there; what has moved stays
   */
  default void goOn() throws Fault {}
}
