/** The open entry as a value: what a key or a field makes of it. Nothing here knows the gesture. */
import { t } from '#i18n/message';
import type { Point } from '#plan/schema';
import { format } from '#units/format';
import { formatForEdit } from '#units/format-for-edit';
import type { UnitSystem } from '#units/kind';
import { parseQuantity } from '#units/parse';
import { stepped } from '#units/step';
import {
  NOTHING_TYPED,
  type DimensionEntry,
  type EntryField,
  type EntryOffer,
  type EntryValues,
  type TypedSizes
} from '../dimension-entry';
import { readPlace } from './place';

/** Nobody types more. */
const LONGEST = 80;

/** Whether a key begins a size: everything else stays with the tool and the commands. */
export const opensEntry = (key: string): boolean => /^[\d.,@-]$/.test(key);

type Reading = Pick<EntryField, 'text' | 'typed' | 'problem'>;

const UNTYPED: Reading = { text: null, typed: null, problem: null };

function read(field: EntryField, text: string, units: UnitSystem): Reading {
  const { kind, least = -Infinity, most = Infinity } = field;
  const result = parseQuantity(text, kind, units);
  if (!result.ok) return { text, typed: null, problem: result.reason };
  if (result.value >= least && result.value <= most) return { text, typed: result.value, problem: null };
  const [from, to] = [least, most].map((bound) => format(bound, kind, units).text);
  return { text, typed: null, problem: t('field.outOfRange', { least: from ?? '', most: to ?? '' }) };
}

/** The entry for what the gesture offers now, with what was typed for the same piece of work. */
export function entryFor(
  offer: EntryOffer,
  before: DimensionEntry | null,
  at: Point,
  by: DimensionEntry['by']
): DimensionEntry {
  const kept = before?.of === offer.of ? before : null;
  const fields = offer.fields.map((size): EntryField => {
    const { text, typed, problem } = kept?.fields.find(({ id }) => id === size.id) ?? UNTYPED;
    return { ...size, text, typed, problem };
  });
  return {
    of: offer.of,
    fields,
    active: kept?.active ?? null,
    takesPlace: offer.takesPlace,
    place: kept?.place ?? null,
    isRefused: kept?.isRefused ?? false,
    at,
    by
  };
}

const withField = (entry: DimensionEntry, index: number, reading: Reading): DimensionEntry => ({
  ...entry,
  active: index,
  place: null,
  isRefused: false,
  fields: entry.fields.map((field, each) => (each === index ? { ...field, ...reading } : field))
});

/** The same entry with another text in a field; null gives the field back to the pointer. */
export function withText(
  entry: DimensionEntry,
  id: keyof EntryValues,
  text: string | null,
  units: UnitSystem
): DimensionEntry {
  const index = entry.fields.findIndex((field) => field.id === id);
  const field = entry.fields[index];
  if (!field) return entry;
  if (text === null || text.trim() === '') return withField(entry, index, UNTYPED);
  return withField(entry, index, read(field, text.slice(0, LONGEST), units));
}

const withPlace = (entry: DimensionEntry, text: string, units: UnitSystem): DimensionEntry => ({
  ...entry,
  active: entry.active ?? 0,
  isRefused: false,
  place: text === '' ? null : readPlace(text.slice(0, LONGEST), units)
});

/** Closed: what was typed into the field in hand is given back to the pointer. */
function closed(entry: DimensionEntry): DimensionEntry {
  const { active, place } = entry;
  const rest = { ...entry, active: null, place: null, isRefused: false };
  if (active === null || place) return rest;
  return { ...withField(entry, active, UNTYPED), active: null };
}

function typedText(
  entry: DimensionEntry,
  change: (text: string) => string,
  units: UnitSystem
): DimensionEntry {
  if (entry.place) return withPlace(entry, change(entry.place.text), units);
  const field = entry.fields[entry.active ?? 0];
  return field ? withText(entry, field.id, change(field.text ?? ''), units) : entry;
}

function moved(entry: DimensionEntry, by: 1 | -1): DimensionEntry {
  const count = entry.fields.length;
  const from = entry.active ?? (by === 1 ? -1 : 0);
  return { ...entry, active: (from + by + count) % count, place: null, isRefused: false };
}

function step(entry: DimensionEntry, by: 1 | -1, isCoarse: boolean, units: UnitSystem): DimensionEntry {
  const field = entry.fields[entry.active ?? -1];
  if (!field || entry.place) return entry;
  const { kind, least = -Infinity, most = Infinity } = field;
  const next = stepped(field.typed ?? field.value, kind, units, by, isCoarse);
  return withText(entry, field.id, formatForEdit(Math.min(most, Math.max(least, next)), kind, units), units);
}

export interface EntryKey {
  readonly key: string;
  readonly shift: boolean;
}

/** What the key makes of the entry; 'enter' to go on with it, null for a key that it has no use for. */
export function keyed(
  entry: DimensionEntry,
  { key, shift }: EntryKey,
  units: UnitSystem
): DimensionEntry | 'enter' | null {
  if (key === 'Tab') return moved(entry, shift ? -1 : 1);
  if (entry.active === null) {
    if (!opensEntry(key)) return null;
    if (key !== '@') return typedText({ ...entry, active: 0 }, () => key, units);
    return entry.takesPlace ? withPlace(entry, key, units) : null;
  }
  if (key === 'Enter') return 'enter';
  if (key === 'Escape') return closed(entry);
  if (key === 'Backspace') return typedText(entry, (text) => text.slice(0, -1), units);
  if (key === 'ArrowUp' || key === 'ArrowDown') return step(entry, key === 'ArrowUp' ? 1 : -1, shift, units);
  if (key === '@') return entry.takesPlace ? withPlace(entry, `${entry.place?.text ?? ''}@`, units) : entry;
  if ([...key].length === 1) return typedText(entry, (text) => text + key, units);
  // Keys that would do something else to the drawing stay without effect; those of the browser are none of ours.
  return /^(Arrow|Page|Home|End|Delete|Insert)/.test(key) ? entry : null;
}

export const undoneTyping = (entry: DimensionEntry, units: UnitSystem): DimensionEntry =>
  typedText(entry, () => '', units);

/** Whether something stands in it that cannot be taken. */
export const hasProblem = ({ fields, place }: DimensionEntry): boolean =>
  place ? place.problem !== null : fields.some(({ problem }) => problem !== null);

/** What the tool gets. */
export function typedIn(entry: DimensionEntry | null): TypedSizes {
  if (!entry) return NOTHING_TYPED;
  if (entry.place) return entry.place.offset ? { offset: entry.place.offset } : NOTHING_TYPED;
  const values: { -readonly [Key in keyof EntryValues]: number } = {};
  for (const { id, typed } of entry.fields) if (typed !== null) values[id] = typed;
  return values;
}
