/**
 * How people drive, where the traffic of a drawing does not say it. All of it is common practice, rounded: braking and
 * reaction as in the usual formula for amber times (3 m/s², 1 s), a car's start at a signal 1.5 m/s², half of that for long
 * vehicles, 2 m from bumper to bumper in a standing queue, of which a car with its gap takes 6.5 m.
 */

/** m/s² */
export const BRAKING = 3;
export const STARTING = 1.5;
export const STARTING_LONG = 0.8;
/** A body from this length on starts like a long vehicle, metres. */
export const LONG = 8;
/** From red to the brake, and from green to the start, s. */
export const REACTION = 1;
/** Bumper to bumper in a standing queue, metres. */
export const STANDING_GAP = 2;
/** Front to front in a standing queue of cars, metres. */
export const CAR_IN_QUEUE = 6.5;
/** A front stops so far before its line, metres. */
export const BEFORE_LINE = 0.5;
/** Nobody follows with less delay than that, s. */
export const LEAST_DELAY = 0.3;

/** Normal distributions are cut off at so many deviations. */
export const CUT_OFF = 2.5;
/** Of a stream's speed: no lot is slower, or one crawling vehicle would hold up a lane for minutes. */
export const LEAST_SPEED = 0.4;

/** Drawn courses keep this close to the parabola of one who brakes or starts, metres. */
export const CHORD = 0.01;
