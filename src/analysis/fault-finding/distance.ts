/**
 * How far along the lead-in a short lies, from the cabinet: the distance at which the model, with a short of no resistance
 * there, gives what was read. Resistance of the short itself adds to direct-current resistance, so that this is the
 * farthest; it hardly changes the inductance of a piece of cable. Only where a short explains the readings at all.
 */
import { tolerancesOf } from '#plan/catalogue/tolerances';
import type { ConcreteFault, Prepared } from './forward/contract';
import { deviationOf } from './inference/figure-likelihood';
import type { Placed } from './inference/observe';
import type { Scene } from './inference/scene';
import { NINETEEN_IN_TWENTY } from './judge';
import type { Entry } from './ranked';
import type { FaultDistance } from './results';

/** Of all shorts together, below which no distance is told. */
const LEAST = 0.05;
/** Of a short's own resistance, Ω: metal on metal is less; common practice. */
const USUAL_CONTACT = 0.3;

const QUANTITY = { resistance: 'resistanceDc_ohm', inductance: 'inductance_H' } as const;

const short = (distance_m: number, resistance_ohm: number): readonly ConcreteFault[] => [
  { kind: 'short in lead-in', subject: null, values: { distance_m, resistance_ohm } }
];

/** Where `value` would be read, by halving: both figures grow with the distance. Beyond the ends these. */
const invert = (
  valueAt: (distance: number) => number | null,
  value: number,
  total: number
): number | null => {
  const nearest = valueAt(0);
  if (nearest !== null && nearest >= value) return 0;
  let [low, high] = [0, total];
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    const there = valueAt(middle);
    if (there === null) return null;
    if (there < value) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

const oneOf = (
  { observed }: Placed,
  { prepared, shares }: Scene,
  from: FaultDistance['from']
): Omit<FaultDistance, 'told'> | null => {
  const { asked, value } = observed;
  const total = prepared.leadInLength_m;
  if (value === null || total === 0) return null;
  const at =
    (contact: number) =>
    (distance: number): number | null => {
      const [predicted] = prepared.predict(short(distance, contact), [asked]);
      return typeof predicted === 'number' ? predicted : null;
    };
  const most = at(0)(total);
  const distance = invert(at(0), value, total);
  if (most === null || distance === null) return null;
  const spread = prepared.spread(short(Math.max(distance, 0.01 * total), 0), [asked]);
  const deviation = deviationOf(observed, at(0)(distance) ?? value, { spread, shares, unmodelled: 0 }, 0);
  // what is beyond the end of the lead-in lies in the loops
  if (value > most + NINETEEN_IN_TWENTY * deviation) return null;
  const off = NINETEEN_IN_TWENTY * deviation;
  const low = invert(at(from === 'resistance' ? USUAL_CONTACT : 0), Math.max(0, value - off), total);
  const high = invert(at(0), value + off, total);
  if (low === null || high === null) return null;
  return { from, distance_m: distance, low: Math.min(low, distance), high, total_m: total };
};

const farthest = ({ site }: Prepared): number => tolerancesOf(site).leadInLength_m;

/** From what was read at the cabinet. */
export const distancesOf = (
  scene: Scene,
  entries: readonly Entry[],
  placed: readonly Placed[]
): readonly FaultDistance[] => {
  const shorts = entries
    .filter(({ faults }) =>
      faults.some(({ kind }) => kind === 'short in lead-in' || kind === 'short at splice')
    )
    .reduce((sum, { probability }) => sum + probability, 0);
  if (shorts < LEAST) return [];
  /** From the last figure that can be one: what was mistyped or read badly is read again after it. */
  const readAt = (from: FaultDistance['from']): Omit<FaultDistance, 'told'> | null => {
    for (const each of placed.toReversed()) {
      const { asked, isBaseline } = each.observed;
      if (isBaseline || asked.testPoint !== 'cabinet' || asked.quantity !== QUANTITY[from]) continue;
      const found = oneOf(each, scene, from);
      if (found) return found;
    }
    return null;
  };
  const [byResistance, byInductance] = [readAt('resistance'), readAt('inductance')];
  const found = [byResistance, byInductance].flatMap((each) => each ?? []);
  const slack = farthest(scene.prepared);
  const agree =
    byResistance && byInductance
      ? byResistance.low <= byInductance.high + slack && byInductance.low <= byResistance.high + slack
      : null;
  const widthOf = ({ low, high }: Omit<FaultDistance, 'told'>): number => high - low;
  const narrowest = found.reduce<number>((width, each) => Math.min(width, widthOf(each)), Infinity);
  return found.map((each): FaultDistance => {
    const alone = each.from === 'resistance' ? 'distance.resistance' : 'distance.inductance';
    // that they agree is said once, of the one that knows it better
    const together = agree === true && widthOf(each) === narrowest ? 'distance.agree' : alone;
    const key = agree === false ? 'distance.disagree' : together;
    return { ...each, told: { key, values: { distance: { value: each.distance_m, kind: 'length' } } } };
  });
};
