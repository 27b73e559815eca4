/**
 * Where on the field something lies: edges as a flier paces them, hazards inside, landings against
 * both; where on the globe that is, where the sun stands over it and where to stand so as not to
 * look into it.
 *
 * <p>Promises: plane geometry with the pad at the origin, x east and y north, bearings clockwise
 * from true north; between paced bearings the cautious reading, said in {@link
 * padside.site.FieldShape}; an edge that comes nearer or a hazard more never takes a landing in.
 * Coordinates are WGS84 and turn into bearing and distance on the ellipsoid, in {@link
 * padside.site.Ground} alone. Refuses: to guess a field nobody has paced, any rule about how large
 * a field must be, the clock, and words for the screen.
 */
package padside.site;
