/** From the form to a reading of the document, and back. */
import { BOUNDS, COUNTS } from '#plan/bounds';
import { newReadingId } from '#plan/edits/readings';
import { READING_QUANTITIES, type Circuit, type Quantity, type Reading, type Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { placeOfReading } from '#analysis/fault-finding/visits';
import { formatForEdit } from '#units/format-for-edit';
import type { UnitSystem } from '#units/kind';
import { LONGEST_INITIALS } from '../../settings';
import { wallOf } from '#units/day';
import { stamped } from './clock';
import { fieldsOf, NO_ENTRY, type Conditions, type Entry } from './form';
import { readAside, readTyped, typedText, UNITS_OF, type Typed } from './typed';

/** Where in the form something stands that cannot be kept. */
export type FieldName = Quantity | 'temperature' | 'meterFrequency';

export type Built =
  | { readonly kind: 'reading'; readonly reading: Reading }
  | { readonly kind: 'nothing' }
  | { readonly kind: 'refused'; readonly fields: readonly FieldName[] };

/** The text of an over-range figure, as the form shows a kept one. */
export const OVER_RANGE_TEXT = 'OL';

export const unitOf = ({ units }: Pick<Entry, 'units'>, quantity: Quantity): string | undefined =>
  UNITS_OF[quantity].find((symbol) => symbol === units[quantity]) ?? UNITS_OF[quantity][0];

export const typedIn = (entry: Entry, quantity: Quantity): Typed =>
  readTyped(entry.texts[quantity] ?? '', quantity, unitOf(entry, quantity));

/** The loop that is meant at "loop". */
export const loopMeant = (circuit: Circuit, { loop }: Pick<Entry, 'loop'>): string | null => {
  const loops = loopsIn(circuit);
  return loops.find((id) => id === loop) ?? loops[0] ?? null;
};

/** The channel's, until another is chosen; none where its frequency is given rather than set. */
export const settingMeant = ({ channel }: Circuit, { setting }: Pick<Entry, 'setting'>): number | null =>
  setting ?? (channel?.frequency_Hz === null ? channel.frequencySetting : null);

/** The vehicle whose response is read: the first of those that the circuit must detect, until another is chosen. */
export const vehicleMeant = ({ detect }: Circuit, { vehicle }: Pick<Entry, 'vehicle'>): string | null =>
  vehicle ?? detect[0] ?? null;

/** Beside the figures: what holds where nothing is typed is left out. */
function asideOf(
  { temperature, meterFrequency }: Conditions,
  system: UnitSystem
): {
  readonly temperature: ReturnType<typeof readAside>;
  readonly meterFrequency: ReturnType<typeof readAside>;
} {
  return {
    temperature: readAside(temperature, 'temperature', BOUNDS.temperature, system),
    meterFrequency: readAside(meterFrequency, 'frequency', BOUNDS.frequency, system)
  };
}

const numberIn = (found: ReturnType<typeof readAside>): number | undefined =>
  typeof found === 'number' ? found : undefined;

const orNone = <T>(value: T | null): T | undefined => value ?? undefined;
const wordsOrNone = (text: string, most: number): string | undefined => {
  const words = text.trim().slice(0, most);
  return words === '' ? undefined : words;
};

export interface BuildOptions {
  /** On the wall's clock. */
  readonly now: string;
  /** The kept reading that is being changed: what the form does not show stays as it is. */
  readonly original?: Reading;
}

type Fields = { readonly [K in keyof Reading]: Reading[K] | undefined };

function fieldsFor(
  site: Site,
  circuit: Circuit,
  entry: Entry,
  conditions: Conditions,
  { now, original }: BuildOptions
): Fields {
  const values: Partial<Record<Quantity, number>> = {};
  const overRange: Quantity[] = [];
  for (const quantity of READING_QUANTITIES) {
    const typed = typedIn(entry, quantity);
    const was = original?.[quantity];
    if (typed.kind === 'over range') overRange.push(quantity);
    else if (typed.kind === 'value')
      // a text that was not touched says the kept value, to its last bit
      values[quantity] =
        was !== undefined && entry.texts[quantity] === typedText(was, quantity) ? was : typed.value;
  }
  const has = (...quantities: readonly Quantity[]): boolean =>
    quantities.some((each) => values[each] !== undefined || overRange.includes(each));
  const isAtUnit = entry.testPoint === 'unit';
  const aside = asideOf(conditions, site.displayUnits);
  const wall = conditions.at ?? now;
  return {
    circuit: circuit.id,
    testPoint: entry.testPoint,
    loop: entry.testPoint === 'loop' ? orNone(loopMeant(circuit, entry)) : undefined,
    at: wall === wallOf(original?.at) ? original?.at : stamped(wall),
    ...Object.fromEntries(READING_QUANTITIES.map((quantity) => [quantity, values[quantity]])),
    overRange: overRange.length > 0 ? overRange : undefined,
    meterFrequency_Hz:
      has('inductance_H', 'q') && !isAtUnit ? numberIn(aside.meterFrequency) : original?.meterFrequency_Hz,
    insulationVoltage_V: has('insulation_ohm', 'insulationBetween_ohm')
      ? orNone(conditions.insulationVoltage_V)
      : original?.insulationVoltage_V,
    setting: isAtUnit ? orNone(settingMeant(circuit, entry)) : original?.setting,
    vehicle: has('deltaLOverL') ? orNone(vehicleMeant(circuit, entry)) : original?.vehicle,
    temperature_C: numberIn(aside.temperature),
    weather: orNone(conditions.weather),
    instruments: conditions.instruments.length > 0 ? conditions.instruments : undefined,
    by: wordsOrNone(conditions.by, LONGEST_INITIALS),
    isCommissioning: conditions.isCommissioning ? true : undefined,
    note: wordsOrNone(entry.note, COUNTS.noteLength)
  };
}

/** Also while something is typed that cannot be kept: what the rest would be. */
export function readingSoFar(
  site: Site,
  circuit: Circuit,
  entry: Entry,
  conditions: Conditions,
  options: BuildOptions
): Reading {
  const fields = { ...options.original, ...fieldsFor(site, circuit, entry, conditions, options) };
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

export function buildReading(
  site: Site,
  circuit: Circuit,
  entry: Entry,
  conditions: Conditions,
  options: BuildOptions
): Built {
  const typed = fieldsOf(entry).map((quantity) => [quantity, typedIn(entry, quantity)] as const);
  const aside = Object.entries(asideOf(conditions, site.displayUnits)) as [FieldName, unknown][];
  const fields: readonly FieldName[] = [
    ...typed.filter(([, { kind }]) => kind === 'refused').map(([quantity]) => quantity),
    ...aside.filter(([, value]) => typeof value === 'object').map(([name]) => name)
  ];
  if (fields.length > 0) return { kind: 'refused', fields };
  if (typed.every(([, { kind }]) => kind === 'nothing')) return { kind: 'nothing' };
  const id = options.original ? options.original.id : newReadingId(site);
  const reading = readingSoFar(site, circuit, entry, conditions, options);
  return { kind: 'reading', reading: id === undefined ? reading : { ...reading, id } };
}

/** A kept reading as the form shows it. */
export function formOf(
  site: Site,
  reading: Reading
): { readonly entry: Entry; readonly conditions: Conditions } {
  const { testPoint, loop } = placeOfReading(site, reading);
  const texts = READING_QUANTITIES.flatMap((quantity) => {
    const value = reading[quantity];
    if (value !== undefined) return [[quantity, typedText(value, quantity)] as const];
    return reading.overRange?.includes(quantity) === true ? [[quantity, OVER_RANGE_TEXT] as const] : [];
  });
  const system = site.displayUnits;
  return {
    entry: {
      ...NO_ENTRY,
      testPoint,
      loop,
      texts: Object.fromEntries(texts),
      setting: reading.setting ?? null,
      vehicle: reading.vehicle ?? null,
      note: reading.note ?? ''
    },
    conditions: {
      // an empty time is none; "now" it is only for a new reading
      at: wallOf(reading.at),
      temperature: formatForEdit(reading.temperature_C, 'temperature', system),
      weather: reading.weather ?? null,
      by: reading.by ?? '',
      instruments: reading.instruments ?? [],
      meterFrequency: formatForEdit(reading.meterFrequency_Hz, 'frequency', system),
      insulationVoltage_V: reading.insulationVoltage_V ?? null,
      isCommissioning: reading.isCommissioning === true
    }
  };
}
