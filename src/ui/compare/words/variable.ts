/** A number of the drawing in words, and its values as people read them. */
import { listed } from '#i18n/locale';
import { t, type PlainMessageKey } from '#i18n/message';
import { cableOf } from '#plan/catalogue/cables';
import { wireOf } from '#plan/catalogue/wires';
import type { Site } from '#plan/schema';
import { quantityOf } from '#plan/variables/quantity';
import type { Variable, VariableKind, VariableRange } from '#plan/variables/variable';
import { FOOT } from '#units/constants';
import { format } from '#units/format';
import type { QuantityKind } from '#units/kind';
import { parseQuantity } from '#units/parse';
import type { About } from '../../details/commit';
import { circuitName, loopName, nameOf, vehicleName } from '../../names';
import { tight } from '../../passing/speed/words';

const NAMES: Readonly<Record<Exclude<VariableKind, 'gap'>, PlainMessageKey>> = {
  turns: 'loop.turns',
  width: 'shape.width',
  length: 'shape.length',
  rotation: 'shape.rotation',
  slotDepth: 'loop.slotDepth',
  slotWidth: 'loop.slotWidth',
  cornerCut: 'shape.cornerCut',
  wire: 'loop.wire',
  tailLength: 'loop.tail',
  leadInLength: 'sweep.variable.leadInLength',
  leadInCable: 'sweep.variable.leadInCable',
  vehicleHeight: 'sweep.variable.vehicleHeight',
  offset: 'sweep.variable.offset',
  along: 'sweep.variable.along',
  shortedTurns: 'sweep.variable.shortedTurns',
  steelDepth: 'sweep.variable.steelDepth',
  steelPitch: 'sweep.variable.steelPitch',
  measuringTime: 'sweep.variable.measuringTime',
  tripThreshold: 'channel.threshold',
  frequencySetting: 'channel.setting',
  temperature: 'site.temperature',
  permittivity: 'site.permittivity'
};

const DIAMETER: PlainMessageKey = 'shape.diameter';
/** Numbers of which there are none between two neighbours. */
const WHOLE: ReadonlySet<VariableKind> = new Set([
  'turns',
  'shortedTurns',
  'wire',
  'leadInCable',
  'frequencySetting'
]);

export const variableKey = ({ kind, subject, other }: Variable): string =>
  JSON.stringify([kind, subject, other ?? null]);

export const sameVariable = (a: Variable, b: Variable): boolean => variableKey(a) === variableKey(b);

export const isWhole = ({ kind }: Variable): boolean => WHOLE.has(kind);

export type OwnerKind = 'loops' | 'circuits' | 'vehicles' | 'steel' | 'units' | 'site';

const OWNERS: Readonly<Partial<Record<VariableKind, OwnerKind>>> = {
  leadInLength: 'circuits',
  leadInCable: 'circuits',
  tripThreshold: 'circuits',
  frequencySetting: 'circuits',
  vehicleHeight: 'vehicles',
  steelDepth: 'steel',
  steelPitch: 'steel',
  measuringTime: 'units'
};

/** Among what its subject is looked for: a loop and a circuit may have the same id. */
export const ownerKindOf = ({ kind, subject }: Variable): OwnerKind =>
  subject === null ? 'site' : (OWNERS[kind] ?? 'loops');

/** "Turns"; of a circle the diameter, whichever of the two numbers says it. */
export function numberName(site: Site, { kind, subject, other }: Variable): string {
  if (kind === 'gap') return t('sweep.variable.gap', { other: loopName(site, other ?? '') });
  const shape = site.loops.find(({ id }) => id === subject)?.shape.kind;
  return t(shape === 'circle' && (kind === 'width' || kind === 'length') ? DIAMETER : NAMES[kind]);
}

function steelName({ steel: all }: Site, id: string): string {
  const at = all.findIndex((each) => each.id === id);
  const steel = all[at];
  if (!steel) return id;
  const kind = t(`outline.steel.${steel.kind}`);
  return all.length > 1 ? t('sweep.numbered', { kind, n: at + 1 }) : kind;
}

/** "Stop line left": what it is a number of. */
export function subjectName(site: Site, variable: Variable): string {
  const { subject } = variable;
  if (subject === null) return t('sweep.wholeSite');
  switch (ownerKindOf(variable)) {
    case 'circuits':
      return circuitName(site, subject);
    case 'vehicles':
      return vehicleName(site, subject);
    case 'steel':
      return steelName(site, subject);
    case 'units': {
      const unit = site.units.find(({ id }) => id === subject);
      return unit ? nameOf(unit) : subject;
    }
    default:
      return loopName(site, subject);
  }
}

/** "Entry and Exit". */
const bothOf = (site: Site, { subject, other }: Variable): string =>
  listed([subject, other].map((id) => loopName(site, id ?? '')));

/** "Turns of Stop line left", "Gap between Entry and Exit". */
export function variableName(site: Site, variable: Variable): string {
  if (variable.subject === null) return numberName(site, variable);
  return variable.kind === 'gap'
    ? t('sweep.gapBetween', { loops: bothOf(site, variable) })
    : t('sweep.ofSubject', { number: numberName(site, variable), subject: subjectName(site, variable) });
}

/** What changes with it, and of what, for the name of an undo step: "gap" of "Entry and Exit". */
export const changedBy = (site: Site, variable: Variable): About =>
  variable.kind === 'gap'
    ? { field: t('sweep.gap'), subject: bothOf(site, variable) }
    : { field: numberName(site, variable), subject: subjectName(site, variable) };

/** A wire, a cable or a setting by its name. */
export function choiceName(site: Site, { kind }: Variable, choice: string): string {
  const entry =
    kind === 'wire' ? wireOf(choice, site) : kind === 'leadInCable' ? cableOf(choice, site) : undefined;
  return entry ? nameOf(entry) : choice;
}

/** "3", "1.80 m", "AWG 14": a value by itself, not broken between a number and its unit. */
export function valueText(
  site: Site,
  variable: Variable,
  value: number,
  choices: VariableRange['choices'] = null
): string {
  const choice = choices?.[Math.round(value)];
  if (choice !== undefined) return choiceName(site, variable, choice);
  return tight(format(value, quantityOf(variable), site.displayUnits).text);
}

/** So near to what is read of a text the number is that text. */
const SAME = 1e-9;
/** What `valueText` shows at least of most numbers, and more than any number is held with. */
const [FEW_DIGITS, MOST_DIGITS] = [3, 15];

/** The same with as many digits as the value needs: who types it has the value. */
export const exactText: typeof valueText = (site, variable, value, choices) => {
  const kind = quantityOf(variable);
  const system = site.displayUnits;
  const isExact = (text: string): boolean => {
    const read = parseQuantity(text, kind, system);
    return read.ok && Math.abs(read.value - value) <= SAME * Math.max(Math.abs(value), SAME);
  };
  if (choices || isExact(format(value, kind, system).text)) return valueText(site, variable, value, choices);
  // feet and inches have as many digits as they have
  const unit = kind === 'length' && system === 'imperial' ? { unit: 'in' } : {};
  for (let digits = FEW_DIGITS; digits < MOST_DIGITS; digits++) {
    const { text } = format(value, kind, system, { ...unit, digits });
    if (isExact(text)) return tight(text);
  }
  return tight(format(value, kind, system, { ...unit, digits: MOST_DIGITS }).text);
};

const OF_TURNS: ReadonlySet<VariableKind> = new Set(['turns', 'shortedTurns']);

/** "3 turns" in place of a bare "3", where no name of the number stands beside its text. */
export const spokenText = ({ kind }: Variable, value: number, text: string): string =>
  OF_TURNS.has(kind) ? tight(t('wiring.turns', { count: value })) : text;

/** The unit of a length as it is said, and not built; null for what is none. */
function saidIn(kind: QuantityKind, value: number): string | null {
  if (kind === 'smallLength') return 'in';
  if (kind !== 'length') return null;
  return value !== 0 && Math.abs(value) < FOOT ? 'in' : 'ft';
}

/**
 * The same where nobody has to keep to the last digit, as in an experiment: feet or inches with decimals, and beside them
 * the metric length, which is the round one: "3.28 ft (1.00 m)".
 */
export const readableText: typeof valueText = (site, variable, value, choices) => {
  const kind = quantityOf(variable);
  const unit = saidIn(kind, value);
  if (site.displayUnits !== 'imperial' || unit === null) return valueText(site, variable, value, choices);
  const said = format(value, kind, 'imperial', { unit, digits: 3 }).text;
  return tight(`${said} (${format(value, kind, 'metric').text})`);
};
