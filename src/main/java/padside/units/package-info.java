/**
 * Quantities with their units, and how fliers write them.
 *
 * <p>Promises: SI inside, conversions exact and cited, every typed text read or refused with a
 * sentence, every shown text readable again. Refuses: any knowledge of rockets, and to judge what
 * is likely; only what cannot be is turned down here.
 */
package padside.units;
