/** A field's numbers: on a coarse net to be read, on its own net to be taken away. */
import type { FieldPicture } from '#analysis/field-picture/results';
import type { Table } from '#exchange/tables/table';
import { t } from '#i18n/message';
import type { DisplayUnits } from '#plan/schema';
import { FOOT } from '#units/constants';
import { edgesOf, placeAt } from './frame';
import { fieldAt } from './sample';

const MICRO = 1e6;

export const lengthUnit = (units: DisplayUnits): { readonly symbol: string; readonly metres: number } =>
  units === 'imperial' ? { symbol: 'ft', metres: FOOT } : { symbol: 'm', metres: 1 };

/** Significant digits that a place is written with: what is behind them is only what binary fractions left. */
const MEANT = 12;
const tidy = (value: number): number => Number(value.toPrecision(MEANT));

/** Every node, row by row from below, in full. */
export function fieldTable(picture: FieldPicture, units: DisplayUnits, title: string): Table {
  const { symbol, metres } = lengthUnit(units);
  const isPlan = picture.plane.kind === 'plan';
  const number = (head: string) => ({ head, kind: 'number' as const });
  const edges = edgesOf(picture.plane);
  const rows: number[][] = [];
  for (let row = 0; row < picture.rows; row++)
    for (let column = 0; column < picture.columns; column++) {
      const [u, v] = placeAt(edges, picture, column, row);
      const at = 3 * (row * picture.columns + column);
      const parts = [picture.field[at]!, picture.field[at + 1]!, picture.field[at + 2]!].map(
        (part) => part * MICRO
      );
      rows.push([tidy(u / metres), tidy(v / metres), ...parts, Math.hypot(...parts)]);
    }
  return {
    title,
    columns: [
      number(`${t(isPlan ? 'seen.column.x' : 'seen.column.along')} (${symbol})`),
      number(`${t(isPlan ? 'seen.column.y' : 'seen.column.height')} (${symbol})`),
      number(`${t(isPlan ? 'seen.column.bx' : 'seen.column.bAlong')} (µT/A)`),
      number(`${t(isPlan ? 'seen.column.by' : 'seen.column.bUp')} (µT/A)`),
      number(`${t(isPlan ? 'seen.column.bUp' : 'seen.column.bAcross')} (µT/A)`),
      number(`${t('seen.column.strength')} (µT/A)`)
    ],
    rows
  };
}

export interface CoarseTable {
  /** Metres. */
  readonly along: readonly number[];
  /** From the top down, metres, each with the strengths from left to right; tesla per ampere. */
  readonly rows: readonly { readonly at: number; readonly strengths: readonly (number | null)[] }[];
}

/** Few enough to be read, at the places of the axes' figures. */
export const coarseTable = (
  picture: FieldPicture,
  along: readonly number[],
  upwards: readonly number[]
): CoarseTable => ({
  along,
  rows: [...upwards].reverse().map((at) => ({
    at,
    strengths: along.map((u) => fieldAt(picture, [u, at])?.strength_T ?? null)
  }))
});
