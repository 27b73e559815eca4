/**
 * What an altimeter wrote down of a flight: read from a table of times and heights (or pressures),
 * what happened found in it, and a thinned line of it as a text that a record can keep.
 *
 * <p>Promises: a file is read in a memory that does not grow with it; no maker's format is known,
 * columns go by their names and units; what is guessed is told in a sentence; what is found has its
 * uncertainty, what is not to be found says why; no spike of the ejection charge becomes an apogee.
 * Frame: heights above the ground the rocket left, times from its lift-off once that is found.
 * Refuses: any knowledge of cards, logs and screens.
 *
 * <p>The text of a {@link padside.trace.KeptTrace} reads
 *
 * <pre>1 CRC32 SAMPLES WITHIN POINTS MARKS NAME</pre>
 *
 * parted by single blanks: the number of this form; the CRC-32 of the whole file in eight hex
 * digits; how many samples of it were of this flight; how far in centimetres the thinned line may
 * lie from a sample; the points; the marks; the file's name, to the end. A point is two numbers,
 * thousandths of a second since the point before and tenths of a metre above it, the first point
 * from lift-off and ground. A mark is one letter (a apogee, e ejection, m change of the descent, t
 * touchdown) and two such numbers from lift-off and ground; no mark is {@code -}. Numbers are in
 * Base64 VLQ as source maps have it (ECMA-426, section 4): sign in the lowest bit, five bits a
 * digit with the lowest first, the sixth bit while more digits follow. A point takes four or five
 * characters.
 */
package padside.trace;
