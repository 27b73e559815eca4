/**
 * The program itself: the command line, the loop that feeds screens with events and does what they
 * want done, and everything that touches the machine.
 *
 * <p>Only this room reads the system clock, the environment and the settings file, and only it
 * writes to standard output. Promises: no stack trace reaches a flier. Refuses: rules, physics and
 * layouts of its own.
 */
package padside.app;
