package padside.trace;

/**
 * One column of the table.
 *
 * @param at from 0
 * @param name its header, perhaps empty
 * @param unit of its numbers
 * @param factor what one of that unit is in SI
 */
record TableColumn(Quantity quantity, int at, String name, String unit, double factor) {
  /** {@code time from column 1 "t" in s}. */
  String told() {
    String header = name.isBlank() ? "" : " \"" + name + "\"";
    return quantity.word() + " from column " + (at + 1) + header + " in " + unit;
  }
}
