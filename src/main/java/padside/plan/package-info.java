/**
 * The flights meant for a day, in order, held against the range box, and the list of what to pack
 * for them. Pure: it reads a logbook and answers with records and actions.
 *
 * <p>It refuses to say whether a flight may fly; that is the check's.
 */
package padside.plan;
