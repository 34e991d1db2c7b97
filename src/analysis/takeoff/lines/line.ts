/** A line of the take-off, with what follows from its kind. */
import type { StatedEstimate } from '#plan/catalogue/estimate';
import type { How, Place, TakeoffGroup, TakeoffKind, TakeoffLine, TakeoffUnit } from '../results';

const GROUPS: Readonly<Record<TakeoffKind, TakeoffGroup>> = {
  'loop wire': 'wire',
  'tail wire': 'wire',
  'tail slack': 'wire',
  'twist take-up': 'wire',
  'lead-in': 'cable',
  'lead-in slack': 'cable',
  'loop saw cut': 'saw cut',
  'home run saw cut': 'saw cut',
  overcut: 'saw cut',
  'core hole': 'saw cut',
  sealant: 'sealant',
  backer: 'parts',
  conduit: 'parts',
  'pull box': 'parts',
  cabinet: 'parts',
  'splice kit': 'parts',
  label: 'parts',
  'setting up': 'crew',
  preparing: 'crew',
  sawing: 'crew',
  coring: 'crew',
  laying: 'crew',
  sealing: 'crew',
  pulling: 'crew',
  splicing: 'crew',
  testing: 'crew',
  extra: 'extra'
};

/** What is cut or broken, or left in the drum: of what is measured and bought, not of pieces that are counted. */
const wasteOf = (kind: TakeoffKind, { waste }: StatedEstimate): number => {
  const group = GROUPS[kind];
  if (group === 'wire' || group === 'cable' || group === 'sealant') return waste[group];
  return kind === 'backer' || kind === 'conduit' ? waste[kind] : 0;
};

export interface Draft {
  readonly subject: string;
  readonly what: TakeoffKind;
  /** Tells lines of one kind and subject apart. */
  readonly further?: string | undefined;
  readonly item: string;
  readonly amount: number;
  readonly unit: TakeoffUnit;
  readonly how: How;
  readonly places: readonly Place[];
}

/** Null for nothing. Field by field: of the thousands that follow a gesture on a large site each is made once. */
export const lineOf = (estimate: StatedEstimate, draft: Draft): TakeoffLine | null => {
  const { subject, what, further, item, amount, unit, how, places } = draft;
  if (!(amount > 0)) return null;
  const waste = wasteOf(what, estimate);
  const id = further === undefined ? `${subject}/${what}` : `${subject}/${what}/${further}`;
  const gross = amount * (1 + waste);
  return { id, subject, what, group: GROUPS[what], item, amount, unit, waste, gross, how, places };
};

/** Pieces for a share of a piece: a ten-thousandth, which rounding of places leaves over, makes none. */
export const wholePieces = (pieces: number): number => Math.ceil(pieces - 1e-4);
