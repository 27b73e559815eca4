/**
 * The log on the medium: one folder with the journals, the SQLite log built from them and a lock.
 *
 * <pre>
 * journal/RUN.jsonl   what was kept in one run of the program, one line an action; RUN-1.jsonl ...
 *                     where it went on after a failed write, or lines no other journal held;
 *                     RUN-received.jsonl what other machines gave in that run
 * padside.sqlite      built from the journals; holds every line and is what everything reads
 * aside/N/            databases that could not be used, never overwritten; one of an older version
 *                     with a copy of the journals
 * lock                held while the log is open
 * device.json         what this machine goes by in the headers; missing, the journals say it
 * place.json          where the flier is in the program; no part of the log
 * </pre>
 *
 * <p>A backup is a folder {@code padside-backup} elsewhere, with the same {@code journal/} and
 * snapshots of the database.
 *
 * <p>The journal is the truth. A line is one action of the flier, a JSON object in UTF-8 whose last
 * field is the CRC-32C (RFC 3720 appendix B.4), in hex, of all bytes before {@code ,"crc"}:
 *
 * <pre>
 * {"v":1,"run":RUN,"n":17,"t":5123,"up":73421.55,"wall":1795601335276,"a":"keep card",
 *  "ch":[{"k":"flight","e":"RUN.12","f":"motor","v":"C6-5","y":"c6-5","b":["RUN.12"]}],
 *  "crc":"7abbd90d"}
 * </pre>
 *
 * <ul>
 *   <li>{@code v} the version of the line; {@code run} 20 hex digits minted at each start; {@code
 *       n} counts the lines of that run, line 0 is its header. {@code run.n} names the operation.
 *   <li>{@code t} the Lamport number: one more than the largest seen. It alone orders; {@code wall}
 *       (milliseconds since 1970 by the machine's clock) and {@code up} (seconds since boot) are
 *       data and may be wrong. {@code a} says what was done.
 *   <li>{@code ch} the cells changed: {@code k} kind and {@code e} id of the record, {@code f}
 *       field, {@code v} value, {@code y} the text the flier typed, {@code b} the operations whose
 *       cell of this field it replaces. {@code y} without {@code v} could not be read; neither
 *       means emptied; no {@code f} only makes the record. A record's id is the operation that made
 *       it, {@code run.n}, then {@code run.n.2} ... where one operation made several. The {@code b}
 *       of the field {@code removed} names every operation the removal had seen in that record.
 *   <li>the header has {@code head} in place of {@code a} and {@code ch}: device id and label, boot
 *       id, zone, source of {@code up}, program version, the run before.
 * </ul>
 *
 * <p>A cell nobody has replaced is a head. Of several heads the one with the highest {@code (t,
 * run)} shows and the others stay for review. A line of a newer version and a field or kind this
 * version does not know are kept.
 *
 * <p>Promises: what {@link padside.flight.FlightLog#save} returned for is on the medium; half an
 * action is never visible; a line that cannot be read is said, never guessed at; no file of the
 * flier is overwritten. Refuses: clocks and the environment ({@link padside.store.Machine} is
 * handed in), two programs on one log, a log of a newer version.
 */
package padside.store;
