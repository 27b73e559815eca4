/**
 * Motors by their trade designation: types with their certified figures, the table of them, what a
 * line such as {@code C6-0 then C6-7} names.
 *
 * <p>Promises: a figure travels with where it comes from. Refuses: lots and flights, which are the
 * flier's; files and clocks.
 */
package padside.motor;
