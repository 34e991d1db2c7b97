/** What differs, in the words of people: the same on the screen and on paper. */
import { t, type PlainMessageKey } from '#i18n/message';
import { listed } from '#i18n/locale';
import { format } from '#units/format';
import type { UnitSystem } from '#units/kind';
import type { Difference, DifferingKind, DifferingValue, FieldDifference } from './difference';

/** Kinds and settings that the document writes as a word of its own; others (a pavement of somebody's) are as they stand. */
const WORDS = {
  rectangle: 'differences.word.rectangle',
  quadrupole: 'differences.word.quadrupole',
  diagonal: 'differences.word.diagonal',
  circle: 'differences.word.circle',
  polygon: 'differences.word.polygon',
  mat: 'differences.word.mat',
  plate: 'differences.word.plate',
  presence: 'differences.word.presence',
  pulse: 'differences.word.pulse',
  asphalt: 'differences.word.asphalt',
  concrete: 'differences.word.concrete',
  'stop-line': 'differences.word.stop-line',
  kerb: 'differences.word.kerb',
  gate: 'differences.word.gate',
  cover: 'differences.word.cover',
  joint: 'differences.word.joint',
  note: 'differences.word.note',
  'pull-box': 'differences.word.pull-box',
  cabinet: 'differences.word.cabinet',
  conduit: 'differences.word.conduit',
  island: 'differences.word.island',
  arrow: 'differences.word.arrow',
  dimension: 'differences.word.dimension'
} as const satisfies Record<string, PlainMessageKey>;

const isWord = (text: string): text is keyof typeof WORDS => Object.hasOwn(WORDS, text);

/** Letters of a text of somebody's that are worth quoting. */
const LONGEST = 60;
const quoted = (text: string): string => {
  const letters = Array.from(text.replace(/\s+/g, ' ').trim());
  return letters.length <= LONGEST ? letters.join('') : `${letters.slice(0, LONGEST - 1).join('')}…`;
};

function valueText(value: DifferingValue, is: DifferingKind, system: UnitSystem): string {
  if (value === null || value === '') return t('differences.nothing');
  if (typeof value === 'boolean') return t(value ? 'differences.yes' : 'differences.no');
  if (typeof value === 'string') return is === 'word' && isWord(value) ? t(WORDS[value]) : quoted(value);
  if (typeof value !== 'number') return value.length === 0 ? t('differences.nothing') : listed(value);
  switch (is) {
    case 'text':
    case 'names':
    case 'word':
    case 'choice':
    case 'drawn':
      return String(value);
    default:
      return format(value, is, system).text;
  }
}

function fieldText({ field, is, before, after }: FieldDifference, system: UnitSystem): string {
  if (field === 'place') return t('differences.place');
  const name = t(`differences.field.${field}`);
  if (is === 'drawn') return t('differences.otherwise', { field: name });
  const [from, to] = [valueText(before, is, system), valueText(after, is, system)];
  return from === to
    ? t('differences.otherwise', { field: name })
    : t('differences.from', { field: name, before: from, after: to });
}

/** "Loop Exit". */
export const subjectText = ({ thing, name }: Pick<Difference, 'thing' | 'name'>): string =>
  name === null
    ? t(`differences.thing.${thing}`)
    : t('differences.named', { thing: t(`differences.thing.${thing}`), name: quoted(name) });

/** What became of it, one part a field. */
export const partsOf = ({ change, fields }: Difference, system: UnitSystem): readonly string[] =>
  change === 'changed'
    ? fields.map((field) => fieldText(field, system))
    : [t(change === 'added' ? 'differences.added' : 'differences.removed')];
