/**
 * How coarse a body's mesh is for its height. The number of unknowns is limited, so that a large plate close to the road
 * gets cells longer than it is high above the wires, and then its response means nothing: against the limit of an endless
 * plate (images) plates at up to twice were within half a percent, at three times 10 % too strong, at five and more
 * anything.
 */
import type { Body } from './body';

/** Wires lie deeper than that, metres. */
const WIRE_DEPTH = 0.03;
export const ROUGHEST = 2;

const largestStep = (nodes: Float64Array): number =>
  nodes.reduce((most, node, k) => (k === 0 ? most : Math.max(most, node - nodes[k - 1]!)), 0);

/** The largest cell over its plate's height above the wires; 0 without plates. Above `ROUGHEST` the model does not hold. */
export const roughnessOf = ({ plates }: Body): number =>
  Math.max(
    0,
    ...plates.map(
      ({ plate, xs, ys }) => Math.max(largestStep(xs), largestStep(ys)) / (plate.height + WIRE_DEPTH)
    )
  );
