/**
 * What the log teaches: what marks and altitudes come to, beside what was predicted; how lots,
 * igniters and delays have done.
 *
 * <p>Promises: the same facts always teach the same; what was not measured is absent and never
 * taken for nought; a share of few comes with the interval that holds it. Refuses: screens, files
 * and clocks.
 */
package padside.insight;
