/** Tolerances in words, with their size in the units shown. */
import type { ToleranceInput } from '#analysis/results';
import { t } from '#i18n/message';
import { tolerancesOf, type ToleranceKey } from '#plan/catalogue/tolerances';
import type { Site } from '#plan/schema';
import { format } from '#units/format';

const KEYS: Readonly<Record<ToleranceInput, ToleranceKey>> = {
  dimensions: 'dimensions_m',
  depth: 'depth_m',
  wirePitch: 'wirePitch_m',
  leadInLength: 'leadInLength_m',
  temperature: 'temperature_C',
  permittivity: 'relativePermittivity',
  vehicleHeight: 'vehicleHeight_m'
};

/** "±10 mm", "±27 °F": a difference of temperatures has no zero to shift. */
function toleranceSize(site: Site, input: ToleranceInput): string {
  const value = tolerancesOf(site)[KEYS[input]] ?? 0;
  const system = site.displayUnits;
  if (input === 'temperature') {
    const [factor, unit] = system === 'imperial' ? [1.8, '°F'] : [1, '°C'];
    return `±${format(value * factor, 'plain', system, { digits: 2 }).text} ${unit}`;
  }
  if (input === 'permittivity') return `±${format(value, 'plain', system, { digits: 2 }).text}`;
  const kind = input === 'leadInLength' ? 'length' : 'smallLength';
  // round in metres, it is not in inches; a length in feet and inches would look more exact than it is
  const round = kind === 'length' ? { digits: 3, unit: 'ft' } : { digits: 3 };
  return `±${format(value, kind, system, system === 'imperial' ? round : {}).text}`;
}

/** "slot depth ±10 mm", the size never broken over two lines. */
export const toleranceText = (site: Site, input: ToleranceInput): string =>
  `${t(`ranges.input.${input}`)} ${toleranceSize(site, input).replaceAll(' ', '\u00a0')}`;
