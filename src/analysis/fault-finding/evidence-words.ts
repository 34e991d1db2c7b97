/** Which words there are for what a figure says of a cause: of a kind and a quantity where it helps, general ones else. */
import type { MessageKey } from '#i18n/message';
import type { Quantity } from '#plan/schema';
import type { CauseKind } from './results';

/** Keys under `causes.`: side, kind of cause, quantity. Each is filled with `measured`, `predicted` and `expected`. */
export const SPECIFIC = [
  'causes.for.shorted turns.inductance_H',
  'causes.for.shorted turns.q',
  'causes.for.shorted turns.resistanceDc_ohm',
  'causes.against.shorted turns.inductance_H',
  'causes.against.shorted turns.q',
  'causes.against.shorted turns.resistanceDc_ohm',
  'causes.for.wrong turns.inductance_H',
  'causes.for.wrong turns.resistanceDc_ohm',
  'causes.against.wrong turns.inductance_H',
  'causes.against.wrong turns.resistanceDc_ohm',
  'causes.for.wrong wire.resistanceDc_ohm',
  'causes.against.wrong wire.resistanceDc_ohm',
  'causes.against.wrong wire.inductance_H',
  'causes.for.resistive splice.resistanceDc_ohm',
  'causes.for.resistive splice.q',
  'causes.against.resistive splice.resistanceDc_ohm',
  'causes.against.resistive splice.inductance_H',
  'causes.against.resistive splice.q',
  'causes.for.short at splice.resistanceDc_ohm',
  'causes.for.short at splice.inductance_H',
  'causes.against.short at splice.resistanceDc_ohm',
  'causes.against.short at splice.inductance_H',
  'causes.for.short in lead-in.resistanceDc_ohm',
  'causes.for.short in lead-in.inductance_H',
  'causes.against.short in lead-in.resistanceDc_ohm',
  'causes.against.short in lead-in.inductance_H',
  'causes.for.reversed loop.inductance_H',
  'causes.against.reversed loop.inductance_H',
  'causes.against.reversed loop.resistanceDc_ohm',
  'causes.for.missing loop.resistanceDc_ohm',
  'causes.for.missing loop.inductance_H',
  'causes.against.missing loop.resistanceDc_ohm',
  'causes.against.missing loop.inductance_H',
  'causes.for.parallel for series.resistanceDc_ohm',
  'causes.for.parallel for series.inductance_H',
  'causes.against.parallel for series.resistanceDc_ohm',
  'causes.against.parallel for series.inductance_H',
  'causes.for.series for parallel.resistanceDc_ohm',
  'causes.for.series for parallel.inductance_H',
  'causes.against.series for parallel.resistanceDc_ohm',
  'causes.against.series for parallel.inductance_H',
  'causes.for.wet splice.insulation_ohm',
  'causes.for.wet splice.insulationBetween_ohm',
  'causes.for.wet splice.q',
  'causes.against.wet splice.insulation_ohm',
  'causes.against.wet splice.insulationBetween_ohm',
  'causes.for.cut insulation.insulation_ohm',
  'causes.against.cut insulation.insulation_ohm',
  'causes.against.cut insulation.inductance_H',
  'causes.for.steel near.inductance_H',
  'causes.for.steel near.q',
  'causes.against.steel near.resistanceDc_ohm',
  'causes.against.steel near.inductance_H',
  'causes.against.steel near.q',
  'causes.for.other loop.resistanceDc_ohm',
  'causes.for.other loop.inductance_H',
  'causes.against.other loop.resistanceDc_ohm',
  'causes.against.other loop.inductance_H',
  'causes.for.longer lead-in.resistanceDc_ohm',
  'causes.for.longer lead-in.inductance_H',
  'causes.against.longer lead-in.resistanceDc_ohm',
  'causes.for.wrong setting.frequency_Hz',
  'causes.against.wrong setting.frequency_Hz',
  'causes.against.wrong setting.inductance_H',
  'causes.for.wrong meter frequency.q',
  'causes.for.wrong meter frequency.inductance_H',
  'causes.against.wrong meter frequency.resistanceDc_ohm',
  'causes.against.wrong meter frequency.q'
] as const satisfies readonly MessageKey[];

const KNOWN: ReadonlySet<string> = new Set(SPECIFIC);

export type Side = 'for' | 'against';

/** Without the prefix; null where there are only general words. */
export const specificKey = (side: Side, kind: CauseKind, quantity: Quantity): string | null => {
  const key = `${side}.${kind}.${quantity}`;
  return KNOWN.has(`causes.${key}`) ? key : null;
};

/** General ones, filled with what each needs. */
export const GENERAL = [
  'causes.for.figure',
  'causes.for.alone',
  'causes.for.over',
  'causes.for.open.over',
  'causes.for.sound',
  'causes.for.nothing-wrong',
  'causes.for.nothing-wrong.insulation',
  'causes.for.something-else',
  'causes.for.something-else.over',
  'causes.for.not-told',
  'causes.against.figure',
  'causes.against.alone',
  'causes.against.over',
  'causes.against.over.unexplained',
  'causes.against.open.finite',
  'causes.against.should-be-over',
  'causes.against.sound',
  'causes.against.nothing-wrong',
  'causes.against.nothing-wrong.insulation',
  'causes.against.nothing-wrong.over',
  'causes.against.something-else',
  'causes.against.something-else.over',
  'causes.evidence.which-one',
  'causes.evidence.which-one-or-lead-in',
  'causes.evidence.in-lead-in',
  'causes.evidence.splice-or-end',
  'causes.evidence.splice-or-cable',
  'causes.evidence.two-at-once',
  'causes.evidence.prior'
] as const satisfies readonly MessageKey[];
