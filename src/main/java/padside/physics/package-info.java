/**
 * The flight of a model rocket from ignition to landing: air, wind, thrust, trajectory, descent.
 *
 * <p>Frame: x east, y north, z up, metres above the pad; time in seconds from ignition. Promises:
 * SI inside, quantities at the door, the same answer for the same launch, numerical error of apogee
 * below 0.1 % and of landing below 0.1 % or 5 cm, whichever is more. Impossible input is refused
 * with {@link padside.physics.RefusedInput}, whose message is a sentence for the flier. Refuses:
 * any knowledge of logs, screens, rules or where a field ends.
 */
package padside.physics;
