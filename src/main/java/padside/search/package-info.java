/**
 * What is looked for among flights, as it is typed in one line: on the Log screen, behind {@code
 * padside flights}, in its options.
 *
 * <pre>
 * tree late            every word stands somewhere in what is told of the flight
 * "tied down"          these words one behind the other
 * rocket:lark          the filters of {@link padside.search.Search.Part}
 * motor:"3xC6 then"    a value with spaces
 * open                 fixes noted after the flight are open still
 * </pre>
 *
 * <p>What is told of a flight: rocket, motors, lots with their date codes, field and date,
 * parachute or streamer, altimeter, flier; outcome and malfunctions in the words of the outcome
 * table; notes, reasons, damage; the fixes and misfires noted for it. A word is found anywhere,
 * within a longer one too; letter case and accents make no difference ({@link
 * padside.search.Folding}).
 *
 * <p>Promises: one reading of a typed line, one sentence where it cannot be read. Refuses: logs;
 * who keeps flights does the finding.
 */
package padside.search;
