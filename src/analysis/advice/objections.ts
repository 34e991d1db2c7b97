/** What speaks against a choice of turns and wire. */
import { LEAST_COVER } from '../findings/cover';
import type { Objection, ObjectionCode, TurnsChoice, TurnsWish } from './advice';

/** The loops should have at least the lead-in's inductance: common practice. */
const LEAST_LOOP_SHARE = 0.5;
/** Nearer to its resonance the winding's capacitance adds more than a ninth to what a meter reads: an assumption of ours. */
const LEAST_RESONANCE = 3;

/** Of all loops that may change. */
export interface SlotFit {
  readonly wireDiameter: number;
  readonly narrowestSlot: number;
}

type Figures = Omit<TurnsChoice, 'objections'>;

const REFUSING: ReadonlySet<ObjectionCode> = new Set([
  'inductance-low',
  'inductance-high',
  'q-low',
  'slot-narrow',
  'slot-full'
]);

export const objectionsTo = (choice: Figures, wish: TurnsWish, fit: SlotFit): readonly Objection[] => {
  const found: Objection[] = [];
  const object = (code: ObjectionCode, isWrong: boolean, value: number, limit: number): void => {
    if (isWrong) found.push({ code, value, limit, refuses: REFUSING.has(code) });
  };
  const { inductance_H: inductance, q, cover_m: cover, loopShare, resonanceRatio } = choice;
  object('inductance-low', inductance < wish.least_H, inductance, wish.least_H);
  object('inductance-high', inductance > wish.most_H, inductance, wish.most_H);
  object('q-low', !(q >= wish.leastQ), q, wish.leastQ);
  object('slot-narrow', fit.wireDiameter > fit.narrowestSlot, fit.wireDiameter, fit.narrowestSlot);
  object('slot-full', cover < 0, cover, 0);
  object('cover-thin', cover >= 0 && cover < LEAST_COVER, cover, LEAST_COVER);
  object('lead-in-heavy', loopShare < LEAST_LOOP_SHARE, loopShare, LEAST_LOOP_SHARE);
  object('resonance-near', resonanceRatio < LEAST_RESONANCE, resonanceRatio, LEAST_RESONANCE);
  return found;
};

/** A value that has no logarithm is as far off as this factor. */
const HOPELESS = Math.log(1e3);

/** By how much a choice misses: the factors by which its refused figures are off, as logarithms added up. */
export const missOf = ({ objections, cover_m, wireLength_m }: TurnsChoice): number =>
  objections
    .filter(({ refuses }) => refuses)
    .reduce((sum, { code, value, limit }) => {
      // a cover has no factor: a millimetre that stands out counts as a tenth
      if (code === 'slot-full') return sum - 100 * cover_m;
      const off = Math.abs(Math.log(value / limit));
      return sum + (Number.isFinite(off) ? off : HOPELESS);
    }, 0) +
  // of two that miss alike, the one with less wire
  1e-9 * wireLength_m;
