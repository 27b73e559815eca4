/**
 * What of the log leaves it to be read elsewhere: every kind of record as a table for a spreadsheet
 * program, the whole log as JSON, what has coordinates as GeoJSON, and the pages worth keeping; and
 * the words for flights that pages and screens share.
 *
 * <p>Promises: SI with the unit in each name; no cell of a table that a spreadsheet program would
 * compute; no raw character that could drive a terminal; JSON that {@code padside add} reads back;
 * GeoJSON by RFC 7946; pages of every flight asked for, not the newest alone, without a section
 * where nothing is known. Refuses: to write files, to change the log, records that were removed.
 */
package padside.report;
