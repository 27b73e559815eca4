/**
 * What the flier sees and types: screens as records, each a pure step from an event to the next
 * screen and a pure view into a frame of characters.
 *
 * <p>Promises: no screen touches the outside; what it wants done it returns as effects, what came
 * of them reaches it as events. One table of bindings per screen drives keys, footer and help.
 * Refuses: any terminal library, any clock, any file.
 */
package padside.screen;
