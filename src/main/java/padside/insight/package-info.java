/**
 * What the log teaches: what marks and altitudes come to, beside what was predicted.
 *
 * <p>Promises: the same facts always teach the same; what was not measured is absent and never
 * taken for nought. Refuses: screens, files and clocks.
 */
package padside.insight;
