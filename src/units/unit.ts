import type { QuantityKind } from './kind';

/**
 * A unit that people type or read. `amount × times ÷ over + offset` is the stored value. The factor is kept as
 * two whole numbers because one multiplication and one division of them round better than one multiplication
 * by 0.01: 57 cm must be 0.57 m and not 0.5700000000000001 m.
 */
export interface Unit {
  readonly symbol: string;
  readonly spellings: readonly string[];
  readonly times: number;
  readonly over: number;
  readonly offset: number;
}

/**
 * Stored values are metres, henries, farads, ohms, hertz, seconds, cubic metres, metres a second and fractions; paces of
 * work are metres an hour, as the site document keeps them; angles are
 * degrees and temperatures degrees Celsius, because the site document keeps them so and a way through radians
 * and back would turn 30 into 29.999999999999996.
 */
function unit(symbol: string, times: number, over: number, more: readonly string[] = [], offset = 0): Unit {
  return { symbol, spellings: [symbol, ...more], times, over, offset };
}

const METRE = unit('m', 1, 1, ['metre', 'metres', 'meter', 'meters']);
const CENTIMETRE = unit('cm', 1, 100);
const MILLIMETRE = unit('mm', 1, 1000);
export const FOOT_UNIT = unit('ft', 3048, 10000, ["'", 'foot', 'feet', 'fuß', 'fuss']);
export const INCH_UNIT = unit('in', 254, 10000, ['"', 'inch', 'inches', 'zoll']);

/**
 * Units of a kind, in the order in which a refusal offers them. Words of every language are understood in every one. Where the prefixes m and M differ by a factor
 * of 10⁹ every accepted spelling stands here; the other kinds are read without regard to capitals.
 * The lexer turns µ and μ into u, and the ohm sign into a capital omega.
 */
export const UNITS: Readonly<Record<QuantityKind, readonly Unit[]>> = {
  length: [METRE, CENTIMETRE, MILLIMETRE, FOOT_UNIT, INCH_UNIT],
  smallLength: [MILLIMETRE, INCH_UNIT, CENTIMETRE, METRE, FOOT_UNIT],
  angle: [unit('°', 1, 1, ['deg', 'degree', 'degrees']), unit('rad', 180, Math.PI, ['radian', 'radians'])],
  count: [],
  frequency: [
    unit('kHz', 1000, 1, ['khz', 'KHz', 'KHZ', 'k']),
    unit('Hz', 1, 1, ['hz', 'HZ']),
    unit('MHz', 1e6, 1, ['Mhz', 'MHZ'])
  ],
  inductance: [
    unit('µH', 1, 1e6, ['uH', 'uh', 'u']),
    unit('mH', 1, 1000, ['mh', 'm']),
    unit('nH', 1, 1e9, ['nh']),
    unit('H', 1, 1, ['h', 'henry'])
  ],
  capacitance: [
    unit('nF', 1, 1e9, ['nf']),
    unit('pF', 1, 1e12, ['pf']),
    unit('µF', 1, 1e6, ['uF', 'uf']),
    unit('F', 1, 1, ['f', 'farad'])
  ],
  resistance: [
    unit('Ω', 1, 1, ['ohm', 'ohms', 'Ohm', 'Ohms', 'OHM']),
    unit('mΩ', 1, 1000, ['mohm', 'mOhm']),
    unit('kΩ', 1000, 1, ['KΩ', 'kohm', 'kOhm', 'Kohm', 'k', 'K']),
    unit('MΩ', 1e6, 1, ['Mohm', 'MOhm', 'megohm', 'megohms', 'M'])
  ],
  insulation: [
    unit('MΩ', 1e6, 1, ['Mohm', 'MOhm', 'megohm', 'megohms', 'M']),
    unit('GΩ', 1e9, 1, ['Gohm', 'GOhm', 'gigohm', 'G']),
    unit('kΩ', 1000, 1, ['KΩ', 'kohm', 'kOhm', 'Kohm', 'k', 'K']),
    unit('Ω', 1, 1, ['ohm', 'ohms', 'Ohm', 'Ohms', 'OHM'])
  ],
  time: [
    unit('s', 1, 1, ['sec', 'second', 'seconds', 'sekunde', 'sekunden']),
    unit('ms', 1, 1000),
    unit('min', 60, 1, ['minute', 'minutes', 'minuten']),
    unit('h', 3600, 1, ['hour', 'hours', 'stunde', 'stunden'])
  ],
  duration: [
    unit('min', 60, 1, ['minute', 'minutes', 'minuten']),
    unit('h', 3600, 1, ['hour', 'hours', 'stunde', 'stunden']),
    unit('s', 1, 1, ['sec', 'second', 'seconds', 'sekunde', 'sekunden'])
  ],
  ratio: [unit('%', 1, 100, ['percent', 'Prozent', 'prozent'])],
  temperature: [unit('°C', 1, 1, ['C', 'degC']), unit('°F', 5, 9, ['F', 'degF'], -160 / 9)],
  volume: [
    unit('L', 1, 1000, ['litre', 'litres', 'liter', 'liters']),
    unit('mL', 1, 1e6),
    unit('m³', 1, 1),
    unit('ft³', 28316846592, 1e12),
    // The US liquid gallon is 231 cubic inches.
    unit('gal', 3785411784, 1e12, ['gallon', 'gallons'])
  ],
  speed: [
    unit('km/h', 5, 18, ['kph', 'kmh']),
    // The mile is 1609.344 m by definition.
    unit('mph', 44704, 100000, ['mi/h']),
    unit('m/s', 1, 1),
    unit('ft/s', 3048, 10000, ['fps'])
  ],
  pace: [unit('m/h', 1, 1), unit('ft/h', 3048, 10000)],
  plain: []
};

const CASELESS: readonly QuantityKind[] = [
  'length',
  'smallLength',
  'angle',
  'time',
  'duration',
  'temperature',
  'volume',
  'speed',
  'pace'
];

/** The unit that `word` spells in this kind, or undefined. */
export function findUnit(kind: QuantityKind, word: string): Unit | undefined {
  const exact = UNITS[kind].find((candidate) => candidate.spellings.includes(word));
  if (exact !== undefined || !CASELESS.includes(kind)) return exact;
  const lower = word.toLowerCase();
  return UNITS[kind].find((candidate) => candidate.spellings.some((each) => each.toLowerCase() === lower));
}
