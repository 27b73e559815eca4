package padside.physics;

import padside.units.Length;
import padside.units.Speed;
import padside.units.TimeSpan;

/** Where the rocket is at one time after ignition, and how fast over the ground. */
public record TrackPoint(TimeSpan time, Length east, Length north, Length height, Speed speed) {}
