package padside.preflight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import padside.flight.RecoveryDevice;
import padside.motor.MotorStack;

/**
 * Something done otherwise than a card says.
 *
 * @param kinds what is touched, the lesser first
 * @param words as one would say it: {@code with C6-3}
 * @param marked takes motors of a lot in which some malfunctioned
 * @param amount how far it goes, comparable among changes of the same kinds
 * @param to makes it on a card
 * @param parts of two changes at once each by itself; empty otherwise
 */
record Change(
    List<Kind> kinds,
    String words,
    boolean marked,
    double amount,
    UnaryOperator<Card> to,
    List<Change> parts) {
  /** What can be done, from the least to the most. */
  enum Kind {
    WAIT,
    LOT,
    TILT,
    DELAY,
    DEVICE,
    MOTOR
  }

  Change {
    kinds = List.copyOf(kinds);
    parts = List.copyOf(parts);
  }

  static Change of(Kind kind, String words, double amount, UnaryOperator<Card> to) {
    return new Change(List.of(kind), words, false, amount, to, List.of());
  }

  static Change motors(Kind kind, MotorStack motors, Box.Stock stock, double amount) {
    Card.LotRecord lot = stock.record();
    boolean marked = lot.isMarked();
    String words =
        "with "
            + motors.designation()
            + (kind == Kind.LOT || marked ? " of lot " + lot.code() : "")
            + (marked ? ", in which a motor " + lot.burns().verb() : "");
    return new Change(
        List.of(kind),
        words,
        marked,
        amount,
        card -> card.withMotors(motors, Optional.of(lot)),
        List.of());
  }

  static Change device(RecoveryDevice device, double amount) {
    return of(Kind.DEVICE, "with the " + device.name(), amount, card -> card.withDevice(device));
  }

  /** Both at once, the lesser kind told first. */
  Change and(Change greater) {
    List<Kind> both = new ArrayList<>(kinds);
    both.addAll(greater.kinds);
    return new Change(
        both,
        words + " and " + greater.words,
        marked || greater.marked,
        amount + greater.amount,
        card -> greater.to.apply(to.apply(card)),
        List.of(this, greater));
  }

  /** Fewer things touched are a smaller change, then lesser ones, then those that go less far. */
  static int compare(Change one, Change other) {
    if (one.marked != other.marked) {
      return one.marked ? 1 : -1;
    }
    if (one.kinds.size() != other.kinds.size()) {
      return Integer.compare(one.kinds.size(), other.kinds.size());
    }
    for (int i = one.kinds.size() - 1; i >= 0; i--) {
      int order = one.kinds.get(i).compareTo(other.kinds.get(i));
      if (order != 0) {
        return order;
      }
    }
    int order = Double.compare(one.amount, other.amount);
    return order != 0 ? order : one.words.compareTo(other.words);
  }
}
