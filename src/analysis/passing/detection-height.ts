/**
 * How high a conducting plate as large as a car's floor may be over a loop and still make a call: the floor of the highest
 * vehicle that the threshold lets the loop see. Beside it stands the rule of thumb, two thirds of the loop's shorter side
 * (common practice), which knows neither threshold nor lead-in.
 */
import { vehicleOf } from '#plan/catalogue/vehicles';
import { distance } from '#plan/geometry/points';
import type { Loop, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import type { VehicleBody } from '../electrical/bodies';
import { raised } from '../electrical/raised';
import type { SurveyedCircuit } from '../survey';
import type { Steps } from '../steps';
import { extentAlong, servedLines } from './paths';
import type { DetectionHeight } from './results';
import { strongestOnPath } from './strongest';

/** The plate, whatever a site has made of its car. */
export const REFERENCE_VEHICLE = 'car';
const RULE = 2 / 3;
const LOWEST = 0.05;
export const HIGHEST = 3;
const FINE_ENOUGH = 0.002;

/** The shorter side of the least rectangle, along any of its sides, that holds the outline; metres. */
export const shorterSide = ({ shape }: Loop): number => {
  const outline = outlineOf(shape);
  let least = Infinity;
  outline.forEach((from, k) => {
    const to = outline[(k + 1) % outline.length]!;
    const length = distance(from, to);
    if (length === 0) return;
    const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const along = outline.map(([x, y]) => x * ux + y * uy);
    const across = outline.map(([x, y]) => y * ux - x * uy);
    const sides = [along, across].map((values) => Math.max(...values) - Math.min(...values));
    least = Math.min(least, ...sides);
  });
  return least;
};

/** Nothing for a circuit without a channel. `body` is the reference vehicle's. */
export function* detectionHeightsInSteps(
  surveyed: SurveyedCircuit,
  site: Site,
  body: VehicleBody
): Steps<readonly DetectionHeight[]> {
  const { circuit, solved, loops } = surveyed;
  if (!circuit.channel) return [];
  const threshold = circuit.channel.tripThreshold;
  const vehicle = vehicleOf(REFERENCE_VEHICLE, { vehicles: [] })!;
  const plate = vehicle.parts.find((part) => part.kind === 'plate')!;
  const heights: DetectionHeight[] = [];
  for (const loop of loops) {
    const line = servedLines([loop], site)[0]!;
    const extents = [extentAlong(loop, line)];
    const calls = (height: number): boolean => {
      const lifted = raised(body, height - plate.height);
      return -strongestOnPath(solved, lifted, vehicle, line, 0, extents).deltaLOverL >= threshold;
    };
    let [low, high] = [LOWEST, HIGHEST];
    let height: number | null = null;
    if (calls(low)) {
      while (high - low > FINE_ENOUGH) {
        const middle = (low + high) / 2;
        if (calls(middle)) low = middle;
        else high = middle;
        yield;
      }
      height = low;
    }
    heights.push({
      circuit: circuit.id,
      loop: loop.id,
      height_m: height,
      ruleOfThumb_m: RULE * shorterSide(loop)
    });
  }
  return heights;
}
