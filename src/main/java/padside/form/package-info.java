/**
 * Forms as data: which fields, how each is read, where its value lies among a record's facts, and
 * what has been typed so far.
 *
 * <p>Promises: a form is a value, every key makes a new one; typed text is never thrown away or
 * reformatted under the cursor, and what could not be read is kept as it stands. Refuses: looks,
 * keys and saving.
 */
package padside.form;
