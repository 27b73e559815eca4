/**
 * Whether a card may fly: rule sets as data, every value with its source and how sure it is, and
 * the verdict they give.
 *
 * <p>Promises: an unconfirmed value says so wherever it shows; what is missing is named and never
 * taken for good; more wind never gives a better answer. Refuses: to compute a flight, to measure a
 * field, and to decide: it advises, the flier decides.
 */
package padside.safety;
