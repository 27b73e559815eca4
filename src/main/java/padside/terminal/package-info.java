/**
 * The terminal: keys in, frames out.
 *
 * <p>Promises: what the flier presses arrives as {@link padside.screen.Key}s, one at a time,
 * cleaned of everything that is not a key; a {@link padside.screen.Frame} is painted with as few
 * bytes as will do; whatever ends the program, the terminal is left as it was found. All bytes are
 * UTF-8, characters a terminal cannot show are replaced cell for cell.
 *
 * <p>Refuses: setting the terminal's line modes at start and end. {@code bin/padside} sets them
 * before it starts the program and puts them back after it, and tells what it found in system
 * properties, read by {@link padside.terminal.Tty}. Only while the program is put aside, and when
 * it comes back, {@link padside.terminal.Console} has {@code stty} do both.
 *
 * <ul>
 *   <li>{@code padside.columns}, {@code padside.rows}: the size in character cells;
 *   <li>{@code padside.term}: the value of TERM;
 *   <li>{@code padside.utf8}: true when the locale's characters are UTF-8;
 *   <li>{@code padside.modes}: the line modes it found, in the words of {@code stty -g}, to be set
 *       while the program is put aside;
 *   <li>{@code padside.home}: the folder the program is installed in (read by the wiring, not
 *       here).
 * </ul>
 */
package padside.terminal;
