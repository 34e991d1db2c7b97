/** What the lines of one loop are made from. */
import { inRow } from '#i18n/locale';
import type { StatedEstimate } from '#plan/catalogue/estimate';
import type { Hole, SawnPiece, Unplaced } from '../cuts';
import type { Place } from '../results';
import type { Wound } from '../strokes';

/** What is known of one loop. */
export interface OfLoop {
  readonly of: Wound;
  readonly estimate: StatedEstimate;
  /** Slots that count with this loop. */
  readonly own: readonly SawnPiece[];
  /** Of these, one each: many lines show them, and are made anew at every edit. */
  readonly places: readonly Place[];
  /** Slots in which its wires lie and that count with another. */
  readonly others: readonly SawnPiece[];
  readonly holes: readonly Hole[];
  readonly unplaced: Unplaced | null;
  readonly hasLeadIn: boolean;
}

export const placeOf = ({ circle, from, to }: SawnPiece): Place =>
  circle ? { kind: 'circle', ...circle } : { kind: 'line', points: [from, to] };

/** In which its wires lie, whoever they count with. */
export const slotsOf = ({ own, others }: OfLoop, isHomeRun: boolean): readonly SawnPiece[] =>
  [...own, ...others].filter(({ kind }) => (kind === 'home run') === isHomeRun);

export const sum = <T>(list: readonly T[], value: (each: T) => number): number =>
  list.reduce((total, each) => total + value(each), 0);

const nameOf = ({ loop }: Wound): string => loop.name || loop.id;

/** Names, in the order of the drawing. */
export const listOf = (wound: Iterable<Wound>): string =>
  inRow([...new Set(wound)].sort((a, b) => a.index - b.index).map(nameOf));
