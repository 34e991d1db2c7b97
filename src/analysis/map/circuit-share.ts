/** What one circuit answers at every node of a map. */
import type { Placement } from '#physics/field/filaments';
import type { CompressedBody } from '#physics/vehicle/compressed';
import { latticeInSteps, latticeSize, type Ground, type Lattice } from '#physics/vehicle/lattice';
import { reducedAt } from '#physics/vehicle/reduce';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { AWAY, compressedAwayOf, compressedOf } from '../electrical/compressed-bodies';
import { responsesAt, type Range } from '../electrical/many-effects';
import { responsesOneByOne } from '../electrical/one-by-one';
import { boxOf, footprintOf, gapBetween, reachOf, type Reach } from '../electrical/reach';
import type { Steps } from '../steps';
import { nodeAt } from './nodes';
import type { MapWish } from './results';

/** A node, and of each loop the free road between it and the vehicle, metres. */
interface Node {
  readonly number: number;
  readonly placement: Placement;
  readonly gaps: readonly number[];
}

/** −ΔL/L, 0 or more, node by node. `onShare` turns the share that is done of this circuit into that of the whole map. */
export function* shareInSteps(
  solved: SolvedCircuit,
  body: VehicleBody,
  wish: MapWish,
  onShare: (share: number) => number
): Steps<Float64Array> {
  const footprint = footprintOf(body.parts);
  const boxes = solved.input.loops.map(({ model }) => boxOf(model.filaments));
  const reaches = boxes.map((box) => reachOf(box, footprint, solved.inductance, boxes.length));
  const [close, away]: [Node[], Node[]] = [[], []];
  for (let number = 0; number < wish.columns * wish.rows; number++) {
    const [x, y] = nodeAt(wish, number % wish.columns, Math.floor(number / wish.columns));
    const placement = { x, y, heading: wish.heading };
    const gaps = boxes.map((box) => gapBetween(box, footprint, placement));
    if (gaps.every((gap, loop) => gap > reaches[loop]!.own)) continue;
    (Math.min(...gaps) < AWAY ? close : away).push({ number, placement, gaps });
  }
  yield onShare(0);
  const compressed = solved.steel ? null : yield* compressedOf(body);
  const forAway = compressed && (yield* compressedAwayOf(body));
  const values = new Float64Array(wish.columns * wish.rows);
  if (!compressed || !forAway) {
    const near = [...close, ...away];
    const placements = near.map(({ placement }) => placement);
    const responses = yield* responsesOneByOne(solved, body, placements, onShare);
    near.forEach(({ number }, k) => {
      values[number] = Math.max(0, responses[k]!);
    });
    return values;
  }
  const parts = [
    { form: compressed, nodes: close },
    { form: forAway, nodes: away }
  ];
  let done = 0;
  for (const { form, nodes } of parts) {
    const lattices = yield* latticesFor(solved, form, nodes, reaches, wish.heading);
    for (let start = 0; start < nodes.length; start += A_TURN) {
      const turn = nodes.slice(start, start + A_TURN);
      const places = {
        count: turn.length,
        isRun: false,
        rank: form.rank,
        ranges: reaches.map(({ field }, loop) => rangeOf(turn, loop, field)),
        reduced: (loop: number, from: number, to: number): Float64Array => {
          const near = turn.slice(from, to).map(({ gaps }) => gaps[loop]! <= reaches[loop]!.field);
          const placements = turn.slice(from, to).map(({ placement }) => placement);
          const lattice = lattices[loop];
          const reducedOf = (some: readonly Placement[]): Float64Array =>
            lattice
              ? lattice.reducedAt(some.map(inOwnHeading))
              : reducedAt(form, solved.input.loops[loop]!.model.filaments, some);
          return spread(near, form.rank, reducedOf(placements.filter((_, k) => near[k])));
        }
      };
      responsesAt(solved, places).forEach((response, k) => {
        values[turn[k]!.number] = Math.max(0, response);
      });
      done += turn.length;
      yield onShare(done / (close.length + away.length));
    }
  }
  return values;
}

/** The z of those that are near at their places, 0 at the others. */
const spread = (near: readonly boolean[], rank: number, ofNear: Float64Array): Float64Array => {
  if (near.every((each) => each)) return ofNear;
  const all = new Float64Array(near.length * rank);
  let from = 0;
  near.forEach((each, k) => {
    if (!each) return;
    all.set(ofNear.subarray(from, from + rank), k * rank);
    from += rank;
  });
  return all;
};

/** Nodes that are done before others get their turn. */
const A_TURN = 32;

const rangeOf = (nodes: readonly Node[], loop: number, reach: number): Range => {
  const isNear = ({ gaps }: Node): boolean => gaps[loop]! <= reach;
  const first = nodes.findIndex(isNear);
  return first < 0 ? null : [first, nodes.findLastIndex(isNear) + 1];
};

/** The plan turned so that the vehicle heads along +y. */
const inOwnHeading = ({ x, y, heading }: Placement): readonly [number, number] => {
  const turn = ((heading - 90) * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
  return [x * cosine + y * sine, y * cosine - x * sine];
};

/** A lattice of each loop's field where that is less work than sampling it at every node by itself; else null. */
function* latticesFor(
  { input }: SolvedCircuit,
  form: CompressedBody,
  nodes: readonly Node[],
  reaches: readonly Reach[],
  heading: number
): Steps<readonly (Lattice | null)[]> {
  const lattices: (Lattice | null)[] = [];
  for (const [loop, { model }] of input.loops.entries()) {
    const near = nodes.filter(({ gaps }) => gaps[loop]! <= reaches[loop]!.field);
    const ground = groundOf(near.map(({ placement }) => inOwnHeading(placement)));
    const isWorth = near.length > 0 && latticeSize(form, ground) < near.length * form.samples;
    lattices.push(isWorth ? yield* latticeInSteps(form, model.filaments, heading, ground) : null);
  }
  return lattices;
}

const groundOf = (places: readonly (readonly [number, number])[]): Ground => {
  let [left, right, rear, front] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of places) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    rear = Math.min(rear, y);
    front = Math.max(front, y);
  }
  return { left, right, rear, front };
};
