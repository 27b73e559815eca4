/**
 * One card put to flight model, field and rules: may this rocket on this motor fly over this field
 * in this wind, and why.
 *
 * <p>Promises: answers in its own records, the same card always gets the same answer, and what is
 * missing is named rather than guessed. Refuses: screens, files, clocks.
 */
package padside.preflight;
