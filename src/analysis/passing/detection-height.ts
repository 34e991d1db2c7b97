/**
 * How high a conducting plate as large as a car's floor may be over a loop and still make a call: the floor of the highest
 * vehicle that the threshold lets the loop see. Beside it stands the rule of thumb, two thirds of the loop's shorter side
 * (common practice), which knows neither threshold nor lead-in.
 */
import { vehicleOf } from '#plan/catalogue/vehicles';
import { distance } from '#plan/geometry/points';
import type { Loop, Site } from '#plan/schema';
import { centreOf, outlineOf } from '#plan/shapes/index';
import type { VehicleBody } from '../electrical/bodies';
import { raised } from '../electrical/raised';
import type { SurveyedCircuit } from '../survey';
import type { Steps } from '../steps';
import type { LaneLine } from './lane-line';
import { extentAlong, servedLines } from './paths';
import type { DetectionHeight } from './results';
import { strongestOnPath } from './strongest';

/** The plate, whatever a site has made of its car. */
export const REFERENCE_VEHICLE = 'car';
const RULE = 2 / 3;
/** Metres: a few heights that all circuits share, so that images over steel are made once; the response falls evenly between. */
const HEIGHTS = [0.05, 0.08, 0.13, 0.2, 0.3, 0.45, 0.65, 0.9, 1.2, 1.6, 2, 2.5, 3] as const;

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

/** Of lanes that lie over one another the one whose middle is nearest. */
const nearestLine = (loop: Loop, site: Site): LaneLine => {
  const centre = centreOf(loop.shape);
  return servedLines([loop], site).reduce((best, line) =>
    distance(centre, line.origin) < distance(centre, best.origin) ? line : best
  );
};

/** With its coarse mesh alone, a few percent of the response: over steel every height wants images of its own. */
const coarsely = (body: VehicleBody): VehicleBody => ({
  ...body,
  fine: body.coarse,
  over: (depth) => {
    const meshes = body.over(depth);
    return {
      get fine() {
        return meshes.coarse;
      },
      get coarse() {
        return meshes.coarse;
      }
    };
  }
});

/** Of log response by log height: Lagrange's cubic through the nodes about a place, solved for the threshold by halving. */
const heightBetween = (node: (k: number) => number, low: number, goal: number): number => {
  const first = Math.max(0, Math.min(HEIGHTS.length - 4, low - 1));
  const nodes = [0, 1, 2, 3].map((k) => ({ x: Math.log(HEIGHTS[first + k]!), y: node(first + k) }));
  const at = (x: number): number =>
    nodes.reduce(
      (sum, { x: xi, y }, i) =>
        sum +
        nodes.reduce((product, { x: xj }, j) => (i === j ? product : (product * (x - xj)) / (xi - xj)), y),
      0
    );
  let [from, to] = [Math.log(HEIGHTS[low]!), Math.log(HEIGHTS[low + 1]!)];
  for (let step = 0; step < 30; step++) {
    const middle = (from + to) / 2;
    if (at(middle) >= goal) from = middle;
    else to = middle;
  }
  return Math.exp(from);
};

/** Nothing for a circuit without a channel. `body` is the reference vehicle's. */
export function* detectionHeightsInSteps(
  surveyed: SurveyedCircuit,
  site: Site,
  body: VehicleBody
): Steps<readonly DetectionHeight[]> {
  const { circuit, solved, loops } = surveyed;
  if (!circuit.channel) return [];
  const goal = Math.log(circuit.channel.tripThreshold);
  const vehicle = vehicleOf(REFERENCE_VEHICLE, { vehicles: [] })!;
  const plate = vehicle.parts.find((part) => part.kind === 'plate')!;
  const meshed = solved.steel ? coarsely(body) : body;
  const heights: DetectionHeight[] = [];
  for (const loop of loops) {
    const line = nearestLine(loop, site);
    const extents = [extentAlong(loop, line)];
    const known = new Map<number, number>();
    /** Logarithm of the strongest response at a node. */
    const node = (k: number): number => {
      const before = known.get(k);
      if (before !== undefined) return before;
      const lifted = raised(meshed, HEIGHTS[k]! - plate.height);
      const { deltaLOverL } = strongestOnPath(solved, lifted, vehicle, line, 0, extents);
      const value = Math.log(Math.max(1e-12, -deltaLOverL));
      known.set(k, value);
      return value;
    };
    const last = HEIGHTS.length - 1;
    let [low, high] = [0, last];
    let height: number | null = node(low) < goal ? null : node(last) >= goal ? HEIGHTS[last]! : NaN;
    yield;
    if (Number.isNaN(height)) {
      while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (node(middle) >= goal) low = middle;
        else high = middle;
        yield;
      }
      height = heightBetween(node, low, goal);
      yield;
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
