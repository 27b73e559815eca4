/**
 * What one record is made of: facts by column, each a value with the text the flier typed beside
 * it; the ids that name records; and the fault that says the outside world failed.
 *
 * <p>Promises: a fact nobody here understands is kept and passed on. Refuses: to know which kinds
 * of record there are.
 */
package padside.fact;
