/**
 * The exchange of journal lines with other machines, over {@link padside.store.Exchange}.
 *
 * <p>A folder several machines see ({@link padside.sync.FolderPartner}) has in its {@code
 * padside-sync} parcels, {@code <20 hex digits>.parcel}, each written once and changed by nobody: a
 * head on the first line, then lines of journals as they are.
 *
 * <pre>
 * {"padside":"parcel","v":1,"by":{"id":DEVICE,"label":TEXT},
 *  "lines":[{"id":DEVICE,"label":TEXT,"runs":{RUN:[0,17,20,20]}}],
 *  "unsound":{PARCEL:{RUN:[3,3]}},"bytes":"000000000004711","crc":"7abbd90d"}
 * </pre>
 *
 * <p>{@code lines} says whose lines they are, by runs and by first and last counts; {@code unsound}
 * what the writer could not read in other parcels; {@code bytes} how long the lines are. What the
 * folder lacks is what a log has and no parcel holds that is as long as it says, apart from what
 * somebody found unsound there; a parcel that came to harm holds what reads soundly of it. A bundle
 * ({@link padside.sync.Bundle}) is one parcel with everything, wherever it lies.
 *
 * <p>Over two streams ({@link padside.sync.Talk}) both ends greet in plain text, {@code
 * padside-sync 1 VERSION}, then speak in turn, deflated; each message has a CRC-32C of its own.
 *
 * <p>Promises: what is acknowledged is on the medium here, what is written there was forced before
 * it got its name, so that an exchange cut anywhere loses nothing and the next does the rest;
 * nothing read is believed longer than its limits, no link is followed, no name made of data.
 * Refuses: the standard streams and the clock, which {@code app} has.
 */
package padside.sync;
