/** The circuit and its readings, ready to be held against any cause. */
import type { AskedFigure, ConcreteFault, Predicted, Prepared, Spread } from '../forward/contract';
import { relativeOf, type LoopShares, type Relative, type StraySpread } from './covariance';
import { seenUnder, type Seen } from './likelihood';
import type { Observed } from './observed';
import { withSteelSlack } from './steel-slack';

/** Rough: figures stray as those of a sound circuit do, which is quick; exact: as they do with the fault. */
export type Care = 'rough' | 'exact';

export interface Scene {
  readonly prepared: Prepared;
  /** Of this visit first, then those of commissioning day. */
  readonly observed: readonly Observed[];
  readonly look: (faults: readonly ConcreteFault[], care: Care) => Seen;
  readonly nominal: Seen;
  readonly shares: LoopShares;
  readonly relative: Relative;
}

/** Of the inductances of the loops alone. */
const sharesOf = (prepared: Prepared): LoopShares => {
  const { loops } = prepared;
  const henries = prepared
    .predict(
      [],
      loops.map((loop) => ({
        testPoint: 'loop',
        loop,
        quantity: 'inductance_H',
        meterFrequency_Hz: null,
        temperature_C: null,
        setting: null,
        vehicle: null
      }))
    )
    .map((value) => (typeof value === 'number' ? value : 0));
  const all = henries.reduce((sum, each) => sum + each, 0);
  return new Map(loops.map((loop, k) => [loop, all > 0 ? henries[k]! / all : 1 / loops.length]));
};

/** Within this share of one another predictions have the same relative spread. */
const ALIKE = 0.2;
/** As many spreads are remembered of one cause. */
const REMEMBERED = 8;

/** The largest difference as a share; infinite where a figure is another kind of figure. Insulation does not stray with anything. */
const differenceOf = (
  asked: readonly AskedFigure[],
  a: readonly Predicted[],
  b: readonly Predicted[]
): number =>
  a.reduce<number>((most, one, k) => {
    const other = b[k]!;
    const { quantity } = asked[k]!;
    if (quantity === 'insulation_ohm' || quantity === 'insulationBetween_ohm') return most;
    if (typeof one !== 'number' || typeof other !== 'number') return one === other ? most : Infinity;
    const size = Math.max(Math.abs(one), Math.abs(other));
    return size === 0 ? most : Math.max(most, Math.abs(one - other) / size);
  }, 0);

interface Known {
  readonly predicted: readonly Predicted[];
  readonly spread: Spread;
}

const kindsOf = (faults: readonly ConcreteFault[]): string =>
  faults.map(({ kind, subject }) => `${kind} ${subject}`).join(', ');

export const sceneOf = (prepared: Prepared, observed: readonly Observed[]): Scene => {
  const now = observed.flatMap(({ asked, isBaseline }) => (isBaseline ? [] : [asked]));
  const before = observed.flatMap(({ asked, isBaseline }) => (isBaseline ? [asked] : []));
  const beforePredicted = before.length === 0 ? [] : prepared.predict([], before);
  const beforeSpread = before.length === 0 ? null : prepared.spread([], before);
  const shares = sharesOf(prepared);
  const relative = relativeOf(observed, shares);
  const joined = new WeakMap<StraySpread, StraySpread>();
  /** With that of the readings of commissioning day. */
  const withBefore = (spread: StraySpread): StraySpread => {
    if (!beforeSpread) return spread;
    const known = joined.get(spread);
    if (known) return known;
    const made: StraySpread = {
      inputs: spread.inputs,
      derivatives: [...spread.derivatives, ...beforeSpread.derivatives],
      model: [...spread.model, ...beforeSpread.model]
    };
    joined.set(spread, made);
    return made;
  };
  const spreads = new Map<string, readonly Known[]>();
  const spreadAt = (faults: readonly ConcreteFault[], predicted: readonly Predicted[]): Spread => {
    const kinds = kindsOf(faults);
    const known = spreads.get(kinds) ?? [];
    let nearest: Known | null = null;
    let least = Infinity;
    for (const each of known) {
      const difference = differenceOf(now, each.predicted, predicted);
      if (difference < least) [nearest, least] = [each, difference];
    }
    if (nearest && (least < ALIKE || known.length >= REMEMBERED)) return nearest.spread;
    const made = prepared.spread(faults, now);
    spreads.set(kinds, [...known, { predicted, spread: made }]);
    return made;
  };
  const sound = prepared.predict([], now);
  const soundSpread = prepared.spread([], now);
  const look = (faults: readonly ConcreteFault[], care: Care): Seen => {
    const predicted = faults.length === 0 ? sound : prepared.predict(faults, now);
    const strays = care === 'rough' || faults.length === 0 ? soundSpread : spreadAt(faults, predicted);
    const other = faults.filter(({ kind }) => kind !== 'steel near');
    const spread =
      other.length === faults.length
        ? strays
        : withSteelSlack(strays, now, predicted, other.length === 0 ? sound : prepared.predict(other, now));
    return seenUnder(observed, [...predicted, ...beforePredicted], withBefore(spread), relative);
  };
  return { prepared, observed, look, nominal: look([], 'exact'), shares, relative };
};
