package padside.screen;

import java.util.List;
import java.util.Optional;
import padside.flight.Logbook;
import padside.flight.Lot;
import padside.preflight.LotRecords;

/** What is told of a lot, a parachute or an altimeter wherever it can be chosen. */
record StockWords(Logbook book, LotRecords records) {
  /** So few motors are low stock: the next flight takes the last one. */
  private static final int LOW = 1;

  static StockWords of(World world) {
    return new StockWords(world.log(), new LotRecords(world.log(), world.outcomes()));
  }

  /** How many are left in a word or two: {@code 5}, {@code low: 1}, {@code none}, {@code ?}. */
  static String count(Optional<Integer> left) {
    return left.map(n -> n <= 0 ? "none" : n <= LOW ? "low: " + n : "" + n).orElse("?");
  }

  /** {@code 2 failed, low: 1 left}. */
  String of(Lot lot) {
    return told(List.of(lot)) + left(lot);
  }

  /** {@code low: 1 left}, {@code none left}, {@code not counted}. */
  String left(Lot lot) {
    Optional<Integer> left = book.left(lot);
    return left.isPresent() ? count(left) + " left" : "not counted";
  }

  /** On how many flights a motor of these lots failed, before other words; blank for none. */
  String told(List<Lot> lots) {
    int flights = lots.stream().mapToInt(lot -> records.of(lot).burns().failed()).sum();
    return flights == 0 ? "" : flights + " failed, ";
  }

  /** On how many flights a motor of it failed; blank for none. */
  String failed(Lot lot) {
    int flights = records.of(lot).burns().failed();
    return flights == 0 ? "" : "" + flights;
  }

  /** A lot's failures with what is known of their share; blank for none. */
  String record(Lot lot) {
    return records.of(lot).isMarked() ? records.of(lot).burns().words() : "";
  }

  /** How often it has flown: {@code 12}; blank for never. */
  static String times(Logbook.Used used) {
    return used.times() == 0 ? "" : "" + used.times();
  }

  /** When it flew last: {@code 2026-05-02}. */
  static String last(Logbook.Used used) {
    return used.times() == 0 ? "never" : used.last().map(Object::toString).orElse("no date");
  }
}
