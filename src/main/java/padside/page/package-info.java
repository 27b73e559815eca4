/**
 * A page worth keeping as data, and its renderings: lines of text, one HTML document, tables for a
 * spreadsheet.
 *
 * <p>Promises: all three say the same; what a text holds is shown and never obeyed, as markup, as a
 * formula or by a terminal; the HTML asks for nothing outside itself and runs nothing; no chart
 * tells anything by colour alone. Refuses: to know what the pages are about, files, clocks.
 */
package padside.page;
