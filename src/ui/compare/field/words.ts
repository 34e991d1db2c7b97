/** A field in words and figures. */
import type { FieldPicture } from '#analysis/field-picture/results';
import { t } from '#i18n/message';
import { listed } from '#i18n/locale';
import type { DisplayUnits, Point } from '#plan/schema';
import { significant, typeset } from '#units/digits';
import { format } from '#units/format';
import { unbroken } from '../words/unbroken';
import { edgesOf, placeAt } from './frame';
import { fieldAt, strengthsOf } from './sample';

const MICRO = 1e6;
const DIGITS = 3;

/** "1.90", in microtesla per ampere. */
export const microtesla = (strength_T: number): string => typeset(significant(strength_T * MICRO, DIGITS));

/** "0.5", a step of a scale: no noughts behind it. */
export const levelText = (level_T: number): string =>
  typeset(String(Number((level_T * MICRO).toPrecision(2))));

/** Round values of an axis, in a unit of so many metres. */
export const tickText = (metres: number, metresPerUnit: number): string =>
  typeset(String(Number((metres / metresPerUnit).toFixed(3))));

/** A plain number with three digits. */
export const fine = (value: number): string => typeset(significant(value, DIGITS));

const length = (metres: number, units: DisplayUnits): string => format(metres, 'length', units).text;
const angle = (degrees: number, units: DisplayUnits): string =>
  format(Math.round((degrees + 360) % 360) % 360, 'angle', units).text;

/** What is read under a pointer. */
export function readingText(picture: FieldPicture, at: Point, units: DisplayUnits): string {
  const reading = fieldAt(picture, at);
  if (!reading) return '';
  const { left } = edgesOf(picture.plane);
  const values = {
    strength: microtesla(reading.strength_T),
    direction: angle(reading.direction_deg, units)
  };
  if (picture.plane.kind === 'plan')
    return t('seen.atPlan', { ...values, x: length(at[0], units), y: length(at[1], units) });
  const u = length(at[0] - left, units);
  return at[1] < 0
    ? t('seen.atDepth', { ...values, u, depth: length(-at[1], units) })
    : t('seen.atHeight', { ...values, u, height: length(at[1], units) });
}

interface Part {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Under the metal and over it, where it lies wider than high; null where the section does not cut any such. */
export function partsAtMetal({
  plane,
  metal
}: FieldPicture): { readonly under: Part; readonly above: Part } | null {
  if (plane.kind === 'plan') return null;
  const points = metal.filter((line) => line.length > 1).flat();
  if (points.length === 0) return null;
  const [us, vs] = [points.map(([u]) => u), points.map(([, v]) => v)];
  const [left, right] = [Math.min(...us), Math.max(...us)];
  const [low, high] = [Math.min(...vs), Math.max(...vs)];
  if (!(low > 0 && right - left > low)) return null;
  return {
    under: { left, right, bottom: 0, top: low },
    above: { left, right, bottom: high, top: Infinity }
  };
}

/** Mean strength over a part of the picture, or over all that lies above the road. */
function meanStrength(picture: FieldPicture, part: Part | null): number {
  const edges = edgesOf(picture.plane);
  const { columns, rows } = picture;
  const strengths = strengthsOf(picture);
  const floor = picture.plane.kind === 'section' ? 0 : -Infinity;
  let sum = 0;
  let count = 0;
  for (let node = 0; node < columns * rows; node++) {
    const [u, v] = placeAt(edges, picture, node % columns, Math.floor(node / columns));
    const isIn = part ? u > part.left && u < part.right && v > part.bottom && v < part.top : v > floor;
    if (!isIn) continue;
    sum += strengths[node]!;
    count += 1;
  }
  return count > 0 ? sum / count : 0;
}

interface Pair {
  readonly withVehicle: FieldPicture;
  readonly bare: FieldPicture;
}

/** How much of the field is left in a part, on both nets of which it has the same nodes; null where there was none. */
export function shareLeft({ withVehicle, bare }: Pair, part: Part | null): number | null {
  const before = meanStrength(bare, part);
  return before > 0 ? meanStrength(withVehicle, part) / before : null;
}

/** "Car above: between road and metal the field is 80 % of what it was without, over the metal 40 %." */
export function summaryOf(pair: Pair, vehicle: string, units: DisplayUnits): string {
  // the nearer to the whole, the more digits it takes to say what is missing
  const digits = (share: number): number => (Math.abs(1 - share) < 0.005 ? 4 : share > 0.95 ? 3 : 2);
  const text = (share: number): string =>
    unbroken(format(share, 'ratio', units, { digits: digits(share) }).text);
  const parts = partsAtMetal(pair.withVehicle);
  if (parts) {
    const [under, above] = [shareLeft(pair, parts.under), shareLeft(pair, parts.above)];
    if (under !== null && above !== null)
      return t('seen.leftAtMetal', { vehicle, under: text(under), above: text(above) });
  }
  const share = shareLeft(pair, null);
  if (share === null) return '';
  return pair.withVehicle.plane.kind === 'plan'
    ? t('seen.leftPlan', { vehicle, share: text(share) })
    : t('seen.leftBeside', { vehicle, share: text(share) });
}

const LEFT_OUT = {
  steel: 'seen.leftOut.steel',
  pavement: 'seen.leftOut.pavement',
  iron: 'seen.leftOut.iron'
} as const;

/** What is not in the picture, and where it is coarser than the metal; empty where nothing is missing. */
export function leftOutText(
  { leftOut, unresolved_m }: Pick<FieldPicture, 'leftOut' | 'unresolved_m'>,
  units: DisplayUnits
): string {
  return [
    ...(leftOut.length > 0
      ? [t('seen.leftOut', { what: listed(leftOut.map((what) => t(LEFT_OUT[what]))) })]
      : []),
    ...(unresolved_m > 0
      ? [t('seen.unresolved', { length: format(unresolved_m, 'smallLength', units, { digits: 1 }).text })]
      : [])
  ].join(' ');
}
