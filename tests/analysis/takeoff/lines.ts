/** What the checks of the take-off ask for. */
import { expect } from 'vitest';
import { takeoffOf } from '#analysis/takeoff/takeoff';
import type { Takeoff, TakeoffKind, TakeoffLine } from '#analysis/takeoff/results';
import { siteOf, unit } from '../support/sites';

export const taken = (fields: object): Takeoff => takeoffOf(siteOf({ units: [unit('U1')], ...fields }));

export const linesOf = (
  { lines }: Pick<Takeoff, 'lines'>,
  subject: string,
  what: TakeoffKind
): readonly TakeoffLine[] => lines.filter((line) => line.subject === subject && line.what === what);

/** Of all lines of that kind. */
export const amount = (takeoff: Pick<Takeoff, 'lines'>, subject: string, what: TakeoffKind): number =>
  linesOf(takeoff, subject, what).reduce((sum, line) => sum + line.amount, 0);

export const total = ({ lines }: Pick<Takeoff, 'lines'>, what: TakeoffKind): number =>
  lines.filter((line) => line.what === what).reduce((sum, line) => sum + line.amount, 0);

export const box = (id: string, at: readonly number[]): object => ({ id, kind: 'pull-box', points: [at] });
export const cabinet = (id: string, at: readonly number[]): object => ({ id, kind: 'cabinet', points: [at] });

type Json = Readonly<Record<string, unknown>>;

/** What a loop with a drawn tail has besides. */
export const drawnTail = (to: string, via: readonly (readonly number[])[] = [], allowance = 0): Json => ({
  tail: { length: 0, route: { to, via, allowance } }
});

/** Within half a nanometre, for whole results that are compared. */
export const near = (value: number): number => expect.closeTo(value, 9) as number;

/** π/4 · (3.8 mm)²: the section of the catalogue's 14 AWG wire with its insulation, m². */
export const WIRE = (Math.PI * 0.0038 ** 2) / 4;
