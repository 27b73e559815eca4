/**
 * Quantities with their units, and how fliers write them.
 *
 * <p>Promises: SI inside, conversions exact and cited, every typed text read or refused with a
 * sentence. Refuses: any knowledge of rockets.
 */
package padside.units;
