/** Curves of one passing as numbers to take away: a row a place, a column a design. */
import { responseAt } from '#analysis/passing/zones';
import type { Table } from '#exchange/tables/table';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { FOOT } from '#units/constants';
import { thereOf, type CircuitPass } from './pass';

/** Of a response in percent: to a ten thousandth of a percent, finer than the model. */
const DIGITS = 4;

/** Places are those of the curves' own nodes. */
export function curveTable(
  { displayUnits }: Pick<Site, 'displayUnits'>,
  { curves }: CircuitPass,
  names: readonly string[],
  circuit: string
): Table | null {
  const first = thereOf(curves)[0];
  if (!first) return null;
  const { step } = first.profile;
  const from = Math.min(...thereOf(curves).map(({ profile }) => profile.from));
  const to = Math.max(
    ...thereOf(curves).map(({ profile }) => profile.from + profile.step * (profile.values.length - 1))
  );
  const [unit, metres] = displayUnits === 'imperial' ? (['ft', FOOT] as const) : (['m', 1] as const);
  const count = Math.round((to - from) / step);
  return {
    title: t('designs.takeCurves', { circuit }),
    columns: [
      { head: `${t('designs.place')} (${unit})`, kind: 'number', digits: 3 },
      ...curves.flatMap((curve, n) =>
        curve ? [{ head: `${names[n] ?? ''} −ΔL/L (%)`, kind: 'number' as const, digits: DIGITS }] : []
      )
    ],
    rows: Array.from({ length: count + 1 }, (_, k) => {
      const along = from + k * step;
      return [along / metres, ...thereOf(curves).map(({ profile }) => 100 * responseAt(profile, along))];
    })
  };
}
