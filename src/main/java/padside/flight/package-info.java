/**
 * The records a flier keeps, and what the log promises about them.
 *
 * <p>Every record is a typed view over {@link padside.fact.Facts}: fields with unit-suffixed names
 * in SI, each with the text the flier typed beside the value. {@link padside.flight.Kind} lists the
 * fields once; tables, forms, commands and exports are made from that list. Promises: a record
 * never loses a field it does not know. Refuses: files, databases, clocks.
 */
package padside.flight;
