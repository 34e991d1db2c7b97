/** The form for readings as plain data: what is typed stays as it was typed until it is handed to the document. */
import {
  READING_QUANTITIES,
  TEST_POINTS,
  WEATHER,
  type Quantity,
  type TestPoint,
  type Weather
} from '#plan/schema';

/** What was measured: of each circuit its own, so that looking at another one loses nothing. */
export interface Entry {
  readonly testPoint: TestPoint;
  /** At "loop"; null: the circuit's first. */
  readonly loop: string | null;
  readonly texts: Readonly<Partial<Record<Quantity, string>>>;
  /** Of bare numbers, where it is not the usual one. */
  readonly units: Readonly<Partial<Record<Quantity, string>>>;
  readonly setting: number | null;
  readonly vehicle: string | null;
  readonly note: string;
}

/** Under what, by what and by whom: it stays for the next circuit. */
export interface Conditions {
  /** On the wall's clock; null: now. */
  readonly at: string | null;
  readonly temperature: string;
  readonly weather: Weather | null;
  readonly by: string;
  readonly instruments: readonly string[];
  readonly meterFrequency: string;
  readonly insulationVoltage_V: number | null;
  readonly isCommissioning: boolean;
}

/** A kept reading that is being changed. */
export interface Editing {
  /** Place in `site.readings` then. */
  readonly place: number;
  /** The reading as it was then, as text: places move when others are removed. */
  readonly was: string;
  readonly circuit: string;
  readonly entry: Entry;
  readonly conditions: Conditions;
}

export interface FormState {
  /** Which circuit was in hand. */
  readonly circuit: string | null;
  readonly conditions: Conditions;
  readonly entries: Readonly<Record<string, Entry>>;
  readonly editing: Editing | null;
  /** When something was last typed, on the wall's clock. */
  readonly touched: string;
}

export const NO_ENTRY: Entry = {
  testPoint: 'cabinet',
  loop: null,
  texts: {},
  units: {},
  setting: null,
  vehicle: null,
  note: ''
};

export const noConditions = (by: string): Conditions => ({
  at: null,
  temperature: '',
  weather: null,
  by,
  instruments: [],
  meterFrequency: '',
  insulationVoltage_V: null,
  isCommissioning: false
});

export const emptyForm = (by: string): FormState => ({
  circuit: null,
  conditions: noConditions(by),
  entries: {},
  editing: null,
  touched: ''
});

export const hasFigures = ({ texts }: Entry): boolean =>
  Object.values(texts).some((text) => text.trim() !== '');

/** What is asked for at a test point, in the order in which it is taken down. */
const ASKED: Readonly<Record<TestPoint, readonly Quantity[]>> = {
  loop: ['resistanceDc_ohm', 'inductance_H', 'q', 'insulation_ohm'],
  'pull-box': ['resistanceDc_ohm', 'inductance_H', 'q', 'insulation_ohm'],
  cabinet: ['resistanceDc_ohm', 'inductance_H', 'q', 'insulation_ohm', 'insulationBetween_ohm'],
  unit: ['frequency_Hz', 'inductance_H', 'deltaLOverL']
};

/** With whatever else was typed already, so that nothing is kept unseen. */
export const fieldsOf = ({ testPoint, texts }: Entry): readonly Quantity[] => {
  const asked = ASKED[testPoint];
  const others = READING_QUANTITIES.filter(
    (quantity) => !asked.includes(quantity) && (texts[quantity] ?? '').trim() !== ''
  );
  return [...asked, ...others];
};

type Found = Readonly<Record<string, unknown>>;

const foundIn = (value: unknown): Found =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Found) : {};
const text = (value: unknown): string => (typeof value === 'string' ? value.slice(0, 4_000) : '');
const textOrNull = (value: unknown): string | null => (typeof value === 'string' ? text(value) : null);
const numberOrNull = (value: unknown): number | null =>
  typeof value === 'number' && Number.isFinite(value) ? value : null;
const texts = (value: unknown): Entry['texts'] => {
  const found = foundIn(value);
  return Object.fromEntries(
    READING_QUANTITIES.flatMap((quantity) =>
      typeof found[quantity] === 'string' ? [[quantity, text(found[quantity])]] : []
    )
  );
};

function entryFrom(value: unknown): Entry {
  const found = foundIn(value);
  return {
    testPoint: TEST_POINTS.find((each) => each === found['testPoint']) ?? NO_ENTRY.testPoint,
    loop: textOrNull(found['loop']),
    texts: texts(found['texts']),
    units: texts(found['units']),
    setting: numberOrNull(found['setting']),
    vehicle: textOrNull(found['vehicle']),
    note: text(found['note'])
  };
}

function conditionsFrom(value: unknown, by: string): Conditions {
  const found = foundIn(value);
  const { instruments } = found;
  return {
    at: textOrNull(found['at']),
    temperature: text(found['temperature']),
    weather: WEATHER.find((each) => each === found['weather']) ?? null,
    by: textOrNull(found['by']) ?? by,
    instruments: Array.isArray(instruments)
      ? instruments.filter((each): each is string => typeof each === 'string').slice(0, 8)
      : [],
    meterFrequency: text(found['meterFrequency']),
    insulationVoltage_V: numberOrNull(found['insulationVoltage_V']),
    isCommissioning: found['isCommissioning'] === true
  };
}

function editingFrom(value: unknown): Editing | null {
  const { place, was, circuit, entry, conditions } = foundIn(value);
  if (typeof place !== 'number' || typeof was !== 'string' || typeof circuit !== 'string') return null;
  return { place, was, circuit, entry: entryFrom(entry), conditions: conditionsFrom(conditions, '') };
}

/** The form from whatever was stored; what does not fit is as in an empty one. */
export function formFrom(found: unknown, by: string): FormState {
  const { circuit, conditions, entries, editing, touched } = foundIn(found);
  return {
    circuit: textOrNull(circuit),
    conditions: conditionsFrom(conditions, by),
    entries: Object.fromEntries(
      Object.entries(foundIn(entries)).map(([id, entry]) => [id, entryFrom(entry)])
    ),
    editing: editingFrom(editing),
    touched: text(touched)
  };
}

/**
 * Whoever comes back on another day finds weather and time as they were then, and that it was commissioning day, only where
 * figures wait to be kept that were read in them.
 */
export function withoutYesterday(form: FormState, now: string): FormState {
  const isToday = form.touched.slice(0, 10) === now.slice(0, 10);
  if (isToday || Object.values(form.entries).some(hasFigures)) return form;
  const today = { at: null, temperature: '', weather: null, isCommissioning: false };
  return { ...form, conditions: { ...form.conditions, ...today } };
}
