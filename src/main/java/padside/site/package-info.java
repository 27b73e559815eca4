/**
 * Where on the field something lies: edges as a flier paces them, and landings against them.
 *
 * <p>Promises: plane geometry with the pad at the origin, x east and y north, bearings clockwise
 * from true north; between paced bearings the cautious reading, said in {@link
 * padside.site.FieldShape}. Refuses: to guess a field nobody has paced, and any rule about how
 * large a field must be.
 */
package padside.site;
