/** What is told about readings, causes and steps, in the units and the language shown. */
import { t, type MessageKey } from '#i18n/message';
import { dayText } from '#units/day';
import { format } from '#units/format';
import type { UnitSystem } from '#units/kind';
import type { Told, ToldAmount, ToldValue } from './results';

const THOUSAND = 1_000;
/** From here on a Q is told to a tenth, as meters show it. */
const TEN = 10;
const MINUTE = 60;
/** Up to here minutes read better than hours, s. */
const LONG = 5_400;

/** SI in; "31.4 m", "6 %", "1.75 h". */
function numberTold({ value, kind }: ToldAmount, system: UnitSystem): string {
  switch (kind) {
    case 'count':
    case 'smallLength':
    case 'inductance':
    case 'insulation':
    case 'temperature':
      return format(value, kind, system).text;
    // as meters show them: a loop has tenths of an ohm, a separation is told in hertz
    case 'resistance':
      return format(value, kind, system, Math.abs(value) < THOUSAND ? { unit: 'Ω' } : {}).text;
    case 'frequency':
      return format(value, kind, system, Math.abs(value) < THOUSAND ? { unit: 'Hz', digits: 3 } : {}).text;
    case 'length':
      return format(value, kind, system, system === 'metric' ? { digits: 3 } : {}).text;
    case 'ratio':
      return format(value, kind, system, { digits: Math.abs(value) < 1e-4 ? 1 : 2 }).text;
    case 'share':
      return format(value, 'ratio', system, { digits: 2 }).text;
    case 'time':
      if (value < MINUTE) return format(value, 'time', system, { digits: 2 }).text;
      return format(value, 'duration', system, { unit: value < LONG ? 'min' : 'h', digits: 2 }).text;
    case 'plain':
      return format(value, 'plain', system, { digits: Math.abs(value) < TEN ? 2 : 3 }).text;
  }
}

export const valueTold = (value: ToldValue, system: UnitSystem): string =>
  typeof value === 'string' ? value : 'day' in value ? dayText(value.day) : numberTold(value, system);

/** `under`: the area that the key belongs to. A test proves that every key that can be told has words. */
export function textTold(under: 'causes' | 'walk', { key, values }: Told, system: UnitSystem): string {
  const filled = Object.entries(values).map(([name, value]) => [
    name,
    // what decides between one and many must stay a number
    name === 'count' && typeof value !== 'string' && 'value' in value ? value.value : valueTold(value, system)
  ]);
  // keys are checked where they are made
  const say = t as (key: MessageKey, values: Readonly<Record<string, string | number>>) => string;
  return say(`${under}.${key}` as MessageKey, Object.fromEntries(filled) as Record<string, string | number>);
}
